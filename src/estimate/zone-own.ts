import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { ZoneRecord } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import { isWashedLater } from '../walls/washed-later';
import type { Zone } from '../walls/zones';
import { elevationOf, type Elevation } from './elevation';
import { addedQuantities, hourParts, noQuantities, quantityIds, type Quantities } from './quantities';
import { addFaceQuantities, addWashQuantities, ofWashing, type JobRules } from './row-quantities';
import type { RowWash } from './wash-row';
import { decideZone, type Wash, type ZoneDecision } from './washes';

/** How a row is washed. */
export interface WashedRow {
  readonly row: WallRow;
  readonly wash: Wash;
  readonly how: RowWash;
}

/** What a zone takes by itself, before what belongs to the whole job is shared out. */
export interface ZoneOwn {
  readonly zone: Zone;
  /** Number of the zone within the job. */
  readonly index: number;
  readonly decision: ZoneDecision;
  readonly elevation: Elevation;
  /** Quantities of its rows and of the zone; no price but that of the cleaner. */
  readonly sums: Quantities;
  /** Labor-hours before set-up and before what belongs to the job. */
  readonly ownHours: number;
  /** The rows that are washed, or one of each group. */
  readonly washed: readonly WashedRow[];
  /** Why some numbers are NaN; undefined where all are numbers. */
  readonly finding: string | undefined;
}

const rowOwned = quantityIds.filter((id) => addedQuantities[id].of === 'row');
const jobOwned = hourParts.filter((id) => addedQuantities[id].of === 'job');
const ownParts = hourParts.filter((id) => id !== 'setupHours' && !jobOwned.includes(id));

/**
 * What a zone takes by itself: its decision, and every quantity summed over its rows.
 * @param zone the zone
 * @param index its number within the job
 * @param rules what holds for the job
 * @param factors the factors in force
 * @param rec takes down the lines, of the zone
 * @returns the zone's own quantities, in base units
 */
export function zoneOwn(
  zone: Zone,
  index: number,
  rules: JobRules,
  factors: FactorsInForce,
  rec?: ZoneRecord,
): ZoneOwn {
  // A record is of each row. Otherwise one row of each group tells it all.
  const rows = (!rec && zone.groups) || zone.rows;
  const elevation = elevationOf(rows, rules.access.lift, rec);
  const decision = decideZone(
    { rows, below: zone.below },
    elevation,
    (classToUse: CleanerClass) => rules.ofClass(classToUse).wash,
    rules.slowdowns,
    factors,
    rec,
  );
  const sums = noQuantities();
  const washed: WashedRow[] = [];
  let finding: string | undefined;
  for (const row of rows) {
    const rowRec = rec?.row(row.row, row.wall);
    addFaceQuantities(row, elevation, rules, sums, rowRec);
    const wash = washOf(row, decision);
    if (wash === undefined) {
      for (const id of rowRec ? ofWashing : [])
        rowRec?.nothing(`${id}#`, addedQuantities[id].kind, row.mask === 'only' ? 'leftOut' : 'notWashed');
      continue;
    }
    const how = addWashQuantities(row, wash, elevation, decision, rules, sums, rowRec);
    finding ??= how.finding;
    washed.push({ row, wash, how });
  }
  if (rec) traceSums(rows, (row) => rowOwn(row, { decision, elevation }, rules), rec);
  const washes = decision.later.length + (decision.first ? 1 : 0);
  sums.zonesetupHours = washes * factors.value('setup.zone');
  rec?.line('zoneSetup', sums.zonesetupHours, { washes });
  let ownHours = 0;
  for (const part of ownParts) ownHours += sums[part];
  rec?.line('ownHours', ownHours, { parts: ownParts.map((part) => `${part}@`).join(' + ') });
  return { zone, index, decision, elevation, sums, ownHours, washed, finding };
}

/**
 * The wash that a row is part of.
 * @param row the wall row
 * @param decision how its zone is washed
 * @returns the wash, or undefined where the row is not washed
 */
export function washOf(row: WallRow, { first, later, laterClass }: ZoneDecision): Wash | undefined {
  if (isWashedLater(row)) {
    const of = laterClass(row);
    return later.find((wash) => wash.class === of);
  }
  return row.masked || netArea(row) <= 0 ? undefined : first;
}

/**
 * The quantities of one row by itself.
 * @param row the wall row
 * @param own its zone
 * @param rules what holds for the job
 * @returns quantities in base units
 */
export function rowOwn(
  row: WallRow,
  { decision, elevation }: Pick<ZoneOwn, 'decision' | 'elevation'>,
  rules: JobRules,
): Quantities {
  const sums = noQuantities();
  addFaceQuantities(row, elevation, rules, sums);
  const wash = washOf(row, decision);
  if (wash) addWashQuantities(row, wash, elevation, decision, rules, sums);
  return sums;
}

function traceSums(rows: readonly WallRow[], of: (row: WallRow) => Quantities, rec: ZoneRecord): void {
  const ofRows = rows.map(of);
  for (const id of [...rowOwned, 'priceCleaner' as const]) {
    const terms = rows.map(({ row }) => `${id}_r${String(row)}`);
    const values = ofRows.map((ofRow) => ofRow[id]);
    rec.sum(`${id}@`, terms, values, addedQuantities[id].kind, 'sum');
  }
}
