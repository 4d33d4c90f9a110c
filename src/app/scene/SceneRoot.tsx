/** The scene inside the canvas: batches by how often they change, camera, picking, labels. */
import { useFrame, useThree } from '@react-three/fiber'
import { useCallback, useEffect, useLayoutEffect, useMemo, useRef } from 'react'
import { Mesh, type PerspectiveCamera, PlaneGeometry, Vector3 } from 'three'
import { say, volts } from '../../text'
import { clampSeat } from './gear/leads'
import { Grips } from './grips/Grips'
import type { GripLayer } from './grips/gripLayer'
import { type Way, waysOf } from './grips/ways'
import { CameraRig } from './camera/CameraRig'
import { InkBatch } from './ink/InkBatch'
import { lasting } from './ink/lasting'
import { type Built, built, join, type Hit } from './ink/part'
import { Plates } from './ink/Plates'
import { skyMaterial } from './ink/sheetMaterials'
import { selectedTag } from './ink/tag'
import { paint, shared } from './ink/uniforms'
import { useMeshes } from './ink/useMeshes'
import { clearOf, solidsOf } from './labels/clearOf'
import type { Label } from './labels/label'
import type { Inset, LabelLayer } from './labels/labelLayer'
import { goneLabels, liveningLabels } from './labels/liveningLabels'
import { siteLabels, switchLabels } from './labels/siteLabels'
import { tapeLabels, tapeView } from './tape/tapeView'
import { CrewBatch } from './people/CrewBatch'
import { feelersLabels, feelersView } from './people/feelers'
import { isBelowLv } from './people/stance'
import { anchorIn } from './pick/pick'
import { Picker } from './pick/Picker'
import { placeHits, placeRing } from './pick/places'
import type { AnchorOf, SceneInput } from './sceneInput'
import { type Dimension, dimensionLabels, dimensionsOf, dimensionsView } from './site/dimensions'
import { draftView } from './site/draft'
import { Flows } from './site/Flows'
import { Ground } from './site/Ground'
import { Rain } from './site/Rain'
import { skyline } from './site/scenery'
import { sitePlates } from './site/siteModel'
import type { SitePicture } from './site/sitePicture'
import { switchModel, switchPlates } from './site/switchModel'
import { useSite } from './site/useSite'

interface Props {
  readonly input: SceneInput
  readonly labels: LabelLayer
  readonly grips: GripLayer
  /** What can be picked now, for the test hook. */
  readonly onHits: (hits: readonly Hit[]) => void
}

const noInset: Inset = { top: 0, bottom: 0, right: 0 }

