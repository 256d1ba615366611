import { leftToBrush, type ResidueRules } from '../govern/residue';
import { constants } from '../rules/constants';
import type { CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import type { BelowRules } from './below';
import type { Crew } from './crew';
import { NO_PREWET, preWet, type PreWet, type PreWetRules } from './pre-wet';
import { rinseTime, type RinseRules } from './rinse';
import { noCycle, traceCycle, washCycle, type CycleRules, type WashCycle } from './wash-cycle';

/** What holds for every row that is washed with one class. */
export interface WashRules {
  readonly class: CleanerClass;
  readonly crew: Crew;
  readonly cycle: CycleRules;
  readonly preWet: PreWetRules;
  readonly rinse: RinseRules;
  readonly residue: ResidueRules;
  readonly below: BelowRules;
  /** m2/min of one person with cleaner; of one person with water, one pass */
  readonly applyRate: number;
  readonly wetRate: number;
  /** m2 per labor-hour, heavy residue of Type N mortar under clear water */
  readonly scrubRate: number;
  /** Mistings in a pass, and the water of each, L/m2. */
  readonly mistings: number;
  readonly mist: number;
  readonly factors: FactorsInForce;
}

/** How a row is washed. Minutes of persons on an area, min/m2, net, and water on an area, L/m2. */
export interface RowWash {
  readonly prewet: number;
  readonly apply: number;
  readonly scrub: number;
  readonly rinse: number;
  readonly tend: number;
  readonly change: number;
  readonly below: number;
  /** All of them: team size by the time of the team. */
  readonly all: number;
  /** Passes of cleaner, each rinsed; 1 rinse with clear water. */
  readonly passes: number;
  readonly wet: PreWet;
  /** L/m2 */
  readonly mistWater: number;
  readonly rinseWater: number;
  readonly belowWater: number;
  /** Undefined with clear water, and for what is only protected. */
  readonly cycle: WashCycle | undefined;
  /** Why the row cannot be washed so; every number is NaN then. */
  readonly finding: string | undefined;
}

/**
 * How a row is washed with a class: pre-wet, the cycle of applying, scrubbing and rinsing, what tends, and what lies
 * below. What is only protected is rinsed.
 * @param row the wall row, bare
 * @param strip area below it that is kept wet, m2
 * @param rules what holds for the class
 * @param rec takes down the lines; `stripBelow#` has been taken down
 * @returns minutes of persons and water, on an area
 */
export function washRow(row: WallRow, strip: number, rules: WashRules, rec?: RowRecord): RowWash {
  const { crew } = rules;
  const rinse = rinseTime(row, rules.rinse, rec);
  if (!row.material.masonry) return rinseOnly(rinse, rules, rec);
  const left = leftToBrush(row, rules.class, rules.residue, rec);
  const brushed = Math.max(rules.residue.least, left);
  const scrub = ((brushed / rules.scrubRate) * constants.minPerHour.value) / crew.size;
  rec?.line('scrub', scrub);
  return rules.class === 0
    ? withClearWater({ rinse, scrub, strip }, rules, rec)
    : withCleaner(row, { rinse, scrub, strip }, rules, rec);
}

function withCleaner(
  row: WallRow,
  { rinse, scrub, strip }: FaceTimes,
  rules: WashRules,
  rec?: RowRecord,
): RowWash {
  const { size } = rules.crew;
  const apply = 1 / rules.applyRate;
  rec?.line('applyTime', apply);
  const times = { apply, rinse, scrub };
  const cycle = washCycle(times, rules.cycle);
  if ('none' in cycle) return noWash(noCycle(cycle, row.wall, rinse, rules.factors));
  if (rec) traceCycle(cycle, times, rules.cycle, rec);
  const wet = preWet(row, rules.preWet, rec);
  const { passes } = cycle;
  const work = {
    prewet: wet.passes / rules.wetRate,
    apply: passes * apply,
    scrub: size * scrub,
    rinse: passes * rinse,
    change: (size * passes * rules.cycle.change) / cycle.patch,
  };
  const free = (size - 1) * passes * (cycle.slower + cycle.paced + cycle.wait / cycle.patch);
  const held = passes * (cycle.paced - Math.min(apply, rinse) + cycle.wait / cycle.patch);
  if (rec) {
    rec.line('prewetWork', work.prewet);
    rec.line('applyWork', work.apply);
    rec.line('rinseWork', work.rinse);
    rec.line('scrubWork', work.scrub);
    rec.line('changeWork', work.change);
    rec.line('helpersFree', free);
    rec.line('held', held);
  }
  const below = keepWet(work.prewet, cycle.time, free, strip, rules, rec);
  const mist = rules.mistings * rules.mist * passes;
  const rinseWater = rules.rinse.perArea * passes;
  rec?.line('mist', mist);
  rec?.line('rinsePerArea', rinseWater);
  return withHelpers(work, below, cycle.time, free, held, rules, rec, {
    passes,
    wet,
    mistWater: mist,
    rinseWater,
    cycle,
  });
}

function withClearWater({ rinse, scrub, strip }: FaceTimes, rules: WashRules, rec?: RowRecord): RowWash {
  const { size } = rules.crew;
  const time = scrub + rinse;
  rec?.line('clearWaterCycle', time);
  const free = (size - 1) * rinse;
  const work = { prewet: 0, apply: 0, scrub: size * scrub, rinse, change: 0 };
  if (rec) {
    noCleaner(rec);
    rec.line('rinseWork', rinse, 'rinseTime# * onePerson');
    rec.line('scrubWork', work.scrub);
    rec.line('helpersFree', free, '(team_size - onePerson) * rinseTime#');
  }
  const below = keepWet(0, time, free, strip, rules, rec);
  return withHelpers(work, below, time, free, 0, rules, rec, rinsedOnce(rules));
}

/** What is only protected is rinsed, by one person while the team stands by. */
function rinseOnly(rinse: number, rules: WashRules, rec?: RowRecord): RowWash {
  const { size } = rules.crew;
  const work = { prewet: 0, apply: 0, scrub: 0, rinse, change: 0 };
  if (rec) {
    noCleaner(rec);
    rec.lineNamed('cycle#', 'rinseTime#', rinse, 'minutesPerArea', 'rinsedOnly');
    rec.nothing('belowWork#', 'laborMinutesPerArea', 'rinsedOnly');
    rec.nothing('belowPerArea#', 'volumePerArea', 'rinsedOnly');
    rec.nothing('scrubWork#', 'laborMinutesPerArea', 'rinsedOnly');
    rec.line('rinseWork', rinse, 'rinseTime# * onePerson');
    rec.line('helpersFree', (size - 1) * rinse, '(team_size - onePerson) * rinseTime#');
  }
  const below = { minutes: 0, water: 0 };
  return withHelpers(work, below, rinse, (size - 1) * rinse, 0, rules, rec, rinsedOnce(rules));
}

/**
 * Helpers' work that does not fit beside one who applies or rinses lengthens the cycle; what is left of their time, and
 * what the quicker step is paced and waits, is tending.
 */
function withHelpers(
  { prewet, apply, scrub, rinse, change }: TeamWork,
  below: Below,
  time: number,
  free: number,
  held: number,
  { crew: { size } }: WashRules,
  rec: RowRecord | undefined,
  rest: Pick<RowWash, 'passes' | 'wet' | 'mistWater' | 'rinseWater' | 'cycle'>,
): RowWash {
  const excess = Math.max(0, prewet + below.minutes - free);
  const team = time + excess / size;
  const tend = Math.max(0, free - prewet - below.minutes) + held;
  if (rec) {
    rec.line('helpersExcess', excess);
    rec.line('teamTime', team);
    rec.line('tend', tend);
  }
  return {
    prewet,
    apply,
    scrub,
    rinse,
    tend,
    change,
    below: below.minutes,
    all: size * team,
    // Spelled out: the engine is slow to spread objects, and this is done for each row and class.
    passes: rest.passes,
    wet: rest.wet,
    mistWater: rest.mistWater,
    rinseWater: rest.rinseWater,
    belowWater: below.water,
    cycle: rest.cycle,
    finding: undefined,
  };
}

/**
 * Wettings of what lies below: one each interval of the team's time on the row, pre-wet that does not fit beside one who
 * applies or rinses counted: the wall below dries in that time too.
 */
function keepWet(
  prewet: number,
  time: number,
  free: number,
  strip: number,
  { below, crew: { size } }: WashRules,
  rec?: RowRecord,
): Below {
  const before = time + Math.max(0, prewet - free) / size;
  const wetted = (before / below.interval) * strip;
  const minutes = wetted / below.rate;
  const water = wetted * below.water;
  if (rec) {
    rec.line('beforeBelow', before);
    rec.line('wettedBelow', wetted);
    rec.line('belowWork', minutes);
    rec.line('belowPerArea', water);
  }
  return { minutes, water };
}

function rinsedOnce(
  rules: WashRules,
): Pick<RowWash, 'passes' | 'wet' | 'mistWater' | 'rinseWater' | 'cycle'> {
  return { passes: 1, wet: NO_PREWET, mistWater: 0, rinseWater: rules.rinse.perArea, cycle: undefined };
}

function noCleaner(rec: RowRecord): void {
  for (const symbol of ['prewetWork#', 'applyWork#', 'changeWork#', 'held#'])
    rec.nothing(symbol, 'laborMinutesPerArea', 'noCleaner');
  for (const symbol of ['takenUp#', 'preWetPerArea#', 'mistPerArea#'])
    rec.nothing(symbol, 'volumePerArea', 'noCleaner');
  rec.line('oneRinse', 1);
  rec.line('rinsePerArea', rec.value('rinse.perArea'));
}

function noWash(finding: string): RowWash {
  return {
    prewet: NaN,
    apply: NaN,
    scrub: NaN,
    rinse: NaN,
    tend: NaN,
    change: NaN,
    below: NaN,
    all: NaN,
    passes: NaN,
    wet: { ...NO_PREWET, absorbed: NaN, water: NaN },
    mistWater: NaN,
    rinseWater: NaN,
    belowWater: NaN,
    cycle: undefined,
    finding,
  };
}

/** Team-time on an area to rinse and to scrub, min/m2, and the strip below, m2. */
interface FaceTimes {
  readonly rinse: number;
  readonly scrub: number;
  readonly strip: number;
}

/** Minutes of persons on an area, min/m2, but for what lies below. */
type TeamWork = Readonly<Record<'prewet' | 'apply' | 'scrub' | 'rinse' | 'change', number>>;

/** What lies below, on an area that is washed: minutes of persons, min/m2, and water, L/m2. */
interface Below {
  readonly minutes: number;
  readonly water: number;
}
