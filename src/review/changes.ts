import { jobRules, type JobRules } from '../estimate/row-quantities';
import { estimateFrom, type ZoneEstimate } from '../estimate/schedule';
import { zoneOwn, type ZoneOwn } from '../estimate/zone-own';
import { comparable } from '../quantity/cell';
import { columnIds, columns, type ColumnId } from '../walls/columns';
import type { FactorsInForce } from '../rules/read-factors';
import { withUnit } from '../quantity/shown-unit';
import { show, unitOf } from '../quantity/systems';
import type { WallRow } from '../walls/wall-row';
import { zonesOf } from '../walls/zones';

/** The quantities that a change is measured by. */
export const measured = ['water', 'maskingArea', 'concentrate', 'laborHours', 'price'] as const;

/** Differences by quantity, in base units; NaN where a zone has no such number before or after. */
export type Difference = Record<(typeof measured)[number], number>;

/** One row that was added, removed or changed, and what that did. */
export interface Change {
  readonly wall: string;
  readonly type: 'removed' | 'changed' | 'added';
  /** What changed in words, for example `Material: Red clay brick -> Limestone`. */
  readonly what: string;
  /** The zones concerned with their class before and after this change, for example `North 2 -> 1`. */
  readonly classes: string;
  readonly difference: Difference;
}

/** What changed between two states, and the whole difference. */
export interface ChangesBetween {
  readonly changes: readonly Change[];
  readonly whole: Difference;
}

/**
 * What changed between two states of the walls, and what each change did. The changes are made one after another:
 * rows removed in the order of the former state, then rows changed and rows added in the order of the latter; each is
 * given the difference that it makes at its turn. So the parts add up to the whole, also where one row changes the
 * class of its whole zone. Between the two states a row may receive rinse from a zone that is gone or not there yet; it
 * gets none then.
 * @param before the former rows
 * @param after the latter rows
 * @param factors the factors in force
 * @returns the changes in that order, and the whole difference
 * @throws {WashdownError} when either state's rinse leads nowhere or in a circle
 */
