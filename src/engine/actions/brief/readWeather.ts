/** Reads the weather, now and again during the job. */
import { weatherAt } from '../../site/weather'
import type { Action } from '../action'
import { mark, perceive } from '../changes'
import { always } from '../refuse'

export const readWeather: Action = {
  id: 'read-weather',
  covers: ['A04', 'A73'],
  speech: true,
  check: always,
  takes: () => 20,
  apply: (site, order) => {
    const { wind, rain, thunder } = weatherAt(site)
    const values = { wind, rain: rain ? 'rain' : 'no-rain', thunder: thunder ? 'thunder' : 'no-thunder' }
    return perceive(mark(site, 'weather-read'), order.who, { of: 'weather', by: 'read', says: 'weather.read', values })
  },
}
