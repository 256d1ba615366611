import type { FactorId } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';
import { residues } from '../rules/residues';
import type { Zone } from '../walls/zones';
import { beliefsOf, blend, type Blend } from './blend';
import { budgetsOf, type Budget, type Budgets } from './budget';
import type { Entry } from './entry';
import { outliersOf } from './outliers';
import { tasks, type Task } from './task';

/** How a factor goes with time: a rate shortens it, an amount lengthens it. */
export type RateKind = 'rate' | 'amount';

/** A factor that recorded work shows. */
export interface RateFactor {
  readonly id: FactorId;
  readonly task: string;
  readonly kind: RateKind;
}

const rate = (task: string, id: FactorId): RateFactor => ({ id, task, kind: 'rate' });

/** The factors that recorded work shows, by task; scraping has one for each residue. */
export const rateFactors: readonly RateFactor[] = [
  ...residues.map((residue) => rate('scrape', `rate.scrape.${residue}`)),
  rate('mask', 'rate.maskOn'),
  rate('prewet', 'rate.wet'),
  rate('apply', 'rate.apply'),
  rate('scrub', 'scrub.full'),
  { id: 'rinse.perArea', task: 'rinse', kind: 'amount' },
  rate('below', 'rate.below'),
  rate('unmask', 'rate.maskOff'),
  rate('glass', 'rate.glass'),
];

/** What one entry shows of a factor. */
export interface Observation {
  readonly row: number;
  readonly date: number | undefined;
  /** m2 */
  readonly area: number;
  /** Labor-hours */
  readonly hours: number;
  /** Labor-hours that the estimate allows for that area. */
  readonly budget: number;
  /** The value of the factor that would have met the hours, in its base unit. */
  readonly value: number;
}

/** Why an entry shows no rate. */
export type NoRate = 'no single rate' | 'no area' | 'no hours' | 'not in the estimate';

/** What recorded work shows of one factor. */
export interface ObservedRate {
  readonly factor: RateFactor;
  readonly observations: readonly Observation[];
  /** The value in force, in its base unit. */
  readonly inForce: number;
  /** Hours of the estimate by hours booked: the value that meets all of them together, in the base unit. */
  readonly plain: number;
  /** Blended value and the ends of its 80% range, in the base unit. */
  readonly blended: number;
  readonly low: number;
  readonly high: number;
  readonly weight: number;
  /** Entries that lie far from the others; they count like all. */
  readonly outliers: readonly Observation[];
}

/** Entries that show no rate. */
export interface WithoutRate {
  readonly task: Task;
  readonly why: NoRate;
  readonly entries: readonly Entry[];
}

/** What recorded work shows. */
export interface RatesShown {
  readonly rates: readonly ObservedRate[];
  readonly without: readonly WithoutRate[];
}

/**
 * The unit time of a value of a factor: what it goes with, in its own unit.
 * @param value the value, above 0
 * @param kind how the factor goes with time
 * @returns the unit time; the value of a unit time likewise
 */
export function unitTimeOf(value: number, kind: RateKind): number {
  return kind === 'rate' ? 1 / value : value;
}

/**
 * The rates that recorded work shows, each blended with the value in force.
 * @param entries the recorded work
 * @param job all zones of the job
 * @param factors the factors in force
 * @returns one for each factor that an entry shows, and the entries that show none
 */
export function ratesOf(
  entries: readonly Entry[],
  job: readonly Zone[],
  factors: FactorsInForce,
): RatesShown {
  const { observed, without } = observe(entries, job, factors);
  const beliefs = beliefsOf(factors);
  const rates = [...observed].map(([factor, observations]): ObservedRate => {
    const { kind, id } = factor;
    const inForce = factors.value(id);
    const shown = observations.map(({ value, area }) => ({ unitTime: unitTimeOf(value, kind), area }));
    const blended = blend(unitTimeOf(inForce, kind), shown, beliefs);
    return {
      factor,
      observations,
      inForce,
      plain: plainValue(inForce, observations, kind),
      ...valuesOf(blended, kind),
      outliers: outliersOf(observations),
    };
  });
  return { rates, without };
}

