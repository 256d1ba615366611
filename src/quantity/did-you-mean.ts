import { nearest } from './nearest';

/**
 * What may have been meant, to stand behind what is accepted.
 * @param seen the name that was typed
 * @param known the names that exist
 * @param most how many at most: one where all are listed already
 * @returns for example `. Did you mean Top, Bottom?`; empty where there is nothing to offer
 */
export function didYouMean(seen: string, known: readonly string[], most?: number): string {
  return offered(seen === '' ? [] : nearest(seen, known, most));
}

/**
 * Names that may have been meant, to stand behind what is accepted.
 * @param near the names, nearest first
 * @returns the question; empty where there is none
 */
export function offered(near: readonly string[]): string {
  return near.length === 0 ? '' : `. Did you mean ${near.join(', ')}?`;
}

// More names than this hide the rest of a message.
const LISTED = 12;

/**
 * Names that are accepted, listed where they are few.
 * @param what what they name
 * @param names the names
 * @returns for example `a zone: Top, Bottom`
 */
export function namesListed(what: string, names: readonly string[]): string {
  return names.length > LISTED ? what : `${what}: ${names.join(', ')}`;
}
