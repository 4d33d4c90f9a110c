/** The words that come with the page. The same `say` over fewer keys: what imports this does not fetch all the others. */
import { front } from './en/front'
import { makeSay } from './makeSay'

export const say = makeSay(front)
