import { residueOf } from '../govern/need-class';
import { crewHours, type CrewHours, type SquareMetres } from '../quantity/quantities';
import { DEFAULT_MORTAR, mortarTypes, type MortarType } from '../rules/mortars';
import type { FactorsInForce } from '../rules/read-factors';
import type { Residue } from '../rules/residues';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/** The rates of dry scraping, and the effort that each mortar asks for. */
export interface ScrapeRates {
  /** m2 a crew-hour, Type N mortar */
  readonly rate: Readonly<Record<Residue, number>>;
  /** 1 for Type N */
  readonly effort: Readonly<Record<MortarType, number>>;
}

/**
 * The rates in force. Effort = (28-day strength / that of Type N)^x; strengths from ASTM C270, x an assumption.
 * @param factors the factors in force
 * @returns rates by residue, efforts by mortar
 */
export function scrapeRates(factors: FactorsInForce): ScrapeRates {
  const typeN = factors.value('mortar.N.strength');
  const power = factors.value('mortar.effortExponent');
  const effort = (type: MortarType) => (factors.value(`mortar.${type}.strength`) / typeN) ** power;
  return {
    rate: {
      light: factors.value('rate.scrape.light'),
      moderate: factors.value('rate.scrape.moderate'),
      heavy: factors.value('rate.scrape.heavy'),
    },
    effort: Object.fromEntries(mortarTypes.map((type) => [type, effort(type)])) as Record<MortarType, number>,
  };
}

/**
 * Crew-hours of dry scraping of a row: area by rate, times the effort of its mortar.
 * @param row the wall row
 * @param area its washed area, m2
 * @param rates the rates in force
 * @param rec takes down the lines
 * @returns crew-hours
 */
export function scrapeHours(row: WallRow, area: SquareMetres, rates: ScrapeRates, rec?: Recorder): CrewHours {
  const residue = residueOf(row);
  const type = row.mortar ?? DEFAULT_MORTAR;
  const hours = (area / rates.rate[residue]) * rates.effort[type];
  if (rec) {
    const effort = `(mortar_${type}_strength / mortar_N_strength)^mortar_effortExponent`;
    rec.line('effort#', effort, rates.effort[type], 'ratio', row.mortar ? 'mortarEffort' : 'mortarDefault');
    rec.line('scrapeHours#', `washedArea# / rate_scrape_${residue} * effort#`, hours, 'crewHours', 'scrape');
  }
  return crewHours(hours);
}
