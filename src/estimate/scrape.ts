import { effortOf, type Efforts } from '../govern/effort';
import { residueOf } from '../govern/residue';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import { residues, type Residue } from '../rules/residues';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { hoursOf, type Crew } from './crew';

/** The rates of dry scraping of Type N mortar, m2 per labor-hour. */
export type ScrapeRates = Readonly<Record<Residue, number>>;

/**
 * The rates in force.
 * @param factors the factors in force
 * @returns rates by residue, m2 per labor-hour
 */
export function scrapeRates(factors: FactorsInForce): ScrapeRates {
  return Object.fromEntries(residues.map((name) => [name, factors.value(`rate.scrape.${name}`)])) as Record<
    Residue,
    number
  >;
}

/**
 * Labor-hours of dry scraping of a row: area by rate, times the effort of its mortar and what slows the person.
 * @param row the wall row
 * @param area its washed area, m2
 * @param slowed how the row slows the work, a ratio
 * @param rules rates and efforts in force
 * @param rules.rates m2 per labor-hour by residue
 * @param rules.efforts by mortar
 * @param crew the crew in force
 * @param rec takes down the lines; `slowed#` has been taken down
 * @returns labor-hours
 */
export function scrapeHours(
  row: WallRow,
  area: number,
  slowed: number,
  { rates, efforts }: { readonly rates: ScrapeRates; readonly efforts: Efforts },
  crew: Crew,
  rec?: RowRecord,
): number {
  const residue = residueOf(row);
  const effort = effortOf(row, efforts, rec);
  const hours = hoursOf((area / rates[residue]) * effort * slowed * constants.minPerHour.value, crew);
  if (rec) {
    rec.line('scrape', hours, { residue });
  }
  return hours;
}
