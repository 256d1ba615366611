import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';

/** Air, face and wind over a wet film. */
export interface Weather {
  /** degC */
  readonly air: number;
  /** degC */
  readonly surface: number;
  /** share of saturation, 0 to 1 */
  readonly humidity: number;
  /** km/h */
  readonly wind: number;
}

/**
 * Evaporation of a wet film: E = 5 [(Tc + 18)^2.5 - r (Ta + 18)^2.5] (V + 4) 1e-6, none where the air would give
 * water to the face. Source: ACI 305R; Uno 1998. For level concrete, about 40% either way.
 * @param weather temperatures in degC, wind in km/h
 * @returns kg/(m2 h)
 */
export function evaporation(weather: Weather): number {
  const {
    evaporationCoefficient: c,
    evaporationOffset: offset,
    evaporationPower: power,
    windOffset,
  } = constants;
  // Below the offset the equation has no meaning, and nothing dries to speak of.
  const surface = Math.max(0, weather.surface + offset.value) ** power.value;
  const air = Math.max(0, weather.air + offset.value) ** power.value;
  return c.value * Math.max(0, surface - weather.humidity * air) * (weather.wind + windOffset.value);
}

/**
 * Time until a film has dried.
 * @param film water on the face, L/m2 (a thickness in mm)
 * @param density density of water, kg/L
 * @param rate evaporation, kg/(m2 h)
 * @returns min; infinite where nothing evaporates
 */
export function timeToDry(film: number, density: number, rate: number): number {
  return ((film * density) / rate) * constants.minPerHour.value;
}

/**
 * Time until the cleaner has dried on the face, in the weather in force.
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns min; infinite where nothing evaporates
 */
export function dryingTime(factors: FactorsInForce, rec?: Recorder): number {
  const rate = evaporation({
    air: factors.value('weather.air'),
    surface: factors.value('weather.surface'),
    humidity: factors.value('weather.humidity'),
    wind: factors.value('weather.wind'),
  });
  const time = timeToDry(factors.value('weather.film'), factors.value('water.density'), rate);
  if (rec) {
    rec.line('evaporation', rate);
    if (rate > 0) rec.line('timeToDry', time);
  }
  return time;
}
