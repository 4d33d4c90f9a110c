/** Shared by reference between all materials: a theme, a selection or a frame is a few writes, never a recompile. */
import { type IUniform, Vector2, Vector3 } from 'three'
import { colourOf } from '../../tokens'
import type { Theme } from '../../stores/theme'
import { groundColour, lineWeight, rampNames, rgbOf, shadeWash, slots, surfaceColour } from './palette'

const colour = (): IUniform<Vector3> => ({ value: new Vector3() })

export const shared = {
  uPalette: { value: slots.map(() => new Vector3()) } as IUniform<Vector3[]>,
  uPaper: colour(),
  uSky: colour(),
  uSkyTop: colour(),
  uGround: colour(),
  uRoad: colour(),
  uGrid: colour(),
  uGrass: colour(),
  uInk: colour(),
  uShade: colour(),
  uShadow: colour(),
  uAccent: colour(),
  uContour: colour(),
  uLimit: colour(),
  uFlow: colour(),
  uRamp: { value: rampNames.map(() => new Vector3()) } as IUniform<Vector3[]>,
  uFov: { value: 40 },
  uLine: { value: 1 },
  uWash: { value: 0.8 },
  uView: { value: new Vector2(1, 1) }, // drawing buffer, pixels
  uPx: { value: 1 }, // pixels per metre at one metre
  uDpr: { value: 1 },
  uSelected: { value: -1 },
  uHovered: { value: -1 },
  uFrozen: { value: 0 }, // 0 daylight, 1 the frozen instant
  uTime: { value: 0 },
  uSun: { value: new Vector3(-0.42, 0.74, -0.52).normalize() }, // afternoon: from the south-west
  uFade: { value: new Vector2(60, 165) }, // metres from the pole where the drawing ends
}

/** @param isDusk the sheet's own dusk: sky and ground of that hour, everything else under its tint */
export function paint(theme: Theme, isDusk = false): void {
  const tint = isDusk ? rgbOf(groundColour('duskTint', theme)) : ([1, 1, 1] as const)
  slots.forEach((slot, index) => {
    const [red, green, blue] = rgbOf(surfaceColour(slot, theme))
    shared.uPalette.value[index]!.set(red * tint[0], green * tint[1], blue * tint[2])
  })
  rampNames.forEach((name, index) => shared.uRamp.value[index]!.set(...rgbOf(colourOf(name, theme))))
  const pairs: readonly (readonly [IUniform<Vector3>, string])[] = [
    [shared.uPaper, colourOf('paper', theme)],
    [shared.uSky, groundColour(isDusk ? 'duskSky' : 'sky', theme)],
    [shared.uSkyTop, groundColour(isDusk ? 'duskSkyTop' : 'skyTop', theme)],
    [shared.uGround, groundColour(isDusk ? 'duskGround' : 'ground', theme)],
    [shared.uRoad, groundColour(isDusk ? 'duskRoad' : 'road', theme)],
    [shared.uGrid, groundColour('cross', theme)],
    [shared.uGrass, groundColour(isDusk ? 'shadow' : 'grass', theme)],
    [shared.uInk, colourOf('ink', theme)],
    [shared.uShade, groundColour('shade', theme)],
    [shared.uShadow, groundColour('shadow', theme)],
    [shared.uAccent, colourOf('accent', theme)],
    [shared.uContour, colourOf('contour', theme)],
    [shared.uLimit, colourOf('live', theme)],
    [shared.uFlow, colourOf('live', theme)],
  ]
  for (const [uniform, hex] of pairs) uniform.value.set(...rgbOf(hex))
  shared.uLine.value = lineWeight(theme)
  shared.uWash.value = shadeWash(theme)
}
