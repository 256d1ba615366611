import { expect, it } from 'vitest';
import { badInput, cellProblem, nothingHere, WashdownError } from '../../src/quantity/problem';

it('a problem names row, label, column, value and what is accepted, apart and in one sentence', () => {
  const problem = cellProblem({ row: 7, label: 'West', column: 'Area' }, '-3', 'a number');
  expect(problem).toEqual({
    type: 'input',
    row: 7,
    column: 'Area',
    seen: '-3',
    accepted: 'a number',
    message: 'Row 7 (West), column Area: -3 cannot be used. Accepted: a number.',
  });
});

it('an error speaks of its first problem and counts the rest', () => {
  const problem = (row: number) => cellProblem({ row, column: 'Area' }, '-3', 'a number');
  const first = 'Row 2, column Area: -3 cannot be used. Accepted: a number.';
  expect(new WashdownError([problem(2)]).message).toBe(first);
  expect(new WashdownError([problem(2), problem(3), problem(4)]).message).toBe(
    `${first} 2 more problems were found.`,
  );
});

it('bad input and a question without an answer are told apart', () => {
  expect(badInput('x').problems.map(({ type }) => type)).toEqual(['input']);
  expect(nothingHere('x').problems.map(({ type }) => type)).toEqual(['nothing']);
});
