import { jobRules, type JobRules } from '../estimate/row-quantities';
import { estimateFrom, type JobEstimate } from '../estimate/schedule';
import { zoneOwn, type ZoneOwn } from '../estimate/zone-own';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import { zonesOf, type Zone } from '../walls/zones';

// A zone that was worked out holds its rows: beyond so many, all are let go.
const MOST_KNOWN = 4000;

/** The job at one set of factors and any rows. */
export interface JobState {
  readonly estimate: JobEstimate;
  /** By the name of each zone a word that is the same where it has the same rows, and its rinse runs over the same. */
  readonly keys: ReadonlyMap<string, string>;
}

/**
 * Works out a job again and again with some of its rows exchanged. A zone whose rows are the same objects as before,
 * in the same order, is not worked out twice.
 */
export class KnownJob {
  readonly factors: FactorsInForce;
  readonly #rules: JobRules;
  readonly #known = new Map<string, ZoneOwn>();
  readonly #numbers = new Map<WallRow, number>();

  /**
   * Holds the factors.
   * @param factors the factors in force
   */
  constructor(factors: FactorsInForce) {
    this.factors = factors;
    this.#rules = jobRules(factors);
  }

  /**
   * Works out the job with these rows. Rinse that leads nowhere or in a circle is no mistake here.
   * @param rows the rows, each the same object whenever it is the same row
   * @returns the job
   */
  at(rows: readonly WallRow[]): JobState {
    const keys = new Map<string, string>();
    const owns = zonesOf(rows, { midway: true }).map((zone, index) => {
      const key = `${zone.name}\n${this.#namesOf(zone.rows)}\n${this.#namesOf(zone.below)}`;
      keys.set(zone.name, key);
      return this.#own(key, zone, index);
    });
    return { estimate: estimateFrom(owns, this.#rules, this.factors), keys };
  }

  #own(key: string, zone: Zone, index: number): ZoneOwn {
    let own = this.#known.get(key);
    if (own === undefined) {
      if (this.#known.size >= MOST_KNOWN) this.#known.clear();
      own = zoneOwn(zone, index, this.#rules, this.factors);
      this.#known.set(key, own);
    }
    return own;
  }

  #namesOf(rows: readonly WallRow[]): string {
    let names = '';
    for (const row of rows) {
      let number = this.#numbers.get(row);
      if (number === undefined) {
        number = this.#numbers.size;
        this.#numbers.set(row, number);
      }
      names += `${String(number)} `;
    }
    return names;
  }
}
