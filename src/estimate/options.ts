import { governZone } from '../govern/govern-zone';
import { maskForClass } from '../govern/mask-for-class';
import { cleanerClasses, type CleanerClass } from '../rules/cleaner-classes';
import type { FactorsInForce } from '../rules/read-factors';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { isPriced } from './price';
import { estimateZone, type ZoneEstimate } from './schedule';

/** One rung of the mask-or-govern ladder of a zone. */
export interface MaskOption {
  readonly class: CleanerClass;
  /** Rows that must be masked beyond those that are. */
  readonly toMask: readonly WallRow[];
  /** Net area of the rows to mask, m2: it stays unwashed, which no price of an option makes up for. */
  readonly leftUnwashed: number;
  /** Undefined where the class cannot be allowed. */
  readonly estimate: ZoneEstimate | undefined;
  /** Why the class cannot be allowed, or has no price; undefined where it is. */
  readonly reason: string | undefined;
  /** Whether no other option of the zone costs less; by crew-hours where labour has no price. */
  readonly cheapest: boolean;
  /** Whether this is the zone as its rows stand. */
  readonly asItStands: boolean;
}

/**
 * The mask-or-govern ladder: for each class what must be masked so that it may be used, and what the zone then takes.
 * Exact, since a ceiling can only be one of the classes. At a class above the greatest need the cleaner is no stronger
 * than needed.
 * @param zone the zone
 * @param factors the factors in force
 * @returns an option for each class, mildest first
 */
export function maskOptions(zone: Zone, factors: FactorsInForce): MaskOption[] {
  const now = governZone(zone, factors)?.classToUse;
  const options = cleanerClasses.map((row) => optionFor(zone, row.class, factors, now));
  const costs = options.map(({ estimate }) => (estimate ? costOf(estimate, factors) : NaN));
  const least = costs.reduce((best, cost) => (cost < best ? cost : best), Infinity);
  let marked = false;
  return options.map((option, index) => {
    // Where two cost the same the milder one is marked: the gentlest effective method.
    const cheapest = !marked && costs[index] === least;
    marked ||= cheapest;
    return { ...option, cheapest };
  });
}

function costOf({ totals }: ZoneEstimate, factors: FactorsInForce): number {
  return isPriced(factors) ? totals.price : totals.crewHours;
}

function optionFor(
  zone: Zone,
  wanted: CleanerClass,
  factors: FactorsInForce,
  now: CleanerClass | undefined,
): Omit<MaskOption, 'cheapest'> {
  const mask = maskForClass(zone, wanted);
  if (!mask.feasible) {
    return {
      class: wanted,
      toMask: [],
      leftUnwashed: 0,
      estimate: undefined,
      reason: mask.reason,
      asItStands: false,
    };
  }
  const need = governZone({ rows: mask.rows, below: zone.below }, factors)?.mostNeed ?? wanted;
  const chosenClass = Math.min(wanted, factors.chosenClass ?? need) as CleanerClass;
  const estimate = estimateZone({ ...zone, rows: mask.rows }, 0, { ...factors, chosenClass });
  return {
    class: wanted,
    toMask: mask.toMask,
    leftUnwashed: mask.toMask.reduce((sum, { area, openings }) => sum + area - openings, 0),
    estimate,
    reason: estimate.finding,
    // The class in use is within the ceiling, so nothing more is masked for it.
    asItStands: wanted === now,
  };
}
