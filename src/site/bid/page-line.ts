import type { Kind } from '../../quantity/systems';

/** The parts of a bid page, in the order in which they stand. */
export const pageParts = [
  'Scope',
  'Quantities',
  'Included',
  'Not included',
  'Alternates',
  'Clarifications',
  'Price',
] as const;

/** A line of a bid page. */
export interface PageLine {
  readonly part: (typeof pageParts)[number];
  readonly text: string;
  /** The number beside it, in the base unit; undefined where the line is a sentence alone. */
  readonly amount?: { readonly value: number; readonly kind: Kind };
}
