/** Any limb on a low-voltage wire against anything else (row 7): the live wire beside the worker is remote earth. */
import { eitherWay, type ExposurePath } from './exposurePath'

export const lowVoltage: ExposurePath = {
  id: 'low-voltage',
  rows: [7],
  limit: 'line-b',
  joins: eitherWay((a) => a.on === 'lv-wire'),
}