export function SceneRoot({ input, labels, grips, onHits }: Props) {
  const site = useSite(input)
  const invalidate = useThree((state) => state.invalidate)
  const isSwitch = input.view === 'switch'
  const device = site.picture.switches.find(({ id }) => id === input.switchId) ?? site.picture.switches[0]
  const switchBuilt = useSwitch(isSwitch, site, device)
  const siteHits = useMemo(() => [...site.hits, ...placeHits(site.picture)], [site.hits, site.picture])
  const hits = isSwitch ? switchBuilt.hits : siteHits
  const inset = input.inset ?? noInset
  const { layout, picture, routes } = site
  const ways = useWays(input, layout)
  const dimensions = useDimensions(input, site)
  const source = useLatest({ layout, picture, joints: site.joints, livening: site.livening, hits })
  const seatOf = useCallback((thing: string) => clampSeat(layout, picture, routes, thing), [layout, picture, routes])

  useLayoutEffect(() => {
    paint(input.theme, site.picture.isDusk)
    shared.uFrozen.value = input.isFrozen ? 1 : 0
    shared.uSelected.value = selectedTag(input.selection)
    invalidate()
  }, [input.theme, input.isFrozen, input.selection, site.picture.isDusk, invalidate])

  const instant = input.instant ?? null
  const { persons, measured, hasFigures = false, feelers = null, told = null } = input
  useEffect(() => {
    const source = { ...site, view: input.view, persons: persons ?? [], isLivened: site.livening !== null }
    const shown: readonly Label[] = isSwitch
      ? device
        ? switchLabels(site.layout, device)
        : []
      : site.livening && instant
        ? [...siteLabels(source), ...liveningLabels(source, site.livening, instant, site.sheet, hasFigures)]
        : siteLabels(source)
    const added = isSwitch
      ? []
      : [
          ...(measured ? tapeLabels(measured) : []),
          ...dimensionLabels(dimensions),
          ...(feelers ? feelersLabels(feelers, site.hits) : []),
          ...goneLabels(source, told),
        ]
    labels.set([...shown, ...added])
    labels.keepClear(isSwitch ? [] : clearOf(site), isSwitch ? [] : solidsOf(site))
    const contours = site.livening?.strongest ? [say('scene.contours', { volts: volts(site.livening.interval) })] : []
    const note = [...contours, ...(told ? [told.last] : [])]
    labels.note(isSwitch || note.length === 0 ? null : note.join(' · '))
    invalidate()
  }, [
    labels,
    site,
    device,
    isSwitch,
    input.view,
    persons,
    measured,
    instant,
    hasFigures,
    dimensions,
    feelers,
    told,
    invalidate,
  ])
  useEffect(() => onHits(hits), [hits, onHits])

  return (
    <>
      <CameraRig
        view={input.view}
        gaze={input.gaze ?? null}
        source={source}
        hasLowerStation={site.picture.people.some(isBelowLv)}
        asked={input.asked ?? 0}
        inset={inset}
        isReduced={input.reducedMotion}
        canOrbit={!input.onGroundPoint}
      />
      <Frame input={input} hits={hits} labels={labels} inset={inset} isFlowing={site.livening !== null && !isSwitch} />
      <Sky />
      <Ground livening={isSwitch ? null : site.livening} road={site.layout.road} />
      {site.picture.weather.rain && <Rain wind={site.picture.weather.wind} />}
      {isSwitch ? (
        <SwitchSheet of={switchBuilt} layout={site.layout} device={device} />
      ) : (
        <SiteBatches site={site} input={input} ways={ways} dimensions={dimensions} />
      )}
      <Grips
        handling={isSwitch ? null : (input.handling ?? null)}
        layer={grips}
        layout={layout}
        ways={ways}
        seatOf={seatOf}
      />
      <Picker
        hits={hits}
        selection={input.selection}
        onSelect={input.onSelect}
        onAct={input.onAct}
        onLook={input.onLook}
        onHover={input.onHover}
        onTape={input.onTape}
        onGroundPoint={input.onGroundPoint}
      />
    </>
  )
}

type SiteState = ReturnType<typeof useSite>

/** Always the same function, always the newest answer: who calls it later does not follow every change. */
function useLatest<Value>(value: Value): () => Value {
  const latest = useRef(value)
  useLayoutEffect(() => {
    latest.current = value
  })
  return useCallback(() => latest.current, [])
}

const noWays: readonly Way[] = []

function useWays({ handling }: SceneInput, layout: SiteState['layout']): readonly Way[] {
  const offered = handling?.handled.kind === 'ways' ? handling.handled.ways : null
  return useMemo(() => (offered ? waysOf(layout, offered) : noWays), [offered, layout])
}

const noDimensions: readonly Dimension[] = []

function useDimensions(
  { hasDimensions = false, view }: SceneInput,
  { layout, picture }: SiteState,
): readonly Dimension[] {
  return useMemo(() => {
    const all = hasDimensions ? dimensionsOf(layout, picture) : noDimensions
    // From above what is upright is a point.
    return view === 'plan' ? all.filter(({ ends: [from, to] }) => from.x !== to.x || from.z !== to.z) : all
  }, [hasDimensions, view, layout, picture])
}

interface BatchesProps {
  readonly site: SiteState
  readonly input: SceneInput
  readonly ways: readonly Way[]
  readonly dimensions: readonly Dimension[]
}

