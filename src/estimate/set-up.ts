import { crewHours, days, type CrewHours, type Days } from '../quantity/quantities';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';

/**
 * Days of work and the set-up that they take. Days are not rounded, so that zones add up to the job, and they follow
 * from the other crew-hours alone, so that there is no circle.
 * @param other crew-hours of the zone before set-up
 * @param factors the factors in force
 * @param rec takes down the lines; `otherHours@` has been taken down
 * @returns days, and crew-hours of set-up and clear-up
 */
export function setUp(
  other: CrewHours,
  factors: FactorsInForce,
  rec?: Recorder,
): { days: Days; hours: CrewHours } {
  const crew = factors.value('crew');
  const perDay = factors.value('setup.perDay');
  const shift = factors.value('shift');
  const worked = other / (crew * (shift - perDay));
  const hours = worked * perDay * crew;
  if (rec) {
    rec.line('days@', 'otherHours@ / (crew * (shift - setup_perDay))', worked, 'days', 'days');
    rec.line('setupHours@', 'days@ * setup_perDay * crew', hours, 'crewHours', 'setupHours');
  }
  return { days: days(worked), hours: crewHours(hours) };
}
