/**
 * One element of the circuit as lines of a netlist for one frequency. Reactances become inductors and capacitors of that
 * frequency. What couples (line conductors, electrodes in one soil) is written with 0 V sources as ammeters: V(n+) - V(n-)
 * of an H source is its ohm times the current through the named ammeter, positive from its n+ to its n-.
 * So is a resistance of one ohm or less: simulators add conductances at a node, and 2000 S would drown a leakage of some nS.
 */
import { angle, magnitude, PI, type Complex, type Element } from '../../engine'
import type { SpiceNames } from './spiceNames'

export interface Writer {
  readonly names: SpiceNames
  /** rad/s */
  readonly omega: number
}

type Of<Kind extends Element['kind']> = Extract<Element, { kind: Kind }>

interface Ends {
  readonly id: string
  readonly from: string
  readonly to: string
}

/** @param from the node to begin at, where an ammeter stands before the element; else its own */
export function partLines(writer: Writer, element: Element, from?: string): readonly string[] {
  switch (element.kind) {
    case 'impedance':
      return impedance(writer, element, from)
    case 'admittance':
      return beside(
        writer,
        element.id,
        from ?? nodeOf(writer, element.from),
        nodeOf(writer, element.to),
        element.admittance,
      )
    case 'voltage':
      return [source(writer, 'v', element, element.voltage, from)]
    case 'current':
      return [source(writer, 'i', element, element.current, from)]
    case 'coupled':
      return coupled(writer, element)
    case 'shunt':
      return shunt(writer, element)
    case 'electrodes':
      return electrodes(writer, element)
  }
}

/** Every digit of a double. */
function digits(value: number): string {
  return String(value === 0 ? 0 : value)
}

function nodeOf({ names }: Writer, name: string): string {
  return names.node(name)
}

function source(writer: Writer, letter: string, { id, from, to }: Ends, value: Complex, start?: string): string {
  const degrees = (angle(value) * 180) / PI
  const ends = `${start ?? nodeOf(writer, from)} ${nodeOf(writer, to)}`
  return `${writer.names.part(letter, id)} ${ends} dc 0 ac ${digits(magnitude(value))} ${digits(degrees)}`
}

function impedance(writer: Writer, { id, from, to, impedance: z }: Of<'impedance'>, start?: string): readonly string[] {
  const first = start ?? nodeOf(writer, from)
  return inSeries(writer, id, first, nodeOf(writer, to), z)
}

/** Resistance, then reactance. */
function inSeries(writer: Writer, id: string, from: string, to: string, z: Complex): readonly string[] {
  const { names, omega } = writer
  if (z.im === 0) return resistor(writer, id, from, to, z.re)
  const middle = z.re === 0 ? from : names.inner(`${id} x`)
  const lines = z.re === 0 ? [] : resistor(writer, id, from, middle, z.re)
  const reactance =
    z.im > 0
      ? `${names.part('l', id)} ${middle} ${to} ${digits(z.im / omega)}`
      : `${names.part('c', id)} ${middle} ${to} ${digits(-1 / (omega * z.im))}`
  return [...lines, reactance]
}

function resistor({ names }: Writer, id: string, from: string, to: string, ohm: number): readonly string[] {
  if (Math.abs(ohm) > 1) return [`${names.part('r', id)} ${from} ${to} ${digits(ohm)}`]
  const meter = names.part('v', `${id} own`)
  const middle = names.inner(`${id} own`)
  return [`${meter} ${from} ${middle} dc 0 ac 0`, `${names.part('h', id)} ${middle} ${to} ${meter} ${digits(ohm)}`]
}

/** Resistance beside capacitance (or inductance). */
function beside({ names, omega }: Writer, id: string, from: string, to: string, y: Complex): readonly string[] {
  const lines = y.re === 0 ? [] : [`${names.part('r', id)} ${from} ${to} ${digits(1 / y.re)}`]
  if (y.im > 0) lines.push(`${names.part('c', id)} ${from} ${to} ${digits(y.im / omega)}`)
  if (y.im < 0) lines.push(`${names.part('l', id)} ${from} ${to} ${digits(-1 / (omega * y.im))}`)
  return lines
}

