import { governZone, type Governing } from '../govern/govern-zone';
import { crewHours, squareMetres } from '../quantity/quantities';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import { edged } from '../walls/edged';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { moveHours } from './moves';
import { patchInForce, type Patch } from './patch';
import type { PreWet } from './pre-wet';
import { addPrice, bidPrice } from './price';
import { addedQuantities, noQuantities, quantityIds, type Quantities } from './quantities';
import { addRowQuantities, zoneConditions } from './row-quantities';
import { setUp } from './set-up';
import { washByPatch, washWithClearWater, type WashHours } from './wash-cycle';

/** The estimate of one zone. */
export interface ZoneEstimate {
  readonly zone: Zone;
  /** Undefined where every row is masked and nothing is washed. */
  readonly governing: Governing | undefined;
  readonly wet: PreWet;
  /** Undefined where there is no dwell, or no contact window. */
  readonly patch: Patch | undefined;
  readonly patches: number;
  readonly totals: Readonly<Quantities>;
  /** Why some totals are NaN; undefined where all are numbers. */
  readonly finding: string | undefined;
}

/** Takes the quantities of a row as they are worked out. */
export type RowTaker = (row: WallRow, quantities: Readonly<Quantities>, zone: ZoneEstimate) => void;

const rowOwned = quantityIds.filter((id) => addedQuantities[id].of === 'row' && id !== 'crewHours');
const zoneOwned = quantityIds.filter((id) => addedQuantities[id].of === 'zone');
const hourParts = quantityIds.filter((id) => addedQuantities[id].kind === 'crewHours' && id !== 'crewHours');
const beforeSetUp = hourParts.filter((id) => id !== 'setupHours');

/**
 * The estimate of one zone: the class to use, and every quantity summed over its rows.
 * @param zone the zone
 * @param index its number within the calculation
 * @param factors the factors in force
 * @param options what else is wanted
 * @param options.rec takes down the lines
 * @param options.takeRow takes the quantities of each row
 * @returns the estimate, in base units
 */
export function estimateZone(
  zone: Zone,
  index: number,
  factors: FactorsInForce,
  { rec, takeRow }: { rec?: Recorder | undefined; takeRow?: RowTaker | undefined } = {},
): ZoneEstimate {
  const { kinds } = zone;
  // A record is of each row. Otherwise one row of each kind tells what may touch the zone and how long it is.
  const rows = (!rec && kinds) || zone.rows;
  rec?.inZone(index, zone.name);
  const governing = governZone({ rows, below: zone.below }, factors, rec);
  const conditions = zoneConditions(rows, governing, factors, rec);
  const totals = noQuantities();
  for (const row of kinds?.map(edged) ?? zone.rows) addRowQuantities(row, conditions, totals);
  if (rec) {
    const ofRows = rows.map((row) => {
      const ofRow = noQuantities();
      addRowQuantities(row, conditions, ofRow, rec);
      return ofRow;
    });
    for (const id of rowOwned) {
      const terms = rows.map(({ row }) => `${id}_r${row}`);
      const values = ofRows.map((ofRow) => ofRow[id]);
      rec.sum(`${id}@`, terms, values, addedQuantities[id].kind, 'sum');
    }
  }

  const wash = washOf(governing, totals, conditions.wet, factors, rec);
  totals.prewetHours = wash.hours.preWet;
  totals.applyHours = wash.hours.apply;
  totals.rinseHours = wash.hours.rinse;
  totals.moveHours = moveHours(rows, factors, rec);
  let other = 0;
  for (const part of beforeSetUp) other += totals[part];
  rec?.line(
    'otherHours@',
    beforeSetUp.map((part) => `${part}@`).join(' + '),
    other,
    'crewHours',
    'otherHours',
  );
  const setting = setUp(crewHours(other), factors, rec);
  totals.days = setting.days;
  totals.setupHours = setting.hours;
  totals.crewHours = other + setting.hours;
  rec?.line('crewHours@', 'otherHours@ + setupHours@', totals.crewHours, 'crewHours', 'crewHours');
  addPrice(totals, conditions.ofClass.prices, '@', rec);
  rec?.line('bidPrice@', 'round(price@, 2)', bidPrice(totals.price), 'money', 'bidPrice');

  const estimate: ZoneEstimate = {
    zone,
    governing,
    wet: conditions.wet,
    patch: wash.patch,
    patches: wash.hours.patches,
    totals,
    finding: wash.finding,
  };
  if (takeRow || rec) shareOut(estimate, conditions, rec, takeRow);
  return estimate;
}

