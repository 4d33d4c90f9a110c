/** Sky, pen strokes of grass, lettering from a coverage atlas. */
import type { ShaderMaterial, Texture } from 'three'
import { slotIndex } from './palette'
import { makeMaterial } from './makeMaterial'

export const skyMaterial = (): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
varying vec2 vUv; void main(){ vUv = position.xy * .5 + .5; gl_Position = vec4(position.xy, .99999, 1.); }`,
    /* glsl */ `
varying vec2 vUv; uniform float uHorizon;
void main(){ float h = smoothstep(0., 1., (vUv.y - uHorizon) * 1.1); vec3 c = mix(uSky, uSkyTop, h); c += grain(gl_FragCoord.xy / uDpr) * .014; gl_FragColor = vec4(frozen(c), 1.); }`,
    { depthWrite: false },
    { uHorizon: { value: 0.5 } },
  )

/** Pen strokes (grass): plain lines, colour by uniform. */
export const strokeMaterial = (): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
attribute float shade; varying vec3 vWorld; varying float vShade;
void main(){ vWorld = position; vShade = shade; gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.); }`,
    /* glsl */ `
uniform vec3 uGrass; varying vec3 vWorld; varying float vShade;
void main(){ float near = 1. - smoothstep(14., 42., length(vWorld.xz)); gl_FragColor = vec4(frozen(uGrass), (.3 + .55 * vShade) * near * (1. - .75 * uFrozen)); }`,
    { transparent: true, depthWrite: false },
  )

/** Rain: ink, thin and pale. */
export const rainMaterial = (): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
attribute float shade; varying float vShade;
void main(){ vShade = shade; gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.); }`,
    /* glsl */ `
varying float vShade;
void main(){ gl_FragColor = vec4(mix(uInk, uSkyTop, .45), vShade * .75 * (1. - .75 * uFrozen)); }`,
    { transparent: true, depthWrite: false },
  )

/** Lettering from a coverage atlas; the ink comes from the theme. */
export const plateMaterial = (map: Texture): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
varying vec2 vUv; void main(){ vUv = uv; gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.); }`,
    /* glsl */ `
uniform sampler2D uMap; varying vec2 vUv; void main(){ gl_FragColor = vec4(uPalette[${slotIndex.ink}], texture2D(uMap, vUv).r * (1. - .5 * uFrozen)); }`,
    { transparent: true, depthWrite: false },
    { uMap: { value: map } },
  )
