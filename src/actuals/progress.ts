import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Zone } from '../walls/zones';
import { budgetsOf, type ZoneBudgets } from './budget';
import { atMost, doneIn, type Beyond } from './done';
import { standingOf, type Booked, type Standing } from './earned-value';
import type { Entry, Measure } from './entry';
import { isOfWash, partTasks, tasks, WASH, type Task } from './task';

/** What a reader must know of a line. */
export type ProgressFinding =
  | Beyond
  /** Something is booked and nothing earned: no forecast. */
  | { readonly type: 'nothing earned' }
  /** Something is booked for which the estimate has nothing. */
  | { readonly type: 'not in the estimate' }
  /** Areas of the wash as a whole and of its parts together are more than there is. */
  | { readonly type: 'wash and parts' };

/** How a task, a zone or the job stands. */
export interface ProgressLine {
  /** Undefined for the job. */
  readonly zone: Zone | undefined;
  /** Undefined for a zone or the job as a whole. */
  readonly task: Task | undefined;
  /** m2 that the task is done on; of a zone and of the job what is washed. */
  readonly area: number;
  /** m2 done; undefined where nothing is booked. */
  readonly done: number | undefined;
  readonly standing: Readonly<Record<Measure, Standing>>;
  readonly findings: readonly ProgressFinding[];
  /** Why numbers are NaN. */
  readonly why: string | undefined;
}

const measures = ['hours', 'water', 'cleaner'] as const satisfies readonly Measure[];
const RINSE = partTasks.find(({ name }) => name === 'rinse') ?? WASH;

/**
 * How recorded work stands against the estimate, by zone and task, with a line for each zone and one for the job.
 * A task whose entries state no area earns the washed share of its zone: what is recorded as rinsed, or washed as a
 * whole. What is booked for the job without a zone is shared out as its budget is, and earns the washed share of the
 * job. A task with nothing booked earns nothing. Where the wash as a whole is booked in a zone, its parts are one line.
 * @param entries the recorded work
 * @param job all zones of the job
 * @param factors the factors in force
 * @param wanted the zones asked for; the line of the job is there where all are
 * @returns the lines
 */
export function progressOf(
  entries: readonly Entry[],
  job: readonly Zone[],
  factors: FactorsInForce,
  wanted: readonly Zone[] = job,
): ProgressLine[] {
  const budgets = budgetsOf(job, factors);
  const washed = budgets.map((zone) => washedArea(ofZone(entries, zone.zone), zone));
  const areas = budgets.map((zone) => zone.of(WASH).area);
  const jobShare = shareOf(total(washed), total(areas));
  const all = budgets.map((zone, index) => {
    const share = shareOf(washed[index] ?? 0, areas[index] ?? 0);
    const own = ofZone(entries, zone.zone);
    const shared = entries
      .filter((entry) => entry.zone === undefined)
      .map((entry) => partOf(entry, zone, budgets));
    return linesOf(zone, { own, shared }, { zone: share, job: jobShare });
  });
  const summary = (lines: readonly ProgressLine[], zone: ZoneBudgets | undefined): ProgressLine => {
    const booked = lines.some(({ standing }) => measures.some((each) => standing[each].actual > 0));
    const places = budgets.flatMap((each, index) => (zone === undefined || each === zone ? [index] : []));
    const standing = byMeasure((measure) => standingOf(lines.map((line) => line.standing[measure])));
    return {
      zone: zone?.zone,
      task: undefined,
      area: total(places.map((place) => areas[place] ?? 0)),
      done: booked ? total(places.map((place) => washed[place] ?? 0)) : undefined,
      standing,
      findings: nothingEarned(standing),
      why: lines.find(({ why }) => why !== undefined)?.why,
    };
  };
  const spelled = budgets.flatMap((zone, index) => {
    const lines = all[index] ?? [];
    return wanted.includes(zone.zone) ? [...lines, summary(lines, zone)] : [];
  });
  return wanted.length === job.length ? [...spelled, summary(all.flat(), undefined)] : spelled;
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}

function shareOf(done: number, area: number): number {
  return area > 0 ? Math.min(1, done / area) : 0;
}

function byMeasure<Value>(of: (measure: Measure) => Value): Record<Measure, Value> {
  return { hours: of('hours'), water: of('water'), cleaner: of('cleaner') };
}

function ofZone(entries: readonly Entry[], zone: Zone): Entry[] {
  return entries.filter((entry) => entry.zone === zone);
}

/** A wall is washed when it is rinsed. */
function washedArea(own: readonly Entry[], zone: ZoneBudgets): number {
  const { area } = zone.of(WASH);
  const shares = [WASH, RINSE].map((task) => {
    const worked = own.filter((entry) => entry.task === task && entry.hours > 0);
    return shareOf(doneIn(worked, task, zone).area, zone.of(task).area);
  });
  return Math.min(1, total(shares)) * area;
}