function SiteBatches({ site, input, ways, dimensions }: BatchesProps) {
  const far = useMemo(skyline, [])
  const plates = useMemo(
    () => sitePlates(site.layout, site.picture, say('gear.register')),
    [site.layout, JSON.stringify([site.picture.tarp, site.picture.truck])],
  )
  const { draft: pointed = null, handling } = input
  const handled = handling?.handled ?? null
  const { measured, selection } = input
  const ring = useMemo(() => placeRing(site.picture, selection), [site.picture, selection])
  const tape = useMemo(() => (measured ? tapeView(measured) : null), [measured])
  const lengths = useMemo(() => (dimensions.length > 0 ? dimensionsView(dimensions) : null), [dimensions])
  const { feelers = null } = input
  const strongest = site.livening?.strongest ?? null
  const felt = useMemo(() => (feelers ? feelersView(feelers, strongest) : null), [feelers, strongest])
  const draft = useMemo(
    () => (pointed || handled ? draftView(site.layout, { draft: pointed, handled, ways }) : null),
    [site.layout, pointed, handled, ways],
  )
  return (
    <>
      <InkBatch of={far} hasOutline={false} hasShadow={false} />
      <InkBatch of={site.setting} />
      <InkBatch of={site.line} />
      <InkBatch of={site.gear} />
      <CrewBatch {...site} isReduced={input.reducedMotion} />
      {draft && <InkBatch of={draft} hasShadow={false} />}
      {ring && <InkBatch of={ring} hasShadow={false} />}
      {tape && <InkBatch of={tape} hasShadow={false} />}
      {lengths && <InkBatch of={lengths} hasShadow={false} />}
      {felt && <InkBatch of={felt} hasShadow={false} />}
      <Plates plates={plates} />
      {site.livening && <Flows livening={site.livening} />}
    </>
  )
}

const nothingBuilt: Built = built([])

function useSwitch(isShown: boolean, site: SiteState, device: SitePicture['switches'][number] | undefined): Built {
  const { layout, picture } = site
  return useMemo(
    () => (isShown && device ? switchModel(layout, picture, device) : nothingBuilt),
    [isShown, layout, picture, device],
  )
}

function SwitchSheet({
  of,
  layout,
  device,
}: {
  of: Built
  layout: SiteState['layout']
  device: SitePicture['switches'][number] | undefined
}) {
  const far = useMemo(skyline, [])
  const plates = useMemo(() => (device ? switchPlates(layout, device) : []), [layout, device])
  const solids = useMemo(() => join(of), [of])
  return (
    <>
      <InkBatch of={far} hasOutline={false} hasShadow={false} />
      <InkBatch of={solids} />
      {plates.length > 0 && <Plates plates={plates} />}
    </>
  )
}

const sky = lasting(skyMaterial())
const horizon = new Vector3()

const Sky = () =>
  useMeshes(() => {
    const sheet = new Mesh(new PlaneGeometry(2, 2), sky)
    sheet.frustumCulled = false
    sheet.renderOrder = -1
    return { meshes: [sheet] }
  }, [])

interface FrameProps {
  readonly input: SceneInput
  readonly hits: readonly Hit[]
  readonly labels: LabelLayer
  readonly inset: Inset
  readonly isFlowing: boolean
}

/** Written once per drawn frame, before drawing; labels and plates follow the same camera. */
function Frame({ input, hits, labels, inset, isFlowing }: FrameProps) {
  const invalidate = useThree((state) => state.invalidate)
  const moves = isFlowing && !input.isFrozen && !input.reducedMotion
  useFrame(({ camera: any, size, gl }, seconds) => {
    const camera = any as PerspectiveCamera
    const dpr = gl.getPixelRatio()
    shared.uView.value.set(size.width * dpr, size.height * dpr)
    shared.uDpr.value = dpr
    shared.uFov.value = camera.fov
    shared.uPx.value = (size.height * dpr) / (2 * Math.tan((camera.fov * Math.PI) / 360))
    if (moves) {
      shared.uTime.value += Math.min(seconds, 0.05)
      invalidate()
    }
    camera.updateMatrixWorld()
    camera.getWorldDirection(horizon).setY(0).setLength(1000).add(camera.position).project(camera)
    sky.uniforms.uHorizon!.value = Math.min(3, Math.max(-2, (horizon.y + 1) / 2))
    const anchorOf: AnchorOf = (id) => anchorIn(hits, id, camera, size)
    labels.covered = input.onFrame?.(anchorOf) ?? null
    labels.inset = inset
    labels.update(camera, size.width, size.height)
  })
  return null
}
