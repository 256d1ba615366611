import { bidPrice, isPriced } from '../estimate/price';
import { estimateOfZones, type JobEstimate, type ZoneEstimate } from '../estimate/schedule';
import { comparable } from '../quantity/cell';
import { WashdownError } from '../quantity/problem';
import { readFactors, type FactorsInForce } from '../rules/read-factors';
import { readWalls } from '../walls/read-walls';
import { selectZones, zonesOf } from '../walls/zones';
import { cellKey, type Alternate } from './alternate';
import { applied, type Bid, type BidRanges } from './apply';
import { earlyChoices } from './early-choices';
import { KnownJob } from './known-job';
import { readAlternates } from './read-alternates';

// Less than this is what sums leave over.
const NO_HOURS = 1e-9;

/** What alternates are compared on. */
export interface AlternatesInput extends BidRanges {
  /** A table of alternates; none for the choices that somebody can still make. */
  readonly alternates?: unknown;
  /** The zone whose numbers are wanted; empty for the whole job. */
  readonly zone: string;
}

/** A zone before and after an alternate; undefined where it is not there. */
export interface ZoneMove {
  readonly name: string;
  readonly before: ZoneEstimate | undefined;
  readonly after: ZoneEstimate | undefined;
}

/** What an alternate comes to. */
export interface AlternateLine {
  readonly alternate: Alternate;
  /** The zones whose class, ceiling or governor it moves. */
  readonly moves: readonly ZoneMove[];
  /** The zones asked for, with the alternate. */
  readonly estimate: JobEstimate;
  /** What it adds to the bid, or deducts: money rounded as it is bid, or labor-hours where labor has no price. */
  readonly added: number;
}

/** All alternates that save, taken together. */
export interface Together {
  readonly taken: readonly Alternate[];
  /** Those that save too, but touch a cell that is taken; each with the one that took it. */
  readonly leftOut: readonly { readonly alternate: Alternate; readonly by: Alternate }[];
  /** Undefined where no alternate saves, or where what is taken cannot stand together. */
  readonly line: AlternateLine | undefined;
  /** Why it cannot stand together. */
  readonly problem: string | undefined;
}

/** What the alternates of a bid come to. */
export interface AlternatesResult {
  readonly factors: FactorsInForce;
  /** Whether the alternates are compared by the price; by labor-hours where labor has none. */
  readonly priced: boolean;
  /** The zones asked for, as they are bid. */
  readonly base: JobEstimate;
  readonly lines: readonly AlternateLine[];
  readonly together: Together;
}

/**
 * What each alternate adds to the bid or deducts from it, each applied to the base alone.
 * @param input the ranges
 * @returns the lines in the order of the table, and those that save together
 * @throws {WashdownError} naming each cell that cannot be read
 */
