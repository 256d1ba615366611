import type { MaskOption } from '../../src/estimate/options';
import { isPriced } from '../../src/estimate/price';
import type { System } from '../../src/quantity/systems';
import { className } from '../../src/rules/cleaner-classes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { wallsNamed } from '../../src/site/named';
import { priceText } from '../price-text';
import { quantityText } from './number-text';

/** What a rung of the ladder is marked with. */
export interface RungMark {
  readonly is: 'cheapest' | 'stands';
  readonly word: string;
}

/**
 * A rung by its class.
 * @param option the rung
 * @returns for example `Class 2, buffered mild acid`
 */
export function rungName(option: MaskOption): string {
  return `Class ${String(option.class)}, ${className(option.class)}`;
}

/**
 * What must be masked for a rung, or why it cannot be had.
 * @param option the rung
 * @param system the display system
 * @returns a sentence
 */
export function rungCondition(option: MaskOption, system: System): string {
  const { estimate, reason, toMask, leftUnwashed } = option;
  if (estimate === undefined) return `Not feasible: ${reason ?? 'no reason is known'}.`;
  if (toMask.length === 0) return 'Nothing more to mask.';
  return `To mask: ${wallsNamed(toMask)}; ${quantityText(leftUnwashed, 'area', system)} stays unwashed.`;
}

/**
 * The marks of a rung.
 * @param option the rung
 * @param factors the factors in force
 * @returns none, or the cheapest, or as the zone stands, or both
 */
export function rungMarks(option: MaskOption, factors: FactorsInForce): RungMark[] {
  const least = isPriced(factors) ? 'cheapest' : 'fewest crew-hours';
  return [
    ...(option.cheapest ? [{ is: 'cheapest', word: least } as const] : []),
    ...(option.asItStands ? [{ is: 'stands', word: 'as it stands' } as const] : []),
  ];
}

/**
 * What the ladder comes to.
 * @param options the rungs of a zone
 * @param factors the factors in force
 * @returns a sentence: the cheapest rung, and what it saves
 */
export function ladderOutcome(options: readonly MaskOption[], factors: FactorsInForce): string {
  const best = options.find(({ cheapest }) => cheapest);
  if (best?.estimate === undefined) return 'No class of cleaner can be used here: see why at each.';
  const priced = isPriced(factors);
  const costOf = ({ estimate }: MaskOption): number =>
    (priced ? estimate?.totals.price : estimate?.totals.crewHours) ?? NaN;
  const costText = (cost: number): string =>
    priced ? priceText(cost) : quantityText(cost, 'crewHours', factors.system);
  const least = priced ? 'Cheapest' : 'Fewest crew-hours';
  const masking =
    best.toMask.length === 0
      ? 'nothing more masked'
      : `${wallsNamed(best.toMask)} masked (${quantityText(best.leftUnwashed, 'area', factors.system)} not washed)`;
  const line = `${least}: class ${String(best.class)} with ${masking}, ${costText(costOf(best))}`;
  const now = options.find(({ asItStands }) => asItStands);
  if (now === undefined) return `${line}.`;
  if (now === best) return `${line}, as it stands.`;
  const saved = costOf(now) - costOf(best);
  return Number.isNaN(saved)
    ? `${line}; as it stands has no value.`
    : `${line}; ${costText(saved)} less than as it stands.`;
}
