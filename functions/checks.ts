import { findingsOf } from '../src/review/checks';
import { sources } from '../src/rules/sources';
import { answer, FACTORS, HEADINGS, readQuestion, WALLS, ZONE } from './arguments';
import type { WorksheetFunction } from './worksheet-function';

/** What a reviewer should know. */
export const checksFunction: WorksheetFunction = {
  name: 'CHECKS',
  description: 'Spills what to look at: check, what, where, why, what to do, source.',
  parameters: [WALLS, ZONE, FACTORS, HEADINGS],
  result: 'matrix',
  unit: 'text',
  rule: 'age, sample area, mortar, materials under the class used, nozzle, contact window, weather, blanks and overrides',
  example: '=WASH.CHECKS(Walls[#All],,Factors[#All])',
  run: ([walls, zone, factors, headings]) => {
    const question = readQuestion(walls, zone, factors, headings);
    const { zones } = answer(question);
    const findings = findingsOf({ zones, factors: question.factors });
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
  },
};
