/** Currents and voltages of the instant as tables, largest first: the text of the drawing. */
import type { Instant } from '../../../engine'
import { type Speaker, amperes, say, volts } from '../../../text'
import { pointWords } from './pointWords'

/** Below this nothing is told, ampere and volt. */
const least = { current: 0.005, voltage: 0.5 } as const
const most = 24

export function InstantTables({ instant, speaker }: { instant: Instant; speaker: Speaker }) {
  const branches = largest(instant.branches, least.current)
  const nodes = largest(instant.nodes, least.voltage)
  return (
    <>
      <details>
        <summary>{say('livening.branches')}</summary>
        <table>
          <thead>
            <tr>
              <th>{say('livening.from')}</th>
              <th>{say('livening.to')}</th>
              <th className='num'>{say('livening.current')}</th>
            </tr>
          </thead>
          <tbody>
            {branches.map((it) => (
              <tr key={it.id}>
                <td>{pointWords(it.from, speaker)}</td>
                <td>{pointWords(it.to, speaker)}</td>
                <td className='num'>{amperes(it.size)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
      <details>
        <summary>{say('livening.voltages')}</summary>
        <table>
          <thead>
            <tr>
              <th>{say('livening.part')}</th>
              <th className='num'>{say('livening.volts')}</th>
            </tr>
          </thead>
          <tbody>
            {nodes.map((it) => (
              <tr key={it.node}>
                <td>{pointWords(it.node, speaker)}</td>
                <td className='num'>{volts(it.size)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  )
}

const largest = <T extends { readonly size: number }>(all: readonly T[], from: number): readonly T[] =>
  all
    .filter((it) => it.size > from)
    .sort((a, b) => b.size - a.size)
    .slice(0, most)