export function changesBetween(
  before: readonly WallRow[],
  after: readonly WallRow[],
  factors: FactorsInForce,
): ChangesBetween {
  const steps = changeSteps(before, after, factors);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/**
 * The same changes, step by step, for a caller that does other things in between.
 * @param before the former rows
 * @param after the latter rows
 * @param factors the factors in force
 * @yields each change
 * @returns the changes in their order, and the whole difference
 * @throws {WashdownError} when either state's rinse leads nowhere or in a circle
 */
export function* changeSteps(
  before: readonly WallRow[],
  after: readonly WallRow[],
  factors: FactorsInForce,
): Generator<Change, ChangesBetween> {
  for (const state of [before, after]) zonesOf(state);
  const [formerRows, latterRows] = alikeSpelled(before, after);
  const job = new Job(formerRows, factors);
  const start = job.totals();
  const former = new Map(formerRows.map((row) => [row.wall, row]));
  const latter = new Map(latterRows.map((row) => [row.wall, row]));
  const changes: Change[] = [];
  const make = (...change: Parameters<Job['make']>): Change => {
    const made = job.make(...change);
    changes.push(made);
    return made;
  };
  for (const row of formerRows) {
    if (!latter.has(row.wall)) yield make('removed', row, undefined, `removed from ${row.zone}`);
  }
  for (const row of latterRows) {
    const was = former.get(row.wall);
    if (was === undefined) continue;
    const what = differences(was, row, factors);
    if (what !== '') yield make('changed', was, row, what);
  }
  for (const row of latterRows) {
    if (!former.has(row.wall)) {
      yield make('added', undefined, row, `${row.material.name} added to ${row.zone}`);
    }
  }
  return { changes, whole: minus(job.totals(), start) };
}

/** Both states with the zones' names as they are first spelled: case and spacing do not tell zones apart. */
function alikeSpelled(
  before: readonly WallRow[],
  after: readonly WallRow[],
): [before: WallRow[], after: WallRow[]] {
  const names = new Map<string, string>();
  for (const { zone } of [...before, ...after]) {
    if (!names.has(comparable(zone))) names.set(comparable(zone), zone);
  }
  const spelled = (name: string) => names.get(comparable(name)) ?? name;
  const alike = (row: WallRow) => ({ ...row, zone: spelled(row.zone), receives: spelled(row.receives) });
  return [before.map(alike), after.map(alike)];
}

/** The state between two changes; where no rinse crosses zones, only the zones that a change touches are worked out. */
class Job {
  #rows: readonly WallRow[];
  #estimates = new Map<string, ZoneEstimate>();
  #owns = new Map<string, ZoneOwn>();

  readonly #rules: JobRules;
  readonly #factors: FactorsInForce;

  constructor(rows: readonly WallRow[], factors: FactorsInForce) {
    this.#factors = factors;
    this.#rules = jobRules(factors);
    this.#rows = rows;
    this.#workOut(() => true);
  }

  totals(): Difference {
    return sumOf([...this.#estimates.values()]);
  }

  make(type: Change['type'], was: WallRow | undefined, is: WallRow | undefined, what: string): Change {
    const touched = new Set([was?.zone, is?.zone].filter((name) => name !== undefined));
    const former = this.#estimates;
    if (was !== undefined && is !== undefined)
      this.#rows = this.#rows.map((row) => (row.wall === was.wall ? is : row));
    else if (was !== undefined) this.#rows = this.#rows.filter((row) => row.wall !== was.wall);
    else if (is !== undefined) this.#rows = [...this.#rows, is];
    const crosses = [...this.#rows, was, is].some((row) => row !== undefined && row.receives !== '');
    this.#workOut((name) => crosses || touched.has(name));
    const names = [...new Set([...former.keys(), ...this.#estimates.keys()])];
    const concerned = names.filter(
      (name) => touched.has(name) || classOf(former.get(name)) !== classOf(this.#estimates.get(name)),
    );
    // Another zone without a number must not take this change's number away.
    const moved = names.filter((name) => former.get(name) !== this.#estimates.get(name));
    return {
      wall: (is ?? was)?.wall ?? '',
      type,
      what,
      classes: concerned
        .map((name) => `${name} ${classOf(former.get(name))} -> ${classOf(this.#estimates.get(name))}`)
        .join(', '),
      difference: minus(
        sumOf(moved.map((name) => this.#estimates.get(name))),
        sumOf(moved.map((name) => former.get(name))),
      ),
    };
  }

  #workOut(isTouched: (zone: string) => boolean): void {
    const former = this.#owns;
    this.#owns = new Map(
      zonesOf(this.#rows, { midway: true }).map((zone, index) => {
        const known = isTouched(zone.name) ? undefined : former.get(zone.name);
        return [zone.name, known ?? zoneOwn(zone, index, this.#rules, this.#factors)];
      }),
    );
    const { zones } = estimateFrom([...this.#owns.values()], this.#rules, this.#factors);
    this.#estimates = new Map(zones.map((estimate) => [estimate.zone.name, estimate]));
  }
}

function nothing(): Difference {
  return { water: 0, maskingArea: 0, concentrate: 0, laborHours: 0, price: 0 };
}

function sumOf(estimates: readonly (ZoneEstimate | undefined)[]): Difference {
  const sum = nothing();
  for (const estimate of estimates) if (estimate) for (const id of measured) sum[id] += estimate.totals[id];
  return sum;
}

function minus(a: Difference, b: Difference): Difference {
  const left = nothing();
  for (const id of measured) left[id] = a[id] - b[id];
  return left;
}

function classOf(estimate: ZoneEstimate | undefined): string {
  return estimate?.classToUse === undefined ? 'none' : String(estimate.classToUse);
}

function differences(was: WallRow, is: WallRow, factors: FactorsInForce): string {
  return columnIds
    .filter((id) => valueOf(was, id) !== valueOf(is, id))
    .map((id) => `${columns[id].name}: ${inWords(was, id, factors)} -> ${inWords(is, id, factors)}`)
    .join('; ');
}

function valueOf(row: WallRow, id: ColumnId): string | number | boolean | undefined {
  if (id === 'material') return row.material.name;
  return id === 'masked' ? row.mask : row[id];
}

function inWords(row: WallRow, id: ColumnId, { system }: FactorsInForce): string {
  const value = valueOf(row, id);
  const { reading } = columns[id];
  if (reading.as === 'number' && typeof value === 'number') {
    const shown = String(Number(show(value, reading.kind, system).toPrecision(6)));
    return withUnit(shown, unitOf(reading.kind, system));
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value === undefined ? 'not stated' : String(value);
}
