import type { Governing } from '../govern/govern-zone';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder, ZoneRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { jobOwn, type JobOwn } from './job-own';
import { addPrice, bidPrice, jobSums } from './price';
import {
  addedQuantities,
  hourParts,
  noQuantities,
  quantityIds,
  type Quantities,
  type QuantityId,
} from './quantities';
import { jobRules, type JobRules } from './row-quantities';
import { rowOwn, zoneOwn, type WashedRow, type ZoneOwn } from './zone-own';

/** The estimate of one zone. */
export interface ZoneEstimate {
  readonly zone: Zone;
  /** Undefined where no bare row is left, and nothing is washed in the first wash. */
  readonly governing: Governing | undefined;
  /** The class of the first wash; undefined where there is none. */
  readonly classToUse: CleanerClass | undefined;
  /** The classes of the washes of the masked masonry afterwards, the most tolerant rows first. */
  readonly laterClasses: readonly CleanerClass[];
  /** The rows that are washed, or one of each group, each with how. */
  readonly washed: readonly WashedRow[];
  readonly totals: Readonly<Quantities>;
  /** Why some totals are NaN; undefined where all are numbers. */
  readonly finding: string | undefined;
}

/** Takes the quantities of a row as they are worked out. */
export type RowTaker = (row: WallRow, quantities: Readonly<Quantities>, zone: ZoneEstimate) => void;

/** The estimate of the job or of some of its zones. */
export interface JobEstimate {
  readonly zones: readonly ZoneEstimate[];
  readonly totals: Readonly<Quantities>;
  /** Days of the whole job, unrounded, whichever zones are wanted. */
  readonly jobDays: number;
  /** Why some totals are NaN. */
  readonly finding: string | undefined;
}

/** What else is wanted of an estimate. */
export interface EstimateOptions {
  /** The zones whose estimates are wanted; left out, all. What belongs to the job is worked out from all zones. */
  readonly wanted?: readonly Zone[] | undefined;
  /** Takes down the lines. */
  readonly rec?: Recorder | undefined;
  /** Takes the quantities of each row of the zones wanted. */
  readonly takeRow?: RowTaker | undefined;
}

const shared = quantityIds.filter((id) => ['zone', 'job'].includes(addedQuantities[id].of));
const sumsOfJob = Object.keys(jobSums) as (keyof typeof jobSums)[];

/**
 * The estimate of a job, zone by zone, and the sum.
 * @param zones all zones of the job
 * @param factors the factors in force
 * @param options what else is wanted
 * @returns the estimates, in base units
 */
export function estimateJob(
  zones: readonly Zone[],
  factors: FactorsInForce,
  { wanted = zones, rec, takeRow }: EstimateOptions = {},
): JobEstimate {
  const rules = jobRules(factors, rec);
  const recorded = rec && new Set(wanted);
  const owns = zones.map((zone, index) =>
    zoneOwn(zone, index, rules, factors, recorded?.has(zone) ? rec?.zone(index, zone.name) : undefined),
  );
  return estimateFrom(owns, rules, factors, { wanted, rec, takeRow });
}

/**
 * The estimate of a job from what each zone takes by itself, for a caller that knows some zones already.
 * @param owns every zone of the job, in order
 * @param rules what holds for the job
 * @param factors the factors in force
 * @param options what else is wanted
 * @returns the estimates, in base units
 */
