import { tooCold as cold, tooHot as hot, tooWindy as windy, type WeatherHazard } from '../../hazards/weather';
import type { Check, Checked, Finding } from '../finding';
import { shownFactor } from '../shown';

const READINGS: Readonly<Record<WeatherHazard['reading'], string>> = {
  'weather.air': 'Air at',
  'weather.surface': 'Face at',
  'weather.wind': 'Wind of',
};

/** Air or face too cold to wash. */
export const tooCold = weatherCheck(cold, (limit) => ({
  check: 'freezing',
  what: `the minimum is ${limit}`,
  why: 'A saturated wall that freezes spalls, and cleaners do not work in the cold',
  todo: 'Wait for weather that stays above it until the wall is dry and a week after, or heat and enclose',
  source: 'ufgs-04900',
}));

/** A face too hot to put cleaner on. */
export const tooHot = weatherCheck(hot, (limit) => ({
  check: 'heat',
  what: `no cleaner goes on at ${limit} or more`,
  why: 'Cleaner dries on a hot face and stains it',
  todo: 'Wait for shade or a cooler time of day',
  source: 'guide-section-brick',
}));

/** More wind than cleaner may be sprayed in. */
export const tooWindy = weatherCheck(windy, (limit) => ({
  check: 'wind',
  what: `no cleaner is sprayed in more than ${limit}`,
  why: 'Spray drifts onto people, cars and landscaping',
  todo: 'Apply the cleaner with a brush, screen the work, or wait',
  source: 'estimate',
}));

/** One finding for each reading, once for the job. */
function weatherCheck(
  hazard: (zone: Checked['zones'][number], factors: Checked['factors']) => WeatherHazard[],
  say: (limit: string) => Omit<Finding, 'where'>,
): Check {
  return ({ zones, factors }) => {
    const found = zones.map((zone) => hazard(zone, factors)).find((readings) => readings.length > 0) ?? [];
    return found.map(({ reading, limit }) => {
      const finding = say(shownFactor(factors, limit));
      return {
        ...finding,
        what: `${READINGS[reading]} ${shownFactor(factors, reading)}, ${finding.what}`,
        where: `factor ${reading}`,
      };
    });
  };
}
