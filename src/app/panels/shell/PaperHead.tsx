/** What stands first on every printed sheet: whose sheet it is, and the caution. Shown on paper only. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { cautionOf } from '../../storage/packShelf'
import { jobStore } from '../../stores/jobStore'
import { viewStore } from '../../stores/viewStore'
import { BrandMark } from '../drawing/Marks'

export function PaperHead() {
  const place = useStore(viewStore, (view) => view.place)
  const pack = useStore(jobStore, (job) => job.head?.pack ?? '')
  return (
    <div className='paperhead'>
      <div className='printbrand'>
        <BrandMark /> <b>{say('app.name')}</b>
        <span>{place === 'figures' || place === 'office' ? say(`block.${place}`) : say(`app.${place}`)}</span>
      </div>
      {pack !== '' && <p className='printcaution'>{cautionOf(pack)}</p>}
      <p className='printcaution'>{say('app.caution.full')}</p>
    </div>
  )
}
