/** True while the sheet is on its way to the printer: what a canvas shows does not print, the drawings do. */
import { useEffect, useState } from 'react'
import { flushSync } from 'react-dom'

export function usePrinting(): boolean {
  const [isPrinting, setPrinting] = useState(false)
  useEffect(() => {
    const before = (): void => flushSync(() => setPrinting(true))
    const after = (): void => setPrinting(false)
    addEventListener('beforeprint', before)
    addEventListener('afterprint', after)
    return () => {
      removeEventListener('beforeprint', before)
      removeEventListener('afterprint', after)
    }
  }, [])
  return isPrinting
}
