/** Foot of every sheet, on screen and on paper. */
import { useStore } from 'zustand'
import { say } from '../../../text/front'
import { shelf } from '../../storage/shelf'
import { assessStore } from '../../stores/assessStore'
import { type JobHead, jobStore } from '../../stores/jobStore'
import { places, showDialog, viewStore } from '../../stores/viewStore'

export function TitleBlock() {
  const place = useStore(viewStore, (view) => view.place)
  const head = useStore(jobStore, (job) => job.head)
  const isReleased = useStore(assessStore, (assessment) => assessment.phase === 'released')
  return (
    <footer className='tblock'>
      <Field label={say('block.scenario')} value={head?.title ?? say('block.none')} />
      <Field
        label={say('block.seed')}
        value={head ? (head.purpose === 'assess' && !isReleased ? say('block.sealed') : String(head.seed)) : '–'}
        isFigure
      />
      <Field label={say('block.pack')} value={head ? head.packName : '–'} />
      <Field label={say('block.purpose')} value={head ? purposeOf(head) : say('block.notStarted')} />
      <Field label={say('block.units')} value={say('block.unitsValue')} isOptional />
      <button type='button' className='caution' onClick={() => showDialog('caution')}>
        {say('app.caution')}
      </button>
      <Field label={say('block.version')} value={String(shelf[0]?.engine ?? '–')} isFigure isOptional />
      <Field
        label={say('block.sheet')}
        value={
          place === 'figures' || place === 'office'
            ? say(`block.${place}`)
            : say('block.sheetOf', { number: places.indexOf(place) + 1, total: places.length })
        }
      />
    </footer>
  )
}

/** What was shown stays marked, on every sheet and every print. */
function purposeOf({ purpose, isShowing, shown }: JobHead): string {
  if (isShowing) return say('purpose.showing')
  return shown ? say('purpose.shown', { count: shown }) : say(`purpose.${purpose}`)
}

interface FieldProps {
  readonly label: string
  readonly value: string
  readonly isFigure?: boolean
  readonly isOptional?: boolean
}

function Field({ label, value, isFigure = false, isOptional = false }: FieldProps) {
  return (
    <div className={isOptional ? 'opt' : undefined}>
      <span className='k'>{label}</span>
      <span className={isFigure ? 'n' : undefined}>{value}</span>
    </div>
  )
}
