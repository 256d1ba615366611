import { needClass, needsOf, type Needs } from '../govern/need-class';
import type { Governing } from '../govern/govern-zone';
import type { LitresPerSquareMetre } from '../quantity/quantities';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { cleanerMix, cleanerUse, concentrate, mixWater, type CleanerUse } from './cleaner';
import { maskingAllowances, masking, type MaskingAllowances } from './masking';
import { maskOffHours, maskOnHours, maskRates, type MaskRates } from './mask-hours';
import { acidUse, neutralizer, type AcidUse } from './neutralizer';
import { absorbedWater, noPreWet, preWet, preWetWater, type PreWet } from './pre-wet';
import { pricesOf, type Prices } from './price';
import type { Quantities } from './quantities';
import { rinsePerArea, rinseWater } from './rinse';
import { runoff } from './runoff';
import { scrapeHours, scrapeRates, type ScrapeRates } from './scrape';
import { scrubHours, shortfall } from './scrub';
import { washedArea } from './washed-area';

/** What holds for every row that is washed with a class of cleaner. */
interface ClassConditions {
  readonly rinsePerArea: LitresPerSquareMetre;
  readonly cleaner: CleanerUse | undefined;
  readonly masking: MaskingAllowances;
  readonly maskRates: MaskRates;
  readonly scrape: ScrapeRates;
  /** m2 a crew-hour */
  readonly scrubRate: number;
  readonly needs: Needs;
  /** Undefined where the class is no acid. */
  readonly acid: AcidUse | undefined;
  /** share of the runoff, 0 to 1 */
  readonly captured: number;
  readonly prices: Prices;
}

/** What holds for every row of a zone. */
export interface ZoneConditions {
  /** Undefined where every row is masked. */
  readonly governing: Governing | undefined;
  readonly wet: PreWet;
  readonly ofClass: ClassConditions;
}

// A job with many zones has few classes.
const known = new WeakMap<FactorsInForce, Map<unknown, ClassConditions>>();

/**
 * What holds for every row of a zone, once its class is known.
 * @param rows the rows of the zone, or one of each kind
 * @param governing its class to use; undefined where every row is masked
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns the conditions
 */
export function zoneConditions(
  rows: readonly WallRow[],
  governing: Governing | undefined,
  factors: FactorsInForce,
  rec?: Recorder,
): ZoneConditions {
  const classToUse = governing?.classToUse;
  const wet = classToUse ? preWet(rows, factors, rec) : noPreWet(rec);
  const byClass = known.get(factors) ?? new Map<unknown, ClassConditions>();
  known.set(factors, byClass);
  const ofClass = (!rec && byClass.get(classToUse)) || classConditions(classToUse, factors, rec);
  byClass.set(classToUse, ofClass);
  return { governing, wet, ofClass };
}

function classConditions(
  classToUse: CleanerClass | undefined,
  factors: FactorsInForce,
  rec?: Recorder,
): ClassConditions {
  return {
    rinsePerArea: rinsePerArea(factors, rec),
    cleaner: classToUse === undefined ? undefined : cleanerUse(classToUse, factors, rec),
    masking: maskingAllowances(factors),
    maskRates: maskRates(factors),
    scrape: scrapeRates(factors),
    scrubRate: factors.value('rate.scrub'),
    needs: needsOf(factors),
    acid: classToUse === undefined ? undefined : acidUse(classToUse, factors, rec),
    captured: factors.value('runoff.captured'),
    prices: pricesOf(classToUse, factors, rec),
  };
}

/**
 * Adds the quantities that a row has of its own: area, water, cleaner, masking, and the hours of scraping, scrubbing
 * and masking. What belongs to the zone is left as it is.
 * @param row the wall row
 * @param zone what holds for its zone
 * @param sums takes the values, in base units
 * @param rec takes down the lines
 */
export function addRowQuantities(
  row: WallRow,
  { governing, wet, ofClass }: ZoneConditions,
  sums: Quantities,
  rec?: Recorder,
): void {
  rec?.inRow(row.row, row.wall);
  const area = washedArea(row, rec);
  const mix = cleanerMix(area, ofClass.cleaner, rec);
  const mask = masking(row, ofClass.masking, rec);
  const absorbed = absorbedWater(row, area, wet, rec);
  const preWetted = preWetWater(area, absorbed, wet, rec);
  const rinsed = rinseWater(area, ofClass.rinsePerArea, rec);
  const cleaner = concentrate(mix, ofClass.cleaner, rec);
  const mixed = mixWater(mix, cleaner, rec);
  const water = preWetted + mixed + rinsed;
  rec?.line('water#', 'preWetWater# + mixWater# + rinseWater#', water, 'volume', 'water');
  const alkali = neutralizer(cleaner, ofClass.acid, rec);
  const neutralizing = alkali.bicarbonate + alkali.sodaAsh;
  sums.washedArea += area;
  sums.absorbed += absorbed;
  sums.preWetWater += preWetted;
  sums.rinseWater += rinsed;
  sums.mix += mix;
  sums.concentrate += cleaner;
  sums.mixWater += mixed;
  sums.water += water;
  sums.runoff += runoff(water, cleaner, absorbed, ofClass.captured, rec);
  sums.bicarbonate += alkali.bicarbonate;
  sums.sodaAsh += alkali.sodaAsh;
  sums.neutralizer += neutralizing;
  rec?.line('neutralizer#', 'bicarbonate# + sodaAsh#', neutralizing, 'mass', 'alkali');
  sums.maskingArea += mask.area;
  sums.film += mask.film;
  sums.tape += mask.tape;
  sums.maskHours += maskOnHours(mask, ofClass.maskRates, rec);
  sums.unmaskHours += maskOffHours(mask, ofClass.maskRates, rec);
  sums.scrapeHours += scrapeHours(row, area, ofClass.scrape, rec);
  if (row.masked || governing === undefined) {
    rec?.line('scrubHours#', '0', 0, 'crewHours', 'washedArea');
  } else {
    const short = shortfall(needClass(row, ofClass.needs), governing.classToUse, rec);
    sums.scrubHours += scrubHours(area, short, ofClass.scrubRate, rec);
  }
}
