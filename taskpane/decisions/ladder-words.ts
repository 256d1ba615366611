import type { MaskOption } from '../../src/estimate/options';
import { isPriced } from '../../src/estimate/price';
import { classInWords, className } from '../../src/rules/cleaner-classes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { wallsNamed } from '../../src/site/named';
import { priceText } from '../shared/price-text';
import { quantityText } from './number-text';

/**
 * A line of the ladder by its class.
 * @param option the line
 * @returns for example `Class 2, buffered mild acid`
 */
export function rungName(option: MaskOption): string {
  return option.class === undefined
    ? 'As marked'
    : `Class ${String(option.class)}, ${className(option.class)}`;
}

/**
 * What is masked on a line and washed afterwards, or why the line is not offered.
 * @param option the line
 * @returns a sentence
 */
export function rungCondition({ estimate, reason, masked }: MaskOption): string {
  if (estimate === undefined) return `Not offered: ${reason ?? 'no reason is known'}.`;
  if (masked.length === 0) return 'Nothing masked.';
  const later = laterInWords(estimate.laterClasses);
  return `Masked: ${wallsNamed(masked)}${later === '' ? '' : `; masonry washed afterwards with ${later}`}.`;
}

/**
 * The classes of the washes of the masked masonry.
 * @param classes the classes, the most tolerant rows first
 * @returns for example `class 1 (neutral detergent)`; empty where there is no such wash
 */
export function laterInWords(classes: readonly number[]): string {
  return classes.map((of) => classInWords(of)).join(', ');
}

/**
 * The mark of a line.
 * @param option the line
 * @param factors the factors in force
 * @returns a word, or none
 */
export function rungMark({ cheapest }: MaskOption, factors: FactorsInForce): string | undefined {
  if (!cheapest) return undefined;
  return isPriced(factors) ? 'cheapest' : 'fewest labor-hours';
}

/**
 * What the ladder comes to.
 * @param options the lines of a zone, the zone as it is marked first
 * @param factors the factors in force
 * @returns a sentence: the line that makes the job cheapest, and what it saves
 */
export function ladderOutcome(options: readonly MaskOption[], factors: FactorsInForce): string {
  const best = options.find(({ cheapest }) => cheapest);
  if (best?.estimate === undefined) return 'No class of cleaner can be used here: see why at each.';
  const priced = isPriced(factors);
  const costText = (cost: number): string =>
    priced ? priceText(cost) : quantityText(cost, 'laborHours', factors.system);
  const least = priced ? 'Cheapest' : 'Fewest labor-hours';
  if (best.class === undefined) return `${least}: as marked, ${costText(best.job)} for the job.`;
  const masking = best.masked.length === 0 ? 'nothing masked' : `${wallsNamed(best.masked)} masked`;
  const line = `${least}: ${classInWords(best.class)} with ${masking}, ${costText(best.job)} for the job`;
  const saved = (options.find((option) => option.class === undefined)?.job ?? NaN) - best.job;
  return Number.isNaN(saved)
    ? `${line}; as marked has no value.`
    : `${line}; ${costText(saved)} less than as marked.`;
}