export function estimateFrom(
  owns: readonly ZoneOwn[],
  rules: JobRules,
  factors: FactorsInForce,
  { wanted, rec, takeRow }: EstimateOptions = {},
): JobEstimate {
  const asked = wanted && new Set(wanted);
  const isWanted = (zone: Zone): boolean => asked?.has(zone) ?? true;
  for (const { zone, index, ownHours } of owns) {
    if (rec && !isWanted(zone))
      rec.zone(index, zone.name).given('ownHours@', ownHours, 'laborHours', 'otherZone');
  }
  const job = jobOwn(owns, rules.crew, factors, rec);
  const all = owns.map((own, place) => {
    const share = job.shares[place] ?? 0;
    const zoneRec = isWanted(own.zone) ? rec?.zone(own.index, own.zone.name) : undefined;
    return zoneTotals(own, share, job, rules, factors, zoneRec);
  });
  const short = upToMinimum(owns, all, rules, isWanted, rec);
  const estimates = owns.flatMap((own, place) => {
    const totals = all[place];
    if (totals === undefined || !isWanted(own.zone)) return [];
    const zoneRec = rec?.zone(own.index, own.zone.name);
    totals.priceMinimum = short * (job.shares[place] ?? 0);
    totals.price += totals.priceMinimum;
    zoneRec?.line('priceMinimum', totals.priceMinimum);
    zoneRec?.line('price', totals.price);
    zoneRec?.line('bidPrice', bidPrice(totals.price));
    const { governing, first, later } = own.decision;
    const estimate: ZoneEstimate = {
      zone: own.zone,
      governing,
      classToUse: first?.class,
      laterClasses: later.map((wash) => wash.class),
      washed: own.washed,
      totals,
      finding: own.finding,
    };
    if (takeRow || zoneRec) shareOut(estimate, own, rules, zoneRec, takeRow);
    return [estimate];
  });
  const totals = sumOf(estimates);
  if (rec && estimates.length === owns.length) traceJob(estimates, totals, rec);
  return {
    zones: estimates,
    totals,
    jobDays: job.days,
    finding: estimates.find(({ finding }) => finding)?.finding,
  };
}

/**
 * The estimate of some zones out of that of the whole job.
 * @param job the estimate of all zones
 * @param zones the zones that are wanted
 * @returns their estimates and their sum
 */
export function estimateOfZones(job: JobEstimate, zones: readonly Zone[]): JobEstimate {
  const estimates = job.zones.filter(({ zone }) => zones.includes(zone));
  return {
    zones: estimates,
    totals: sumOf(estimates),
    jobDays: job.jobDays,
    finding: estimates.find(({ finding }) => finding)?.finding,
  };
}

function sumOf(estimates: readonly ZoneEstimate[]): Quantities {
  const totals = noQuantities();
  for (const { totals: ofZone } of estimates) for (const id of quantityIds) totals[id] += ofZone[id];
  return totals;
}

/** The quantities of a zone with its share of what belongs to the job; priced but for the minimum. */
function zoneTotals(
  own: ZoneOwn,
  share: number,
  job: JobOwn,
  { crew, prices }: JobRules,
  factors: FactorsInForce,
  rec?: ZoneRecord,
): Quantities {
  const totals = { ...own.sums };
  totals.sampleHours = job.sampleHours * share;
  totals.mobilizeHours = job.mobilizeHours * share;
  totals.protectHours = job.protectHours * share;
  totals.hireDays = job.hireDays * share;
  const other = own.ownHours + totals.sampleHours + totals.mobilizeHours + totals.protectHours;
  const perDay = factors.value('setup.perDay');
  const persons = crew.size * crew.teams;
  totals.days = other / (persons * (factors.value('shift') - perDay));
  totals.setupHours = totals.days * perDay * persons;
  totals.laborHours = other + totals.setupHours;
  totals.crewHours = totals.laborHours / persons;
  for (const id of sumsOfJob) totals[id] = prices[jobSums[id]] * share;
  if (rec) {
    rec.lineNamed(
      'zoneShare@',
      own.ownHours > 0 ? 'ownHours@ / jobOwnHours' : String(share),
      share,
      'ratio',
      'zoneShare',
    );
    rec.lineNamed(
      'sampleHours@',
      'jobSampleHours * zoneShare@',
      totals.sampleHours,
      'laborHours',
      'zoneShare',
    );
    rec.lineNamed(
      'mobilizeHours@',
      'mobilize_hours * zoneShare@',
      totals.mobilizeHours,
      'laborHours',
      'zoneShare',
    );
    rec.lineNamed(
      'protectHours@',
      'protect_hours * zoneShare@',
      totals.protectHours,
      'laborHours',
      'zoneShare',
    );
    rec.lineNamed('hireDays@', 'jobHireDays * zoneShare@', totals.hireDays, 'days', 'zoneShare');
    rec.line('otherHours', other);
    rec.line('days', totals.days);
    rec.line('setupHours', totals.setupHours);
    rec.line('laborHours', totals.laborHours, 'otherHours@ + setupHours@');
    rec.line('crewHours', totals.crewHours);
    for (const id of sumsOfJob)
      rec.lineNamed(`${id}@`, `price_${jobSums[id]} * zoneShare@`, totals[id], 'money', 'zoneShare');
  }
  addPrice(totals, prices, rec);
  return totals;
}

