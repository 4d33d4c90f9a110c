/** Every kind of rule, by id. A new kind: its file and one line here. */
import type { RuleKind } from '../language/kind'
import { across } from './across'
import { byWhom } from './byWhom'
import { count } from './count'
import { doneBefore } from './doneBefore'
import { follow } from './follow'
import { geometry } from './geometry'
import { invariantDuring } from './invariantDuring'
import { judgement } from './judgement'
import { leadOrder } from './leadOrder'
import { oneAtATime } from './oneAtATime'
import { oneOf } from './oneOf'
import { order } from './order'
import { plan } from './plan'
import { proveAround } from './proveAround'
import { sameOrder } from './sameOrder'
import { repeat } from './repeat'
import { responseAfterLivening } from './responseAfterLivening'
import { stateAt } from './stateAt'
import { stated } from './stated'

const all: readonly RuleKind[] = [
  across,
  byWhom,
  count,
  doneBefore,
  follow,
  geometry,
  invariantDuring,
  judgement,
  leadOrder,
  oneAtATime,
  oneOf,
  order,
  plan,
  proveAround,
  repeat,
  sameOrder,
  responseAfterLivening,
  stateAt,
  stated,
]

export const ruleKinds: ReadonlyMap<string, RuleKind> = new Map(all.map((kind) => [kind.id, kind]))
