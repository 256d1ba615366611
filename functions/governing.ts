import { classInWords } from '../src/rules/cleaner-classes';
import { badInput, nothingHere } from '../src/quantity/problem';
import type { Governing } from '../src/govern/govern-zone';
import type { ZoneEstimate } from '../src/estimate/schedule';
import { answer, readQuestion, type Question } from './arguments';
import type { Run } from './worksheet-function';

/** The estimate of a zone that has a first wash. */
type Governed = ZoneEstimate & { readonly governing: Governing };

/**
 * The decisions of the zones asked for, those left out where no bare row is washed.
 * @param question factors and zones
 * @returns the zones with their decisions, one at least
 * @throws {WashdownError} where every row is masked
 */
export function governed(question: Question): Governed[] {
  const found = answer(question).zones.filter((zone): zone is Governed => zone.governing !== undefined);
  if (found.length === 0) throw nothingHere(NOTHING_WASHED);
  return found;
}

/** What is said where nothing is left to wash. */
export const NOTHING_WASHED =
  'Nothing bare is washed here: every row is masked or has no face beside its openings.';

/** Works out the class to use. */
export const runClass: Run = ([walls, zone, factors, headings]) => {
  const decisions = governed(readQuestion(walls, zone, factors, headings));
  const impossible = decisions.find(({ finding }) => finding !== undefined);
  if (impossible?.finding !== undefined) throw badInput(impossible.finding);
  const classes = new Set(decisions.map(({ classToUse }) => classToUse));
  const [only] = classes;
  if (classes.size > 1 || only === undefined) {
    const each = decisions.map(({ zone: { name }, classToUse }) => `${name} ${classInWords(classToUse)}`);
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
