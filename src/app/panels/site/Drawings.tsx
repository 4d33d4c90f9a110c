/** Elevation and plan of the crew's picture, with a ring at the chosen thing; or the scene, when it is chosen. */
import { useStore } from 'zustand'
import { say } from '../../../text'
import { viewStore } from '../../stores/viewStore'
import { SiteElevation } from '../drawing/SiteElevation'
import { SitePlan } from '../drawing/SitePlan'
import type { Scale } from '../drawing/pen'
import type { SiteView } from '../drawing/siteView'
import { viewOfSite } from '../drawing/viewOfSite'
import { useBelief } from '../useBelief'

export function Drawings() {
  const belief = useBelief()
  const persons = useStore(viewStore, (view) => view.persons)
  const thing = useStore(viewStore, (view) => view.thing)
  const site = viewOfSite(belief)
  return (
    <div className="sheetdrawings">
      <SiteElevation site={site} width={352} height={500} perMetre={42} origin={[126, 424]} title={say('drawing.elevation')}>
        {(scale) => <Ring thing={thing} site={site} scale={scale} />}
      </SiteElevation>
      <SitePlan
        site={site}
        frame={{ width: 352, height: 216, perMetre: 10, origin: [184, 124] }}
        selectedPersons={persons}
        title={say('drawing.plan')}
      />
    </div>
  )
}

function Ring({ thing, site, scale }: { thing: string | null; site: SiteView; scale: Scale }) {
  const wire = [...site.wires, ...site.lv].find((it) => it.id === thing)
  const rod = site.rods.find((it) => `rod/${it.id}` === thing)
  const at = wire
    ? ([scale.x(-wire.across), scale.y(wire.height)] as const)
    : rod
      ? ([scale.x(-rod.y), scale.y(0.2)] as const)
      : thing === 'arm'
        ? ([scale.x(-0.5), scale.y(site.pole.arm)] as const)
        : thing === 'cover' && site.cover
          ? ([scale.x(0), scale.y((site.cover.from + site.cover.to) / 2)] as const)
          : null
  return at && <circle cx={at[0]} cy={at[1]} r="11" className="d-acc" style={{ strokeWidth: 'var(--p-wire)' }} />
}