/** The estimate of the job: its zones and their sum. */
export interface JobEstimate {
  readonly zones: readonly ZoneEstimate[];
  readonly totals: Readonly<Quantities>;
  /** Why some totals are NaN. */
  readonly finding: string | undefined;
}

/**
 * The estimate of several zones and their sum.
 * @param zones the zones, all of the job or one
 * @param factors the factors in force
 * @param options what else is wanted
 * @param options.rec takes down the lines
 * @param options.takeRow takes the quantities of each row
 * @returns the estimates, in base units
 */
export function estimateJob(
  zones: readonly Zone[],
  factors: FactorsInForce,
  options: { rec?: Recorder | undefined; takeRow?: RowTaker | undefined } = {},
): JobEstimate {
  const estimates = zones.map((zone, index) => estimateZone(zone, index, factors, options));
  const totals = noQuantities();
  for (const { totals: ofZone } of estimates) for (const id of quantityIds) totals[id] += ofZone[id];
  const { rec } = options;
  if (rec) {
    rec.inZone(undefined, '');
    const suffixes = zones.map((_, index) => `_z${String(index + 1)}`);
    for (const id of quantityIds) {
      const terms = suffixes.map((suffix) => id + suffix);
      rec.sum(
        id,
        terms,
        estimates.map((zone) => zone.totals[id]),
        addedQuantities[id].kind,
        'sum',
      );
    }
    rec.line('bidPrice', 'round(price, 2)', bidPrice(totals.price), 'money', 'bidPrice');
    const governed = estimates.flatMap(({ governing }, index) =>
      governing ? [{ symbol: `ceiling_z${String(index + 1)}`, value: governing.ceiling }] : [],
    );
    if (governed.length > 0) {
      const least = Math.min(...governed.map(({ value }) => value));
      rec.line(
        'ceiling',
        `min(${governed.map(({ symbol }) => symbol).join(', ')})`,
        least,
        'class',
        'jobCeiling',
      );
    }
  }
  return { zones: estimates, totals, finding: estimates.find((zone) => zone.finding)?.finding };
}

function washOf(
  governing: Governing | undefined,
  totals: Quantities,
  wet: PreWet,
  factors: FactorsInForce,
  rec?: Recorder,
): { hours: WashHours; patch?: Patch | undefined; finding?: string | undefined } {
  const area = squareMetres(totals.washedArea);
  if (governing === undefined || governing.classToUse === 0) {
    return { hours: washWithClearWater(area, factors, rec) };
  }
  const patch = patchInForce(factors, rec);
  if ('none' in patch) {
    const unknown = crewHours(NaN);
    return { hours: { patches: NaN, preWet: unknown, apply: unknown, rinse: unknown }, finding: patch.none };
  }
  return { hours: washByPatch(area, patch, wet, factors, rec), patch };
}

/** Shares what belongs to the zone out over its rows, so that the rows add up to it. */
function shareOut(
  estimate: ZoneEstimate,
  conditions: ReturnType<typeof zoneConditions>,
  rec: Recorder | undefined,
  takeRow: RowTaker | undefined,
): void {
  const { totals, zone } = estimate;
  const washed = totals.washedArea > 0;
  const by = washed ? 'washedArea' : 'maskingArea';
  for (const row of zone.rows) {
    const ofRow = noQuantities();
    addRowQuantities(row, conditions, ofRow);
    const share = totals[by] > 0 ? ofRow[by] / totals[by] : 1 / zone.rows.length;
    rec?.inRow(row.row, row.wall);
    const expression = totals[by] > 0 ? `${by}# / ${by}@` : `1 / ${String(zone.rows.length)}`;
    rec?.line('share#', expression, share, 'ratio', 'share');
    for (const id of zoneOwned) {
      ofRow[id] = totals[id] * share;
      rec?.line(`${id}#`, `${id}@ * share#`, ofRow[id], addedQuantities[id].kind, 'share');
    }
    for (const part of hourParts) ofRow.crewHours += ofRow[part];
    rec?.line(
      'crewHours#',
      hourParts.map((part) => `${part}#`).join(' + '),
      ofRow.crewHours,
      'crewHours',
      'crewHours',
    );
    addPrice(ofRow, conditions.ofClass.prices, '#', rec);
    takeRow?.(row, ofRow, estimate);
  }
}
