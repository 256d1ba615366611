import { crewHours, type CrewHours, type SquareMetres } from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { Patch } from './patch';
import type { PreWet } from './pre-wet';

/** The crew's hours of a zone from wetting to rinsing. */
export interface WashHours {
  readonly patches: number;
  readonly preWet: CrewHours;
  readonly apply: CrewHours;
  readonly rinse: CrewHours;
}

/**
 * Crew-hours of washing a zone patch by patch: pre-wet, apply, wait, rinse. The next patch is pre-wetted during the
 * wait; only the first has no wait to hide in.
 * @param area washed area of the zone, m2
 * @param patch the patch
 * @param wet the pre-wet of the zone
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns whole patches, and crew-hours by part
 */
export function washByPatch(
  area: SquareMetres,
  patch: Patch,
  wet: PreWet,
  factors: FactorsInForce,
  rec?: Recorder,
): WashHours {
  const crew = factors.value('crew');
  const coats = factors.value('cleaner.applications');
  const apply = factors.value('rate.apply');
  const rinse = factors.value('rate.rinse');
  const rinses = factors.value('rinse.count');
  const hour = constants.minPerHour.value;
  const patches = Math.max(0, Math.ceil(area / patch.area - constants.guard.value));
  const hidden = Math.min(wet.contact, patch.wait);
  const preWetMinutes = patches * wet.contact;
  const applyMinutes =
    patches * ((patch.area / apply) * coats + patch.wait) - Math.max(0, patches - 1) * hidden;
  const rinseMinutes = patches * (patch.area / rinse) * rinses;
  const hours: WashHours = {
    patches,
    preWet: crewHours((preWetMinutes * crew) / hour),
    apply: crewHours((applyMinutes * crew) / hour),
    rinse: crewHours((rinseMinutes * crew) / hour),
  };
  if (rec) {
    rec.line('patches@', 'ceil(washedArea@ / patch - guard)', patches, 'count', 'patches');
    rec.line(
      'prewetHours@',
      'patches@ * prewetContact@ * crew / minPerHour',
      hours.preWet,
      'crewHours',
      'prewetHours',
    );
    rec.line(
      'applyHours@',
      '(patches@ * (patch / rate_apply * cleaner_applications + wait) - max(0, patches@ - 1) * min(prewetContact@, wait)) * crew / minPerHour',
      hours.apply,
      'crewHours',
      'applyHours',
    );
    rec.line(
      'rinseHours@',
      'patches@ * patch / rate_rinse * rinse_count * crew / minPerHour',
      hours.rinse,
      'crewHours',
      'rinseHours',
    );
  }
  return hours;
}

/**
 * Crew-hours of washing a zone with clear water: it has no dwell, so no patch and no wait, only the rinse.
 * @param area washed area of the zone, m2
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns crew-hours by part
 */
export function washWithClearWater(area: SquareMetres, factors: FactorsInForce, rec?: Recorder): WashHours {
  const crew = factors.value('crew');
  const minutesOfCrew = (area / factors.value('rate.rinse')) * factors.value('rinse.count');
  const rinse = crewHours((minutesOfCrew * crew) / constants.minPerHour.value);
  if (rec) {
    rec.line('patches@', '0', 0, 'count', 'noPatch');
    rec.line('prewetHours@', '0', 0, 'crewHours', 'noPrewet');
    rec.line('applyHours@', '0', 0, 'crewHours', 'noCleaner');
    rec.line(
      'rinseHours@',
      'washedArea@ / rate_rinse * rinse_count * crew / minPerHour',
      rinse,
      'crewHours',
      'clearRinseHours',
    );
  }
  return { patches: 0, preWet: crewHours(0), apply: crewHours(0), rinse };
}
