/** The weather at an instant, and whether it is dark: as the scenario has it turn, job second by job second. */

export interface Weather {
  /** m/s. */
  readonly wind: number
  readonly rain: boolean
  readonly thunder: boolean
}

/** What is not named stays as it was. */
export interface WeatherChange extends Partial<Weather> {
  /** Job second. */
  readonly at: number
}

interface When {
  readonly scenario: {
    readonly startsAt: number
    readonly weather: Weather
    readonly weatherChanges?: readonly WeatherChange[]
    readonly dark?: { readonly from: number; readonly to: number }
  }
  readonly time: number
}

export function weatherAt({ scenario, time }: When): Weather {
  const past = (scenario.weatherChanges ?? []).filter((it) => it.at <= time)
  const { wind, rain, thunder } = past.reduce<Weather>((now, change) => ({ ...now, ...change }), scenario.weather)
  return { wind, rain, thunder }
}

const day = 86_400

export function isDark({ scenario: { startsAt, dark }, time }: When): boolean {
  if (dark === undefined) return false
  const now = (startsAt + time) % day
  return dark.from <= dark.to ? now >= dark.from && now < dark.to : now >= dark.from || now < dark.to
}
