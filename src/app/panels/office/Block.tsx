/** A heading of the form and what stands under it. */
import type { ReactNode } from 'react'
import { placeText } from '../../stores/office/place'
import type { FieldProps } from './boardContext'
import { Issues } from './Issues'

export function Block({
  label,
  tools,
  place,
  says,
  children,
  isBare = false,
}: Omit<FieldProps, 'node' | 'value' | 'element'> & { children: ReactNode }) {
  if (isBare)
    return (
      <>
        <Issues place={place} />
        {children}
      </>
    )
  return (
    <div role='group' className='officeblock' id={placeText(place)} aria-label={label} tabIndex={-1}>
      <div className='officetools'>
        <b>{label}</b>
        {says && <span className='note'>{says}</span>}
        {tools}
      </div>
      <Issues place={place} />
      {children}
    </div>
  )
}