/** The part of an entry of the whole job that a zone has: as the budget of its task is, else as all hours are. */
function partOf(entry: Entry, zone: ZoneBudgets, budgets: readonly ZoneBudgets[]): Entry {
  const ofTask = budgets.map((each) => each.of(entry.task).hours);
  const weights = total(ofTask) > 0 ? ofTask : budgets.map(({ hours }) => hours);
  const sum = total(weights);
  const share = sum > 0 ? (weights[budgets.indexOf(zone)] ?? 0) / sum : 1 / budgets.length;
  return {
    ...entry,
    zone: zone.zone,
    area: 0,
    hours: entry.hours * share,
    water: entry.water * share,
    cleaner: entry.cleaner * share,
  };
}

interface Bookings {
  readonly own: readonly Entry[];
  /** Parts of what is booked for the whole job. */
  readonly shared: readonly Entry[];
}
interface WashedShares {
  readonly zone: number;
  readonly job: number;
}

function linesOf(zone: ZoneBudgets, bookings: Bookings, shares: WashedShares): ProgressLine[] {
  const asWhole = bookings.own.some(({ task }) => task === WASH);
  return tasks.flatMap((task) => {
    if (task === WASH ? !asWhole : asWhole && isOfWash(task)) return [];
    const members = task === WASH ? [WASH, ...partTasks.filter(isOfWash)] : [task];
    const booked = [...bookings.own, ...bookings.shared].filter((entry) => members.includes(entry.task));
    const budget = zone.of(task);
    if (booked.length === 0 && measures.every((measure) => budget[measure] === 0)) return [];
    return [lineOf(zone, task, members, bookings, shares)];
  });
}

function lineOf(
  zone: ZoneBudgets,
  task: Task,
  members: readonly Task[],
  { own, shared }: Bookings,
  shares: WashedShares,
): ProgressLine {
  const budget = zone.of(task);
  const worked = members.map((member) =>
    doneIn(
      own.filter((entry) => entry.task === member && entry.hours > 0),
      member,
      zone,
    ),
  );
  const earned = byMeasure((measure) =>
    total(members.map((member) => earnedBy(member, measure, zone, { own, shared }, shares))),
  );
  const capped = atMost(earned, budget);
  const booked = [...own, ...shared].filter((entry) => members.includes(entry.task));
  const standing = byMeasure((measure) => {
    const line: Booked = {
      budget: budget[measure],
      earned: capped[measure],
      actual: total(booked.map((entry) => entry[measure])),
    };
    return standingOf([line]);
  });
  const [whole, ...parts] = worked;
  const share = budget.hours > 0 ? standing.hours.earned / budget.hours : 0;
  // Where parts of the wash are recorded besides, each on an area of its own, the hours tell how much is done.
  const isByArea = whole !== undefined && whole.area > 0 && parts.every(({ area }) => area === 0);
  const areaDone = isByArea ? whole.area : share * budget.area;
  return {
    zone: zone.zone,
    task,
    area: budget.area,
    done: standing.hours.actual > 0 ? areaDone : undefined,
    standing,
    findings: [
      ...worked.flatMap(({ beyond }) => beyond),
      ...(members.length > 1 && isTwice(members, worked, zone) ? [{ type: 'wash and parts' } as const] : []),
      ...(budget.hours === 0 && standing.hours.actual > 0
        ? [{ type: 'not in the estimate' } as const]
        : nothingEarned(standing)),
    ],
    why: zone.finding,
  };
}

/** What the entries of a task earn of a measure: by their areas or, where none states one, by what is washed. */
function earnedBy(
  task: Task,
  measure: Measure,
  zone: ZoneBudgets,
  { own, shared }: Bookings,
  shares: WashedShares,
): number {
  const isBooked = (entry: Entry): boolean => entry.task === task && entry[measure] > 0;
  const ours = own.filter(isBooked);
  if (ours.some(({ area }) => area > 0)) return doneIn(ours, task, zone).earned[measure];
  if (shared.some(isBooked)) return shares.job * zone.of(task)[measure];
  return ours.length > 0 ? shares.zone * zone.of(task)[measure] : 0;
}

function nothingEarned(standing: Readonly<Record<Measure, Standing>>): ProgressFinding[] {
  const { actual, earned } = standing.hours;
  return actual > 0 && earned === 0 ? [{ type: 'nothing earned' }] : [];
}

/** Whether a part of the wash is done on more than there is, what is washed as a whole counted. */
function isTwice(
  members: readonly Task[],
  worked: readonly { readonly area: number }[],
  zone: ZoneBudgets,
): boolean {
  const shares = members.map((member, place) => {
    const { area } = zone.of(member);
    return area > 0 ? (worked[place]?.area ?? 0) / area : 0;
  });
  const [whole = 0, ...parts] = shares;
  return parts.some((part) => part > 0 && whole + part > 1 + constants.guard.value);
}
