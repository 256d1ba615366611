import { hourParts, noQuantities, quantityIds, type Quantities } from '../estimate/quantities';
import { estimateJob } from '../estimate/schedule';
import { residueOf } from '../govern/residue';
import type { FactorsInForce } from '../rules/read-factors';
import { residues, type Residue } from '../rules/residues';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import type { Measure } from './entry';
import type { Task } from './task';

/** What the estimate allows for a task, in base units. */
export interface Budget extends Readonly<Record<Measure, number>> {
  /** The area that the task is done on; 0 where it has no hours. */
  readonly area: number;
}

/** What the estimate allows for every task of a wall or of a zone. */
export interface Budgets {
  readonly of: (task: Task) => Budget;
  /** The part of scraping that each residue has. */
  readonly scraping: Readonly<Record<Residue, Pick<Budget, 'area' | 'hours'>>>;
  /** All labor-hours. */
  readonly hours: number;
}

/** The budgets of a zone and of its walls. */
export interface ZoneBudgets extends Budgets {
  readonly zone: Zone;
  readonly ofWall: (wall: WallRow) => Budgets;
  /** Why some are NaN; undefined where all are numbers. */
  readonly finding: string | undefined;
}

/**
 * What the estimate allows for each task, by zone and by wall; the walls of a zone add up to it.
 * @param job all zones of the job
 * @param factors the factors in force
 * @returns the budgets of each zone, in their order
 */
export function budgetsOf(job: readonly Zone[], factors: FactorsInForce): ZoneBudgets[] {
  const again = factors.value('reclean.share');
  const walls = new Map<number, Sums>();
  const byZone = new Map<Zone, Sums>();
  const { zones } = estimateJob(job, factors, {
    takeRow: (row, quantities, { zone }) => {
      const ofRow = sumsOf(row, quantities);
      walls.set(row.row, ofRow);
      const ofZone = byZone.get(zone) ?? noSums();
      byZone.set(zone, ofZone);
      add(ofZone, ofRow);
    },
  });
  return zones.map(({ zone, finding }) => ({
    zone,
    finding,
    ...budgets(byZone.get(zone) ?? noSums(), again),
    ofWall: (wall) => budgets(walls.get(wall.row) ?? noSums(), again),
  }));
}

interface Sums {
  readonly quantities: Quantities;
  /** By the part of the labor-hours, and of what the wash as a whole is done on. */
  readonly areas: Map<string, number>;
  readonly scraping: Record<Residue, { area: number; hours: number }>;
}

function noSums(): Sums {
  const nothing = residues.map((residue) => [residue, { area: 0, hours: 0 }] as const);
  return {
    quantities: noQuantities(),
    areas: new Map(),
    scraping: Object.fromEntries(nothing) as Sums['scraping'],
  };
}

/** Faces that are not those that are washed. */
const faces: Readonly<Record<string, (row: WallRow, quantities: Readonly<Quantities>) => number>> = {
  maskHours: (_, { maskingArea }) => maskingArea,
  unmaskHours: (_, { maskingArea }) => maskingArea,
  glassHours: ({ material, area, openings }) => (material.group === 'glass' ? area : openings),
  // What is only protected is rinsed too.
  rinseHours: netArea,
  brushHours: netArea,
  scaffoldHours: ({ area }) => area,
};

function sumsOf(row: WallRow, given: Readonly<Quantities>): Sums {
  const sums = noSums();
  Object.assign(sums.quantities, given);
  for (const part of hourParts) {
    // A wall on which a task takes nothing has no area to do it on; NaN is no such number, and kept.
    const face = faces[part]?.(row, given) ?? given.washedArea;
    sums.areas.set(part, given[part] === 0 ? 0 : face);
  }
  const scraped = sums.scraping[residueOf(row)];
  scraped.hours = given.scrapeHours;
  scraped.area = sums.areas.get('scrapeHours') ?? 0;
  return sums;
}

function add(sums: Sums, more: Sums): void {
  for (const id of quantityIds) sums.quantities[id] += more.quantities[id];
  for (const [part, area] of more.areas) sums.areas.set(part, (sums.areas.get(part) ?? 0) + area);
  for (const residue of residues) {
    sums.scraping[residue].area += more.scraping[residue].area;
    sums.scraping[residue].hours += more.scraping[residue].hours;
  }
}

function budgets({ quantities, areas, scraping }: Sums, again: number): Budgets {
  const once = 1 / (1 + again);
  const mix = quantities.mixWater * once;
  const cleaner = quantities.concentrate * once;
  /** Mix and cleaner hold what is cleaned once more. */
  const water: Readonly<Record<string, number>> = {
    prewetHours: quantities.preWetWater,
    applyHours: mix,
    rinseHours: quantities.rinseWater,
    tendHours: quantities.mistWater,
    belowHours: quantities.belowWater,
    recleanHours: quantities.recleanWater + quantities.mixWater - mix,
  };
  const cleaners: Readonly<Record<string, number>> = {
    applyHours: cleaner,
    recleanHours: quantities.concentrate - cleaner,
  };
  return {
    of: ({ parts }) => {
      const sum = (of: (part: (typeof parts)[number]) => number): number =>
        parts.reduce((total, part) => total + of(part), 0);
      const [only] = parts;
      return {
        hours: sum((part) => quantities[part]),
        water: sum((part) => water[part] ?? 0),
        cleaner: sum((part) => cleaners[part] ?? 0),
        // Every washed wall is rinsed or scrubbed, whatever else is done on it.
        area: parts.length === 1 && only ? (areas.get(only) ?? 0) : (areas.get('scrubHours') ?? 0),
      };
    },
    scraping,
    hours: quantities.laborHours,
  };
}
