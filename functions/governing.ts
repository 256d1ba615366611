import { classInWords } from '../src/rules/cleaner-classes';
import { badInput, nothingHere } from '../src/quantity/problem';
import { governZone, type Governing } from '../src/govern/govern-zone';
import { readQuestion, type Question } from './arguments';
import type { Run } from './worksheet-function';

interface Governed {
  readonly name: string;
  readonly governing: Governing;
}

/**
 * The decisions of the zones asked for, those left out where nothing is washed.
 * @param question factors and zones
 * @returns the zones with their decisions, one at least
 * @throws {WashdownError} where every row is masked
 */
export function governed({ factors, zones }: Question): Governed[] {
  const found = zones.flatMap((zone) => {
    const governing = governZone(zone, factors);
    return governing ? [{ name: zone.name, governing }] : [];
  });
  if (found.length === 0) throw nothingHere(NOTHING_WASHED);
  return found;
}

/** What is said where nothing is left to wash. */
export const NOTHING_WASHED = 'Nothing is washed here: every row is masked.';

/** Works out the class to use. */
export const runClass: Run = ([walls, zone, factors, headings]) => {
  const decisions = governed(readQuestion(walls, zone, factors, headings));
  const classes = new Set(decisions.map(({ governing }) => governing.classToUse));
  const [only] = classes;
  if (classes.size > 1 || only === undefined) {
    const each = decisions.map(
      ({ name, governing: { classToUse } }) => `${name} ${classInWords(classToUse)}`,
    );
    throw badInput(
      `The zones are washed with different classes: ${each.join(', ')}. Accepted: the name of one zone.`,
    );
  }
  return only;
};

/** Works out the governing ceiling. */
export const runGoverning: Run = ([walls, zone, factors, headings]) => {
  const decisions = governed(readQuestion(walls, zone, factors, headings));
  return Math.min(...decisions.map(({ governing }) => governing.ceiling));
};

/** Names the materials that set the ceiling. */
export const runGovernor: Run = ([walls, zone, factors, headings]) => {
  const decisions = governed(readQuestion(walls, zone, factors, headings));
  const least = Math.min(...decisions.map(({ governing }) => governing.ceiling));
  const weakest = decisions.filter(({ governing }) => governing.ceiling === least);
  return [...new Set(weakest.flatMap(({ governing }) => governing.governors.map(({ name }) => name)))].join(
    ', ',
  );
};
