// Property tests draw the same cases each time, so that a green tree stays green; FUZZ_SEED draws others, to look for faults.

import fc from 'fast-check'

fc.configureGlobal({ seed: Number(process.env.FUZZ_SEED ?? 20310514) })
