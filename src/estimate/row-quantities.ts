import { needClass, needsOf, type Needs } from '../govern/need-class';
import type { Governing } from '../govern/govern-zone';
import type { LitresPerSquareMetre } from '../quantity/quantities';
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

/** What holds for every row of a zone. */
export interface ZoneConditions {
  /** Undefined where every row is masked. */
  readonly governing: Governing | undefined;
  readonly wet: PreWet;
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

/**
 * What holds for every row of a zone, once its class is known.
 * @param rows the rows of the zone
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
  const dwells = governing !== undefined && governing.classToUse > 0;
  return {
    governing,
    wet: dwells ? preWet(rows, factors, rec) : noPreWet(rec),
    rinsePerArea: rinsePerArea(factors, rec),
    cleaner: governing === undefined ? undefined : cleanerUse(governing.classToUse, factors, rec),
    masking: maskingAllowances(factors),
    maskRates: maskRates(factors),
    scrape: scrapeRates(factors),
    scrubRate: factors.value('rate.scrub'),
    needs: needsOf(factors),
    acid: governing === undefined ? undefined : acidUse(governing.classToUse, factors, rec),
    captured: factors.value('runoff.captured'),
    prices: pricesOf(governing?.classToUse, factors, rec),
  };
}

/**
 * The quantities that a row has of its own: area, water, cleaner, masking, and the hours of scraping, scrubbing and
 * masking. What belongs to the zone is left as it is.
 * @param row the wall row
 * @param zone what holds for its zone
 * @param out takes the values, in base units
 * @param rec takes down the lines
 */
export function rowQuantities(row: WallRow, zone: ZoneConditions, out: Quantities, rec?: Recorder): void {
  rec?.inRow(row.row, row.wall);
  const area = washedArea(row, rec);
  const mix = cleanerMix(area, zone.cleaner, rec);
  const mask = masking(row, zone.masking, rec);
  out.washedArea = area;
  const absorbed = absorbedWater(row, area, zone.wet, rec);
  out.absorbed = absorbed;
  out.preWetWater = preWetWater(area, absorbed, zone.wet, rec);
  out.rinseWater = rinseWater(area, zone.rinsePerArea, rec);
  out.mix = mix;
  out.concentrate = concentrate(mix, zone.cleaner, rec);
  out.mixWater = mixWater(mix, out.concentrate as typeof mix, rec);
  out.water = out.preWetWater + out.mixWater + out.rinseWater;
  rec?.line('water#', 'preWetWater# + mixWater# + rinseWater#', out.water, 'volume', 'water');
  out.runoff = runoff(out.water, out.concentrate, absorbed, zone.captured, rec);
  const alkali = neutralizer(out.concentrate, zone.acid, rec);
  out.bicarbonate = alkali.bicarbonate;
  out.sodaAsh = alkali.sodaAsh;
  out.neutralizer = alkali.bicarbonate + alkali.sodaAsh;
  rec?.line('neutralizer#', 'bicarbonate# + sodaAsh#', out.neutralizer, 'mass', 'alkali');
  out.maskingArea = mask.area;
  out.film = mask.film;
  out.tape = mask.tape;
  out.maskHours = maskOnHours(mask, zone.maskRates, rec);
  out.unmaskHours = maskOffHours(mask, zone.maskRates, rec);
  out.scrapeHours = scrapeHours(row, area, zone.scrape, rec);
  if (row.masked || zone.governing === undefined) {
    out.scrubHours = 0;
    rec?.line('scrubHours#', '0', 0, 'crewHours', 'washedArea');
    return;
  }
  const short = shortfall(needClass(row, zone.needs), zone.governing.classToUse, rec);
  out.scrubHours = scrubHours(area, short, zone.scrubRate, rec);
}
