/** The line beyond which a pace is tolerable: dash-dot in ink on a paper casing, as on the plan; never thinner than its pen. */
import type { ShaderMaterial } from 'three'
import { makeMaterial } from '../ink/makeMaterial'

/** @param isCasing the paper under the line, whole and wider */
export const zoneMaterial = (isCasing: boolean): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
attribute vec2 tube; attribute vec3 tag;
varying vec3 vWorld; varying float vArc;
void main(){
  vec4 c = projectionMatrix * viewMatrix * vec4(position, 1.);
  float r = max(tube.x, .5 * c.w / uPx * tag.z * uLine * uDpr) ${isCasing ? '* 2.2' : ''};
  vWorld = position + normal * r; vArc = tube.y;
  gl_Position = projectionMatrix * viewMatrix * vec4(vWorld, 1.);
}`,
    /* glsl */ `
varying vec3 vWorld; varying float vArc;
void main(){
  ${isCasing ? '' : 'float x = mod(vArc, 1.03); if (x > .6 && (x < .76 || x > .87)) discard;   /* metres: dash, gap, dot, gap */'}
  gl_FragColor = vec4(paperFade(${isCasing ? 'uPaper' : 'uInk'}, vWorld, 0.), 1.);
}`,
    isCasing ? { depthWrite: false } : {},
  )
