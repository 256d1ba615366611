import { findingsOf } from '../src/review/checks';
import type { Finding } from '../src/review/finding';
import { sources } from '../src/rules/sources';
import { exampleRows } from '../src/walls/example-rows';
import { answer, readQuestion } from './arguments';
import type { Run } from './worksheet-function';

/**
 * What a reviewer should know, with the rows and columns that it is about.
 * @param args walls, zone, factors and headings
 * @returns the findings, in the order of the lines of CHECKS
 * @throws {WashdownError} naming what cannot be read
 */
export function checksOf([walls, zone, factors, headings]: readonly unknown[]): Finding[] {
  const question = readQuestion(walls, zone, factors, headings);
  const { zones } = answer(question);
  const job = answer({ ...question, zones: question.job }).zones;
  return findingsOf({
    zones,
    job,
    factors: question.factors,
    examples: exampleRows(walls, question.factors.system, headings),
  });
}

/** Spills what a reviewer should know. */
export const runChecks: Run = (args) => [
  ['Check', 'What', 'Where', 'Why', 'What to do', 'Source'],
  ...checksOf(args).map(({ check, what, where, why, todo, source }) => [
    check,
    what,
    where,
    why,
    todo,
    sources[source].document,
  ]),
];
