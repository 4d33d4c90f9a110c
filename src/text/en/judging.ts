/** What grading leaves to a person. */
export const judging = {
  'not-judged.climbing': 'Climbing and moving on the pole',
  'not-judged.stick-feel': 'Feel for the stick: how a clamp bites, how a tug answers',
  'not-judged.strength': 'Strength and endurance',
  'not-judged.communication': 'How things were said, and whether they were understood',
  'not-judged.situational-judgement': 'Judgement in what was not foreseen',
  'not-judged.exposure-not-swept': 'What could have happened at other moments: it was not tried',
  'not-judged.exposure-marginal': 'An exposure that is above its limit in part of the stated range',
  'not-judged.circuit-unsolved': 'An instant whose circuit gave no answer: it counts as neither safe nor unsafe',
} as const