/** What the job's price lacks to the least price of a job. */
function upToMinimum(
  owns: readonly ZoneOwn[],
  totals: readonly Quantities[],
  { prices }: JobRules,
  isWanted: (zone: Zone) => boolean,
  rec?: Recorder,
): number {
  // A zone without a number has its own finding.
  const known = totals.flatMap(({ price }, place) =>
    Number.isNaN(price) ? [] : [{ price, own: owns[place] }],
  );
  const price = known.reduce((sum, each) => sum + each.price, 0);
  const short = Math.max(0, prices.minimum - price);
  if (rec) {
    for (const { own, price: of } of known)
      if (own && !isWanted(own.zone))
        rec.zone(own.index, own.zone.name).given('priceBefore@', of, 'money', 'otherZone');
    rec.sum(
      'jobPrice',
      known.map(({ own }) => `priceBefore_z${String((own?.index ?? 0) + 1)}`),
      known.map((each) => each.price),
      'money',
      'sum',
    );
    rec.line('shortOfMinimum', short);
  }
  return short;
}

function traceJob(estimates: readonly ZoneEstimate[], totals: Quantities, rec: Recorder): void {
  const suffixes = estimates.map((_, index) => `_z${String(index + 1)}`);
  for (const id of quantityIds) {
    const terms = suffixes.map((suffix) => id + suffix);
    const values = estimates.map((zone) => zone.totals[id]);
    rec.sum(id, terms, values, addedQuantities[id].kind, 'sum');
  }
  rec.line('bidPrice', bidPrice(totals.price));
  const governed = estimates.flatMap(({ governing }, index) =>
    governing ? [{ symbol: `ceiling_z${String(index + 1)}`, value: governing.ceiling }] : [],
  );
  if (governed.length === 0) return;
  const least = Math.min(...governed.map(({ value }) => value));
  rec.line('jobCeiling', least, { ceilings: governed.map(({ symbol }) => symbol).join(', ') });
}

/** Shares what belongs to the zone out over its rows, so that the rows add up to it. */
function shareOut(
  estimate: ZoneEstimate,
  own: ZoneOwn,
  rules: JobRules,
  rec: ZoneRecord | undefined,
  takeRow: RowTaker | undefined,
): void {
  const { totals, zone } = estimate;
  const by = totals.washedArea > 0 ? 'washedArea' : 'maskingArea';
  const passedOn: readonly QuantityId[] = [...shared, ...sumsOfJob, 'priceMinimum'];
  for (const row of zone.rows) {
    const ofRow = rowOwn(row, own, rules);
    const share = totals[by] > 0 ? ofRow[by] / totals[by] : 1 / zone.rows.length;
    const rowRec = rec?.row(row.row, row.wall);
    const expression = totals[by] > 0 ? `${by}# / ${by}@` : `1 / ${String(zone.rows.length)}`;
    rowRec?.lineNamed('share#', expression, share, 'ratio', 'share');
    for (const id of passedOn) {
      ofRow[id] = totals[id] * share;
      rowRec?.lineNamed(`${id}#`, `${id}@ * share#`, ofRow[id], addedQuantities[id].kind, 'share');
    }
    for (const part of hourParts) ofRow.laborHours += ofRow[part];
    ofRow.crewHours = ofRow.laborHours / (rules.crew.size * rules.crew.teams);
    if (rowRec) {
      const parts = hourParts.map((part) => `${part}#`).join(' + ');
      rowRec.line('laborHours', ofRow.laborHours, parts);
      rowRec.line('crewHours', ofRow.crewHours);
    }
    addPrice(ofRow, rules.prices, rowRec);
    ofRow.price += ofRow.priceMinimum;
    rowRec?.line('price', ofRow.price);
    takeRow?.(row, ofRow, estimate);
  }
}
