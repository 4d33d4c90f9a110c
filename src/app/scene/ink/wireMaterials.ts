/** Wires with a least width on the screen, their outlines, and current as arrow-headed dashes on a paper sleeve. */
import { BackSide, type ShaderMaterial } from 'three'
import { dashesPerSecond } from '../../stores/flows'
import { slotIndex } from './palette'
import { makeMaterial } from './makeMaterial'

const tubeVertex = (extra: string): string => /* glsl */ `
#define BARE_A ${slotIndex.aluminium}.
#define BARE_B ${slotIndex.steel}.
attribute vec2 tube; attribute vec3 tag;
varying vec3 vColour, vNormal, vWorld; varying float vArc, vDensity, vMark, vRad, vThin;
void main(){
  vec4 c = projectionMatrix * viewMatrix * vec4(position, 1.);
  float m = c.w / uPx;                                     /* metres per pixel here */
  vMark = abs(tag.y - uSelected) < .5 ? 1. : abs(tag.y - uHovered) < .5 ? .5 : 0.;
  ${extra}
  vRad = r; vWorld = position + normal * r; vNormal = normal; vArc = tube.y;
  gl_Position = projectionMatrix * viewMatrix * vec4(vWorld, 1.);
}`

/** Wires: true thickness near, never thinner than minPx far. */
export const wireMaterial = (): ShaderMaterial =>
  makeMaterial(
    tubeVertex(/* glsl */ `
  vColour = uPalette[int(tag.x + .5)]; vDensity = smoothstep(1.2, 2.4, tube.x / (m * uDpr));
  vThin = abs(tag.x - BARE_A) < .5 || abs(tag.x - BARE_B) < .5 ? .3 : .72;   /* bare metal thins to ink, leads and ropes keep their colour */
  float r = max(tube.x, .5 * m * tag.z * uLine * uDpr * (1. + vMark));`),
    /* glsl */ `
varying vec3 vColour, vNormal, vWorld; varying float vArc, vDensity, vMark, vThin;
void main(){
  vec3 c = daylight(vColour, normalize(vNormal));
  c = mix(mix(uInk, vColour, vThin), c, vDensity);             /* thin: an ink line; thick: a lit wire */
  c = frozen(mix(c, uAccent, vMark * .8));
  gl_FragColor = vec4(paperFade(c, vWorld, 0.), 1.);
}`,
  )

export const wireHullMaterial = (): ShaderMaterial =>
  makeMaterial(
    tubeVertex(/* glsl */ `
  float px = tube.x / (m * uDpr);
  vColour = vec3(0.); vDensity = 0.;
  float r = max(tube.x, .5 * m * tag.z * uLine * uDpr) + m * uDpr * uLine * (smoothstep(1.3, 2.3, px) * 1.05 + vMark) - (px < 1.3 && vMark < .5 ? m * .6 : 0.);`),
    /* glsl */ `
varying vec3 vColour, vNormal, vWorld; varying float vArc, vDensity, vMark, vRad;
void main(){ gl_FragColor = vec4(paperFade(mix(mix(uInk, uPaper, uFrozen * .4), uAccent, vMark), vWorld, 0.), 1.); }`,
    { side: BackSide },
  )

/** Current: a paper sleeve round the path with arrow-headed dashes on it. Density = dashes per metre; as many dashes of every current pass a point in a second, so closer dashes are more current.
 *  With reduced motion uTime stands still: the arrow heads alone tell the direction. */
export const flowMaterial = (overlay: boolean): ShaderMaterial =>
  makeMaterial(
    tubeVertex(/* glsl */ `
  vColour = (viewMatrix * vec4(normal, 0.)).xyz; vDensity = tag.x;
  float r = max(tube.x * 1.5, .5 * m * tag.z * uDpr * (.8 + .5 * tag.x));`),
    /* glsl */ `
uniform vec3 uFlow;
varying vec3 vColour, vNormal, vWorld; varying float vArc, vDensity, vMark, vRad;
void main(){
  float period = mix(${overlay ? '.3, .09' : '.9, .16'}, vDensity);
  float lag = vRad * 2.2 * (1. - abs(normalize(vColour).z));            /* edges lag behind the crown: every dash is an arrow head */
  float x = fract((vArc + lag) / period - uTime * ${dashesPerSecond});
  float fill = mix(.34, .72, vDensity);
  float aa = fwidth(vArc) / period;
  float on = smoothstep(0., aa, x) * (1. - smoothstep(fill, fill + aa, x));
  on = mix(on, .5 + .5 * fill, smoothstep(.2, .45, aa));                 /* too far to count: a plain line */
  float rim = smoothstep(.72, .9, 1. - abs(normalize(vColour).z));       /* the sleeve keeps a thin edge where it is paper */
  vec3 c = mix(mix(uPaper, uFlow, rim * .7), uFlow, on);
  gl_FragColor = vec4(c, 1.);
}`,
    overlay ? { depthTest: false, depthWrite: false, transparent: true } : {},
  )
