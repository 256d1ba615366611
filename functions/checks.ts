import { findingsOf } from '../src/review/checks';
import { sources } from '../src/rules/sources';
import { exampleRows } from '../src/walls/example-rows';
import { answer, readQuestion } from './arguments';
import type { Run } from './worksheet-function';

/** Spills what a reviewer should know. */
export const runChecks: Run = ([walls, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { zones } = answer(question);
  const job = answer({ ...question, zones: question.job }).zones;
  const findings = findingsOf({
    zones,
    job,
    factors: question.factors,
    examples: exampleRows(walls, question.factors.system, headings),
  });
  return [
    ['Check', 'What', 'Where', 'Why', 'What to do', 'Source'],
    ...findings.map(({ check, what, where, why, todo, source }) => [
      check,
      what,
      where,
      why,
      todo,
      sources[source].document,
    ]),
  ];
};
