/** Shadows: the batch flattened on the ground along the sun, stencilled once so that overlaps do not darken twice. */
import { DoubleSide, KeepStencilOp, NotEqualStencilFunc, ReplaceStencilOp, type ShaderMaterial } from 'three'
import { common } from './glsl'
import { makeMaterial } from './makeMaterial'

export const shadowMaterial = (): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
attribute vec3 tag; varying vec3 vWorld;
void main(){ vec3 p = position - uSun * (max(position.y, 0.) / uSun.y); p.y = .004; vWorld = p; gl_Position = projectionMatrix * viewMatrix * vec4(p, 1.); }`,
    /* glsl */ `
uniform vec3 uShadow; varying vec3 vWorld;
void main(){ float f = 1. - smoothstep(uFade.x * .5, uFade.y * .6, length(vWorld.xz)); gl_FragColor = vec4(uShadow, .2 * f * (1. - .6 * uFrozen)); }`,
    {
      transparent: true,
      depthWrite: false,
      side: DoubleSide,
      polygonOffset: true,
      polygonOffsetFactor: -1,
      polygonOffsetUnits: -2,
      stencilWrite: true,
      stencilRef: 1,
      stencilFunc: NotEqualStencilFunc,
      stencilZPass: ReplaceStencilOp,
      stencilFail: KeepStencilOp,
      stencilZFail: KeepStencilOp,
    },
  )

export const wireShadowMaterial = (): ShaderMaterial => {
  const m = shadowMaterial()
  m.vertexShader =
    common +
    /* glsl */ `
attribute vec2 tube; attribute vec3 tag; varying vec3 vWorld;
void main(){ vec3 c = position; float m = (projectionMatrix * viewMatrix * vec4(c, 1.)).w / uPx; c += normal * max(tube.x, .45 * m);
  vec3 p = c - uSun * (max(c.y, 0.) / uSun.y); p.y = .004; vWorld = p; gl_Position = projectionMatrix * viewMatrix * vec4(p, 1.); }`
  return m
}