/** Resistance, inductance and ammeter of each conductor; K couples the inductances, H the resistance of the earth. */
function coupled(writer: Writer, { branches, impedance: matrix }: Of<'coupled'>): readonly string[] {
  const { names, omega } = writer
  const meters = branches.map(({ id }) => names.part('v', `${id} ammeter`))
  const inductors = branches.map(({ id }) => names.part('l', id))
  const lines = branches.flatMap(({ id, from, to }, i) => {
    const own = matrix[i]![i]!
    const afterResistance = names.inner(`${id} r`)
    const afterReactance = names.inner(`${id} x`)
    const chain = [
      ...resistor(writer, id, nodeOf(writer, from), afterResistance, own.re),
      `${inductors[i]} ${afterResistance} ${afterReactance} ${digits(own.im / omega)}`,
    ]
    let at = afterReactance
    branches.forEach((other, j) => {
      const mutual = matrix[i]![j]!.re
      if (i === j || mutual === 0) return
      const next = names.inner(`${id} h`)
      chain.push(`${names.part('h', `${id} by ${other.id}`)} ${at} ${next} ${meters[j]} ${digits(mutual)}`)
      at = next
    })
    return [...chain, `${meters[i]} ${at} ${nodeOf(writer, to)} dc 0 ac 0`]
  })
  branches.forEach((one, i) => {
    branches.slice(0, i).forEach((other, j) => {
      const mutual = matrix[i]![j]!.im
      if (mutual === 0) return
      const share = mutual / Math.sqrt(matrix[i]![i]!.im * matrix[j]![j]!.im)
      lines.push(`${names.part('k', `${one.id} ${other.id}`)} ${inductors[j]} ${inductors[i]} ${digits(share)}`)
    })
  })
  return lines
}

/** Maxwell form to partial admittances: between two conductors minus the entry, to earth the sum of the row. */
function shunt(writer: Writer, { id, nodes, admittance }: Of<'shunt'>): readonly string[] {
  return nodes.flatMap((node, i) => {
    const row = admittance[i]!
    const toEarth = row.reduce((sum, y) => ({ re: sum.re + y.re, im: sum.im + y.im }), { re: 0, im: 0 })
    const lines = [...beside(writer, `${id} ${node}`, nodeOf(writer, node), '0', toEarth)]
    nodes.slice(0, i).forEach((other, j) => {
      const between = { re: -row[j]!.re, im: -row[j]!.im }
      lines.push(...beside(writer, `${id} ${other} ${node}`, nodeOf(writer, other), nodeOf(writer, node), between))
    })
    return lines
  })
}

/** Each electrode: its ammeter, its own resistance, then what every other one adds to its potential. */
function electrodes(writer: Writer, { nodes, resistance }: Of<'electrodes'>): readonly string[] {
  const { names } = writer
  const meters = nodes.map((node) => names.part('v', `${node} into soil`))
  return nodes.flatMap((node, i) => {
    const row = resistance[i]!
    const others = row.flatMap((ohm, j) => (i === j || ohm === 0 ? [] : [{ ohm, j }]))
    const afterMeter = names.inner(`${node} soil`)
    const lines = [`${meters[i]} ${nodeOf(writer, node)} ${afterMeter} dc 0 ac 0`]
    const ends = others.map((_, k) => (k === others.length - 1 ? '0' : names.inner(`${node} soil`)))
    const afterOwn = others.length === 0 ? '0' : names.inner(`${node} soil`)
    lines.push(...resistor(writer, `${node} into soil`, afterMeter, afterOwn, row[i]!))
    let at = afterOwn
    others.forEach(({ ohm, j }, k) => {
      lines.push(`${names.part('h', `${node} by ${nodes[j]!}`)} ${at} ${ends[k]!} ${meters[j]} ${digits(ohm)}`)
      at = ends[k]!
    })
    return lines
  })
}
