import type { SourceId } from './sources';

/** A class of cleaner, from the gentlest up. */
export type CleanerClass = 0 | 1 | 2 | 3;

/** The classes offered: a scale of ours. Unbuffered acid is left out on the advice of BIA Technical Note 20. */
export const cleanerClasses: readonly {
  readonly class: CleanerClass;
  readonly name: string;
  readonly source: SourceId;
}[] = [
  { class: 0, name: 'clear water', source: 'estimate' },
  { class: 1, name: 'neutral detergent', source: 'estimate' },
  { class: 2, name: 'buffered mild acid', source: 'estimate' },
  { class: 3, name: 'buffered acid at full label strength', source: 'estimate' },
];

/** The class that no cleaner offered here goes above. */
export const STRONGEST_CLASS: CleanerClass = 3;

/** The first class that is an acid. */
export const GENTLEST_ACID: CleanerClass = 2;

/**
 * The name of a class.
 * @param of the class, 0 to 3
 * @returns its name, for example `neutral detergent`
 */
export function className(of: number): string {
  return cleanerClasses.find((row) => row.class === of)?.name ?? 'not a class';
}

/**
 * A class with its name, for a sentence.
 * @param of the class; none where nothing is washed
 * @returns for example `class 1 (neutral detergent)`
 */
export function classInWords(of: number | undefined): string {
  return of === undefined ? 'no class' : `class ${of} (${className(of)})`;
}

/**
 * Whether a text asks for a cleaner that is not offered because it harms masonry.
 * @param text what the user typed
 * @returns true for unbuffered, raw or muriatic acid
 */
export function asksForUnbufferedAcid(text: string): boolean {
  return (
    /unbuffered|muriatic|raw\s*acid|hydrochloric/i.test(text) &&
    !/(^|[^n])buffered\s+(mild\s+)?acid/i.test(text)
  );
}

/** What is answered when unbuffered acid is asked for. */
export const UNBUFFERED_ACID_ANSWER =
  'Unbuffered acid is not offered: BIA Technical Note 20 advises against it';
