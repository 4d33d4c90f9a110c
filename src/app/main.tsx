// Wiring, nothing else: puts the app into the page.

import '@fontsource-variable/atkinson-hyperlegible-next'
import '@fontsource-variable/atkinson-hyperlegible-mono'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'

const place = document.getElementById('app')
if (!place) throw new Error('index.html has no element #app')

createRoot(place).render(
  <StrictMode>
    <main>
      <h1>Earths On</h1>
      <p>
        A training aid. Your employer’s rules, local codes and licensed practice decide. A pass here is not a field
        authorisation.
      </p>
    </main>
  </StrictMode>,
)
