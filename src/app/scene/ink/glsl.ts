/** Shader text that all materials begin with: the shared uniforms, and the light of the sheet in display-space colour. */
import { slots } from './palette'

export const common = /* glsl */ `
precision highp float;
uniform vec3 uPalette[${slots.length}];
uniform vec3 uPaper, uSky, uSkyTop, uGround, uInk, uShade, uAccent, uSun;
uniform float uFov, uLine, uWash, uPx, uDpr, uSelected, uHovered, uFrozen, uTime;
uniform vec2 uView, uFade;
/* far ink pales: equal apparent size, whatever the lens */
float airInk(float metres){ return 1. - .68 * smoothstep(18., 75., metres); }
`

export const look = /* glsl */ `
float grain(vec2 p){ return fract(sin(dot(floor(p), vec2(12.9898, 78.233))) * 43758.5453) - 0.5; }
/* soft daylight: one wide sun term, sky fill from above; the shaded side is a cool wash, never black */
vec3 daylight(vec3 base, vec3 n){
  float sun = smoothstep(-0.35, 0.75, dot(n, uSun));
  float sky = 0.5 + 0.5 * n.y;
  vec3 shaded = mix(base, base * uShade * 1.25, uWash);
  vec3 c = mix(shaded, base, sun);
  return c * (0.93 + 0.09 * sky);
}
vec3 paperFade(vec3 c, vec3 world, float keep){
  float f = smoothstep(uFade.x, uFade.y, length(world.xz));
  return mix(c, mix(uSky, c, keep), f);
}
vec3 frozen(vec3 c){ float g = dot(c, vec3(.3,.59,.11)); return mix(c, mix(vec3(g), uPaper, 0.58), uFrozen); }
`
