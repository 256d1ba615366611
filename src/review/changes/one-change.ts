import { comparable } from '../../quantity/cell';
import { DIGITS, shownAmount } from '../../quantity/shown-number';
import type { FactorsInForce } from '../../rules/read-factors';
import { columnIds, columns, type ColumnId } from '../../walls/columns';
import { statedValue } from '../../walls/stated-value';
import type { WallRow } from '../../walls/wall-row';

/** The columns of a row that change together, since one without the others may be no row that a table could hold. */
const columnGroups: readonly (readonly ColumnId[])[] = [
  ['zone', 'level', 'receives'],
  ['material', 'suction'],
  ['area', 'height', 'openings', 'openingPerimeter', 'fixtures'],
  ...columnIds
    .filter((id) => ['mortar', 'residue', 'brushed', 'age', 'masked', 'access'].includes(id))
    .map((id) => [id]),
];

/** What a column is held in; the field of the same name alone where it is not listed. */
const fieldsOf: Partial<Record<ColumnId, readonly (keyof WallRow)[]>> = {
  brushed: ['brushed', 'brushPriced', 'brushedStated'],
  masked: ['masked', 'mask', 'neverMasked'],
};

/** One thing that changed: a row, or some of its columns. */
export interface OneChange {
  readonly wall: string;
  readonly type: 'removed' | 'changed' | 'added';
  readonly what: string;
  /** The zones of the row, before and after. */
  readonly zones: readonly string[];
}

/** What changed between two states. */
export interface ChangesMade {
  /** By wall, then by column. */
  readonly changes: readonly OneChange[];
  /** The rows with some of the changes made, by their places in the list; the same object for the same row. */
  readonly rowsWith: (made: ReadonlySet<number>) => WallRow[];
}

/** A wall of either state, with the places of its changes. */
interface ChangedWall {
  readonly was: WallRow | undefined;
  readonly is: WallRow | undefined;
  readonly changes: readonly { readonly place: number; readonly ids: readonly ColumnId[] }[];
  /** The row by the changes of its own that are made. */
  readonly known: Map<string, WallRow | undefined>;
}

/**
 * What changed between two states of the walls: rows added, rows removed, and within a row its sizes, its material with
 * the suction, its place, and each other column.
 * @param before the former rows
 * @param after the latter rows
 * @param factors the factors in force
 * @returns the changes, in an order that does not know that of the rows
 */
export function changesOf(
  before: readonly WallRow[],
  after: readonly WallRow[],
  factors: FactorsInForce,
): ChangesMade {
  const [formerRows, latterRows] = alikeSpelled(byWall(before), byWall(after));
  const former = new Map(formerRows.map((row) => [row.wall, row]));
  const latter = new Map(latterRows.map((row) => [row.wall, row]));
  const changes: OneChange[] = [];
  const walls = byWall([...formerRows, ...latterRows.filter(({ wall }) => !former.has(wall))]).map(
    ({ wall }): ChangedWall => {
      const [was, is] = [former.get(wall), latter.get(wall)];
      const first = changes.length;
      const found = changesOfWall(wall, was, is, factors);
      changes.push(...found.map(({ change }) => change));
      const own = found.map(({ ids }, index) => ({ place: first + index, ids }));
      return { was, is, changes: own, known: new Map() };
    },
  );
  return { changes, rowsWith: (made) => walls.flatMap((wall) => rowWith(wall, made) ?? []) };
}

function byWall(rows: readonly WallRow[]): WallRow[] {
  return rows.toSorted((a, b) => (a.wall < b.wall ? -1 : 1));
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

function changesOfWall(
  wall: string,
  was: WallRow | undefined,
  is: WallRow | undefined,
  factors: FactorsInForce,
): { change: OneChange; ids: readonly ColumnId[] }[] {
  const whole = (row: WallRow, type: 'added' | 'removed', what: string) => [
    { change: { wall, type, what, zones: [row.zone] }, ids: [] },
  ];
  if (was === undefined)
    return is === undefined ? [] : whole(is, 'added', `${is.material.name} added to ${is.zone}`);
  if (is === undefined) return whole(was, 'removed', `removed from ${was.zone}`);
  return columnGroups.flatMap((ids) => {
    const differing = ids.filter((id) => statedValue(was, id) !== statedValue(is, id));
    if (differing.length === 0) return [];
    const what = differing
      .map((id) => `${columns[id].name}: ${inWords(was, id, factors)} -> ${inWords(is, id, factors)}`)
      .join('; ');
    const zones = ids.includes('zone') ? [was.zone, is.zone] : [was.zone];
    return [{ change: { wall, type: 'changed' as const, what, zones }, ids }];
  });
}

/** The row of a wall with some of its changes made; undefined where it is not there. */
function rowWith({ was, is, changes, known }: ChangedWall, made: ReadonlySet<number>): WallRow | undefined {
  if (changes.length === 0) return was;
  const own = changes.filter(({ place }) => made.has(place));
  if (was === undefined || is === undefined) return own.length > 0 ? is : was;
  const key = own.map(({ place }) => place).join();
  if (!known.has(key)) {
    const fields = own.flatMap(({ ids }) => ids.flatMap((id) => fieldsOf[id] ?? [id]));
    const changed = Object.fromEntries(fields.map((field) => [field, is[field]]));
    known.set(key, { ...was, ...changed });
  }
  return known.get(key);
}

function inWords(row: WallRow, id: ColumnId, { system }: FactorsInForce): string {
  const value = statedValue(row, id);
  const { reading } = columns[id];
  if (reading.as === 'number' && typeof value === 'number') {
    return shownAmount(value, reading.kind, system, DIGITS.typed);
  }
  return value === undefined ? 'not stated' : String(value);
}
