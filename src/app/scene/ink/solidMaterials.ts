/** Solids: matte wash, crease lines drawn inside the triangle, and the outline as a hull pushed out by pixels. */
import { BackSide, FrontSide, type ShaderMaterial } from 'three'
import { makeMaterial } from './makeMaterial'
import { slotIndex } from './palette'

/** Solids: matte wash + crease lines drawn inside the triangle, half a line each side (no z-fighting, any width, MSAA-free smooth). */
export const solidMaterial = (): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
attribute vec3 edge; attribute vec3 tag;
varying vec3 vColour, vNormal, vWorld, vEdge; varying float vInk, vMark, vKeep, vPencil;
void main(){
  vPencil = step(abs(tag.x - ${slotIndex.pencil}.), .5); vKeep = step(40., tag.z); vColour = uPalette[int(tag.x + .5)]; vNormal = normal; vEdge = edge; vWorld = position;
  gl_Position = projectionMatrix * viewMatrix * vec4(position, 1.);
  vInk = smoothstep(2.5, 9., tag.z * uPx / gl_Position.w) * airInk(length(gl_Position.w * 40. / uFov));
  vMark = abs(tag.y - uSelected) < .5 ? 1. : abs(tag.y - uHovered) < .5 ? .5 : 0.;
}`,
    /* glsl */ `
varying vec3 vColour, vNormal, vWorld, vEdge; varying float vInk, vMark, vKeep, vPencil;
void main(){
  vec3 c = daylight(mix(vColour, uAccent, vMark * .28), normalize(vNormal));
  c = mix(c, mix(uSky, vColour, smoothstep(-2., 9., vWorld.y)), vKeep);   /* skyline: a flat wash rising out of mist */
  c *= 1. - .2 * exp(-max(vWorld.y, 0.) * 5.) * (1. - vKeep);            /* contact with the ground */
  c += grain(gl_FragCoord.xy / uDpr) * .018;
  vec3 d = vEdge / max(fwidth(vEdge), vec3(1e-6));
  float px = min(min(d.x, d.y), d.z);
  float w = .62 * uLine * uDpr;
  float line = (1. - smoothstep(w - .5, w + .5, px)) * vInk;
  c = mix(c, mix(uInk, vColour * uInk, .25), line * .82);
  gl_FragColor = vec4(paperFade(mix(frozen(c), c, vPencil), vWorld, vKeep), 1.);
}`,
    { side: FrontSide },
  )

/** Outline: the same geometry again, back faces pushed out by a fixed number of pixels along the welded normal. */
export const hullMaterial = (): ShaderMaterial =>
  makeMaterial(
    /* glsl */ `
attribute vec3 hull; attribute vec3 tag;
varying vec3 vWorld, vColour; varying float vMark, vKeep, vAir;
void main(){
  vec4 p = projectionMatrix * viewMatrix * vec4(position, 1.);
  vec4 q = projectionMatrix * viewMatrix * vec4(position + hull * .01, 1.);
  vec2 dir = (q.xy / q.w - p.xy / p.w) * uView; float l = length(dir); dir = l > 1e-5 ? dir / l : vec2(0.);
  vMark = abs(tag.y - uSelected) < .5 ? 1. : 0.; vKeep = step(40., tag.z); vColour = uPalette[int(tag.x + .5)]; vAir = mix(airInk(p.w * 40. / uFov), .22, vKeep);
  float big = clamp(tag.z * 1.5 * uPx / p.w / 7., .25, 1.);
  float w = (1.15 * uLine * big + vMark * 1.6) * uDpr;
  p.xy += dir * w * 2. / uView * p.w;
  p.z += 1e-5 * p.w;
  vWorld = position; gl_Position = p;
}`,
    /* glsl */ `
varying vec3 vWorld, vColour; varying float vMark, vKeep, vAir;
void main(){ vec3 ink = mix(vColour * .8, uInk, vAir); gl_FragColor = vec4(paperFade(mix(mix(ink, uPaper, uFrozen * .45), uAccent, vMark), vWorld, vKeep), 1.); }`,
    { side: BackSide },
  )
