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

export function paint(theme: Theme): void {
  slots.forEach((slot, index) => shared.uPalette.value[index]!.set(...rgbOf(surfaceColour(slot, theme))))
  rampNames.forEach((name, index) => shared.uRamp.value[index]!.set(...rgbOf(colourOf(name, theme))))
  const pairs: readonly (readonly [IUniform<Vector3>, string])[] = [
    [shared.uPaper, colourOf('paper', theme)],
    [shared.uSky, groundColour('sky', theme)],
    [shared.uSkyTop, groundColour('skyTop', theme)],
    [shared.uGround, groundColour('ground', theme)],
    [shared.uRoad, groundColour('road', theme)],
    [shared.uGrid, groundColour('cross', theme)],
    [shared.uGrass, groundColour('grass', theme)],
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