export function alternatesOf(input: AlternatesInput): AlternatesResult {
  const steps = alternateSteps(input);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/**
 * The same, step by step, for a caller that does other things in between.
 * @param input the ranges
 * @yields each line
 * @returns the lines in the order of the table, and those that save together
 * @throws {WashdownError} naming each cell that cannot be read
 */
export function* alternateSteps(input: AlternatesInput): Generator<AlternateLine, AlternatesResult> {
  const factors = readFactors(input.factors);
  const rows = readWalls(input.walls, factors, input.headings);
  const bid = { rows, factors };
  // Of the base nothing is let pass that the other functions refuse.
  selectZones(zonesOf(rows), input.zone);
  const comparison = new Comparison(input, bid);
  const { base } = comparison;
  const header = (input.walls as unknown[][])[0] ?? [];
  const given = input.alternates;
  const alternates =
    given === null || given === undefined || given === ''
      ? earlyChoices({ rows, zones: base.zones, factors })
      : readAlternates(given, rows, header, factors.system, input.headings);
  const bids = allApplied(bid, input, alternates);
  const lines: AlternateLine[] = [];
  for (const [place, alternate] of alternates.entries()) {
    const line = comparison.lineOf(alternate, bids[place] ?? bid);
    lines.push(line);
    yield line;
  }
  const together = togetherOf(lines, comparison, bid, input);
  return { factors, priced: comparison.priced, base, lines, together };
}

/** The bid with each alternate; every value that is refused is told at once. */
function allApplied(bid: Bid, ranges: BidRanges, alternates: readonly Alternate[]): Bid[] {
  const bids: Bid[] = [];
  const problems = alternates.flatMap((alternate) => {
    try {
      bids.push(applied(bid, ranges, alternate));
      return [];
    } catch (error) {
      if (error instanceof WashdownError) return error.problems;
      throw error;
    }
  });
  if (problems.length > 0) throw new WashdownError(problems);
  return bids;
}

/** Compares bids with the base. */
class Comparison {
  readonly priced: boolean;
  readonly base: JobEstimate;
  readonly #job: KnownJob;
  readonly #whole: JobEstimate;
  readonly #zone: string;

  constructor({ zone }: AlternatesInput, { rows, factors }: Bid) {
    this.#zone = comparable(zone);
    this.#job = new KnownJob(factors);
    this.priced = isPriced(factors);
    this.#whole = this.#job.at(rows).estimate;
    this.base = this.#asked(this.#whole);
  }

  lineOf(alternate: Alternate, { rows, factors }: Bid): AlternateLine {
    const job = factors === this.#job.factors ? this.#job : new KnownJob(factors);
    const whole = job.at(rows).estimate;
    const estimate = this.#asked(whole);
    return { alternate, moves: movesOf(this.#whole, whole), estimate, added: this.#added(estimate) };
  }

  #asked(whole: JobEstimate): JobEstimate {
    if (this.#zone === '') return whole;
    const zones = whole.zones.map(({ zone }) => zone);
    return estimateOfZones(
      whole,
      zones.filter(({ name }) => comparable(name) === this.#zone),
    );
  }

  #added({ totals }: JobEstimate): number {
    const { totals: was } = this.base;
    // Both are rounded as they are bid, and the difference of cents is cents again.
    if (this.priced) return bidPrice(bidPrice(totals.price) - bidPrice(was.price));
    return totals.laborHours - was.laborHours;
  }
}

function movesOf(before: JobEstimate, after: JobEstimate): ZoneMove[] {
  const [was, is] = [before, after].map(({ zones }) => new Map(zones.map((each) => [each.zone.name, each])));
  const names = new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])]);
  return [...names]
    .map((name) => ({ name, before: was?.get(name), after: is?.get(name) }))
    .filter((move) => toldOf(move.before) !== toldOf(move.after));
}

function toldOf(estimate: ZoneEstimate | undefined): string {
  if (estimate === undefined) return 'none';
  const { governing, classToUse, laterClasses } = estimate;
  const governors = governing?.governors.map(({ code }) => code);
  return JSON.stringify([classToUse, governing?.ceiling, governors, laterClasses]);
}

function togetherOf(
  lines: readonly AlternateLine[],
  comparison: Comparison,
  bid: Bid,
  ranges: BidRanges,
): Together {
  const nothing = comparison.priced ? 0 : NO_HOURS;
  // Largest first; of two that save the same the first of the table.
  const saving = lines.filter(({ added }) => added < -nothing).sort((a, b) => a.added - b.added);
  const taken: Alternate[] = [];
  const leftOut: { alternate: Alternate; by: Alternate }[] = [];
  const takenBy = new Map<string, Alternate>();
  for (const { alternate } of saving) {
    const by = alternate.edits.map((edit) => takenBy.get(cellKey(edit))).find((other) => other !== undefined);
    if (by) leftOut.push({ alternate, by });
    else {
      taken.push(alternate);
      for (const edit of alternate.edits) takenBy.set(cellKey(edit), alternate);
    }
  }
  if (taken.length === 0) return { taken, leftOut, line: undefined, problem: undefined };
  const all: Alternate = {
    name: 'All that save together',
    edits: taken.flatMap(({ edits }) => edits),
    notes: [...new Set(taken.flatMap(({ notes }) => notes))],
  };
  try {
    return { taken, leftOut, line: comparison.lineOf(all, applied(bid, ranges, all)), problem: undefined };
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    return { taken, leftOut, line: undefined, problem: error.message };
  }
}
