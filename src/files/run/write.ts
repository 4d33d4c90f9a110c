/** A run as the text of a file: the same bytes for the same run. */
import type { Action } from '../../engine'
import { fileText } from '../canonical'
import { orderLine } from './orderFields'
import { runFormat, runVersion, type Run } from './run'

export function writeRun(run: Run, actions: ReadonlyMap<string, Action>): string {
  const { orders, expect, ...head } = run
  return fileText({
    format: runFormat,
    version: runVersion,
    ...head,
    actions: orders.map((order) => orderLine(order, actions)),
    ...(expect && {
      expect: {
        ...expect,
        exposures: expect.exposures.map(({ current, ...rest }) => ({ ...rest, currentA: current })),
      },
    }),
  })
}
