/** A material that reads the shared uniforms by reference: one write reaches all of them. */
import { type IUniform, ShaderMaterial } from 'three'
import { common, look } from './glsl'
import { shared } from './uniforms'

export const makeMaterial = (
  vertexShader: string,
  fragmentShader: string,
  extra: ConstructorParameters<typeof ShaderMaterial>[0] = {},
  own: Record<string, IUniform> = {},
): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: { ...shared, ...own } as Record<string, IUniform>,
    vertexShader: common + vertexShader,
    fragmentShader: common + look + fragmentShader,
    ...extra,
  })
