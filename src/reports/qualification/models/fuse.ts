/** `fuse`: seconds until an expulsion fuse link melts; `edge` least is the quickest link of its kind, most the slowest. */
import { fuseLinkTypes, fuseRatings, meltingTime } from '../../../engine'
import { model } from '../model'

export const fuseModel = model(
  'fuse',
  (inputs) => ({
    link: inputs.oneOf('link', fuseLinkTypes),
    rating: inputs.oneOf('ratingA', fuseRatings),
    edge: inputs.oneOf('edge', ['least', 'most']),
    current: inputs.number('currentA', { atLeast: 0 }),
  }),
  ({ link, rating, edge, current }) => ({ timeS: meltingTime(link, rating, current, edge) }),
)
