/**
 * The sheet that everything stands on: paper, survey crosses each 5 m, the road; and while something is livened the tints
 * and the contours at one interval, every fifth heavy.
 */
import { type IUniform, ShaderMaterial, type Texture, Vector2 } from 'three'
import { common, look } from '../ink/glsl'
import { shared } from '../ink/uniforms'
import { farthest, nearest, points } from './potential'

const mostElectrodes = 12
const noRoad = 1e4

const perLog = ((points - 1) / Math.log(1 + farthest / nearest)).toFixed(6)

export function groundMaterial(): ShaderMaterial {
  const own: Record<string, IUniform> = {
    uTable: { value: null as Texture | null },
    uElectrodes: { value: Array.from({ length: mostElectrodes }, () => new Vector2()) },
    uCount: { value: 0 },
    uInterval: { value: 100 },
    uTop: { value: 2000 },
    uLive: { value: 0 },
    /** Across the line; far away where there is none. */
    uRoadAt: { value: new Vector2(noRoad, noRoad) },
  }
  return new ShaderMaterial({
    uniforms: { ...shared, ...own } as Record<string, IUniform>,
    vertexShader: `${common} varying vec3 vWorld; void main(){ vWorld = (modelMatrix * vec4(position, 1.)).xyz; gl_Position = projectionMatrix * viewMatrix * vec4(vWorld, 1.); }`,
    fragmentShader: /* glsl */ `${common}${look}
uniform vec3 uRoad, uGrid, uContour, uRamp[9]; uniform sampler2D uTable; uniform vec2 uElectrodes[${mostElectrodes}]; uniform int uCount; uniform float uInterval, uTop, uLive; uniform vec2 uRoadAt;
varying vec3 vWorld;
float stroke(float d, float px, float w){ return 1. - smoothstep(w * .5 - .5, w * .5 + .5, d / max(px, 1e-6)); }
/* volts and its gradient: one lookup pair per electrode, slope stored in the table */
vec3 volts(vec2 p){
  vec3 s = vec3(0.);
  for (int i = 0; i < ${mostElectrodes}; i++) {
    if (i >= uCount) break;
    vec2 d = p - uElectrodes[i]; float r = length(d);
    float k = log(1. + r / ${nearest}) * ${perLog};
    int a = int(min(k, ${(points - 2).toFixed(1)}));
    vec2 t = mix(texelFetch(uTable, ivec2(a, i), 0).rg, texelFetch(uTable, ivec2(a + 1, i), 0).rg, clamp(k - float(a), 0., 1.));
    s += vec3(t.x, t.y * d / max(r, 1e-3));
  }
  return s;
}
vec3 ramp(float t){ t = clamp(t, 0., 1.) * 8.; int i = int(min(t, 7.)); return mix(uRamp[i], uRamp[i + 1], t - float(i)); }
void main(){
  vec2 p = vWorld.xz; float px = length(fwidth(p)) * .7072; float pxm = px / uDpr; vec2 fx = vec2(length(vec2(dFdx(p.x), dFdy(p.x))), length(vec2(dFdx(p.y), dFdy(p.y))));
  vec3 c = uGround;
  c += (grain(p * 3.1) + grain(p * .37 + 9.)) * .006;
  float near = 1. - smoothstep(18., 60., length(p));
  float inRoad = smoothstep(-fx.x, fx.x, p.x - uRoadAt.x) * (1. - smoothstep(-fx.x, fx.x, p.x - uRoadAt.y));
  float verge = smoothstep(.9, .0, min(abs(p.x - uRoadAt.x), abs(p.x - uRoadAt.y)));
  c = mix(c, mix(uGround, uRoad, .55), verge * .6);
  c = mix(c, uRoad, inRoad);
  /* survey crosses every 5 m */
  vec2 g = abs(fract(p / 5. + .5) - .5) * 5.;
  float arm = .22; float cross = max(stroke(g.x, fx.x, 1.1 * uDpr) * step(g.y, arm), stroke(g.y, fx.y, 1.1 * uDpr) * step(g.x, arm));
  c = mix(c, uGrid, cross * .85 * near * (1. - inRoad) * (1. - smoothstep(.03, .12, pxm)));
  c = mix(c, mix(c, uPaper, .5), uFrozen);                                      /* the sheet pales, the contours do not */
  float live = uLive;
  if (live > .001) {
    vec3 v = volts(p); float k = v.x / uInterval;
    float w = length(vec2(dot(v.yz, dFdx(p)), dot(v.yz, dFdy(p)))) / uInterval;                                   /* contour steps per pixel, from the slope: no derivative noise */
    float band = (floor(k) + .5) * uInterval;
    float t = log(max(band, 1.) / uInterval) / log(uTop / uInterval);
    vec3 tint = mix(ramp((log(max(v.x, 1.) / uInterval)) / log(uTop / uInterval)), ramp(t), .7);
    float fill = smoothstep(.0, .9, k) * mix(.34, .86, clamp(t * 1.6, 0., 1.));
    c = mix(c, mix(tint, tint * (.75 + .25 * c / max(uGround, vec3(.01))), .5), fill * live);
    float minor = abs(fract(k - .5) - .5) / max(w, 1e-6);
    float keepMinor = 1. - smoothstep(.1, .26, w / uDpr);
    float line = (1. - smoothstep(.5 * uDpr - .35, .5 * uDpr + .6, minor)) * keepMinor * step(.5, k);
    float ki = k / 5.; float index = abs(fract(ki - .5) - .5) / max(w / 5., 1e-6);
    float iline = (1. - smoothstep(.95 * uDpr - .5, .95 * uDpr + .5, index)) * (1. - smoothstep(.1, .3, w / 5. / uDpr)) * step(2.5, k);
    c = mix(c, uContour, max(line * .62, iline * .95) * live * uLine / max(uLine, 1.));
  }
  float edge = max(stroke(abs(p.x - uRoadAt.x), fx.x, 1.2 * uDpr), stroke(abs(p.x - uRoadAt.y), fx.x, 1.2 * uDpr));
  float mid = stroke(abs(p.x - (uRoadAt.x + uRoadAt.y) * .5), fx.x, max(1.2 * uDpr, .09 / fx.x)) * step(.5, fract(p.y / 6.));
  c = mix(c, mix(uInk, uGround, .35), max(edge, mid * .6) * (1. - .5 * uFrozen) * (1. - smoothstep(.05, .3, fx.x / uDpr)));
  c += grain(gl_FragCoord.xy / uDpr) * .012;
  gl_FragColor = vec4(paperFade(c, vWorld, 0.), 1.);
}`,
  })
}