/**
 * Values of a factor for blended unit times.
 * @param blended the unit times
 * @param kind how the factor goes with time
 * @returns the value, the ends of its range in order, and the weight of the entries
 */
export function valuesOf(
  { unitTime, low, high, weight }: Blend,
  kind: RateKind,
): Pick<ObservedRate, 'blended' | 'low' | 'high' | 'weight'> {
  const [one, other] = [unitTimeOf(low, kind), unitTimeOf(high, kind)];
  return {
    blended: unitTimeOf(unitTime, kind),
    low: Math.min(one, other),
    high: Math.max(one, other),
    weight,
  };
}

function plainValue(inForce: number, observations: readonly Observation[], kind: RateKind): number {
  const hours = observations.reduce((sum, each) => sum + each.hours, 0);
  const budget = observations.reduce((sum, each) => sum + each.budget, 0);
  return unitTimeOf((unitTimeOf(inForce, kind) * hours) / budget, kind);
}

/**
 * What each entry shows of the factors: its unit time is the one in force times its hours by the hours that the
 * estimate allows for its area of the task, so that mortar, residue, access and faces count as in the estimate.
 * @param entries the recorded work
 * @param job all zones of the job
 * @param factors the factors in force
 * @returns observations by factor, in the order of the table above, and the entries that show none
 */
export function observe(
  entries: readonly Entry[],
  job: readonly Zone[],
  factors: FactorsInForce,
): { observed: ReadonlyMap<RateFactor, readonly Observation[]>; without: WithoutRate[] } {
  const zones = new Map(budgetsOf(job, factors).map((budgets) => [budgets.zone, budgets]));
  const observed = new Map<RateFactor, Observation[]>();
  const refused = new Map<string, { task: Task; why: NoRate; entries: Entry[] }>();
  for (const entry of entries) {
    const zone = entry.zone && zones.get(entry.zone);
    const allowed = zone && (entry.wall ? zone.ofWall(entry.wall) : zone);
    const parts = partsShown(entry, allowed);
    if (typeof parts === 'string') {
      const key = `${entry.task.name} ${parts}`;
      const known = refused.get(key) ?? { task: entry.task, why: parts, entries: [] };
      refused.set(key, known);
      known.entries.push(entry);
      continue;
    }
    for (const { factor, budget, area } of parts) {
      // Each residue of a zone is taken to have had its share of the hours.
      const ratio = entry.hours / parts.reduce((sum, each) => sum + each.budget, 0);
      const inForce = factors.value(factor.id);
      const known = observed.get(factor) ?? [];
      observed.set(factor, known);
      known.push({
        row: entry.row,
        date: entry.date,
        area,
        hours: ratio * budget,
        budget,
        value: unitTimeOf(unitTimeOf(inForce, factor.kind) * ratio, factor.kind),
      });
    }
  }
  const inOrder = rateFactors.flatMap((factor) => {
    const found = observed.get(factor);
    return found ? [[factor, found] as const] : [];
  });
  const without = [...refused.values()].sort((a, b) => tasks.indexOf(a.task) - tasks.indexOf(b.task));
  return { observed: new Map(inOrder), without };
}

interface PartShown {
  readonly factor: RateFactor;
  /** Labor-hours that the estimate allows for the area. */
  readonly budget: number;
  /** m2 */
  readonly area: number;
}

/** The factors that an entry shows, each with its part of the area, or why it shows none. */
function partsShown(entry: Entry, allowed: Budgets | undefined): PartShown[] | NoRate {
  const found = rateFactors.filter(({ task }) => task === entry.task.name);
  if (found.length === 0) return 'no single rate';
  if (entry.hours === 0) return 'no hours';
  if (entry.area === 0) return 'no area';
  const whole = allowed?.of(entry.task);
  if (allowed === undefined || whole === undefined || !(whole.hours > 0 && whole.area > 0))
    return 'not in the estimate';
  const share = entry.area / whole.area;
  return found.flatMap((factor): PartShown[] => {
    const residue = residues.find((each) => factor.id === `rate.scrape.${each}`);
    const of: Pick<Budget, 'area' | 'hours'> = residue ? allowed.scraping[residue] : whole;
    return of.hours > 0 ? [{ factor, budget: of.hours * share, area: of.area * share }] : [];
  });
}
