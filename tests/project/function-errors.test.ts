import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import type { FunctionName } from '../../functions/runs';
import { isCellError, type WorksheetFunction } from '../../functions/worksheet-function';
import { exampleArguments } from '../../scripts/docs/example-job';
import { errorsOf, errorsOfWalls, type FunctionError } from '../../scripts/docs/function-errors';
import { WashdownError } from '../../src/quantity/problem';

/** The errors that a call shows, and whether some of its cells show none. */
function errorsShown({ run, parameters }: WorksheetFunction, given: FunctionError['given']) {
  try {
    const result = run(exampleArguments(parameters, given));
    const cells = Array.isArray(result) ? result.slice(1).flat() : [result];
    return {
      errors: new Set(cells.filter(isCellError).map(({ error }) => error)),
      besides: cells.some((cell) => !isCellError(cell)),
    };
  } catch (error) {
    if (!(error instanceof WashdownError)) throw error;
    const nothing = error.problems.every(({ type }) => type === 'nothing');
    return { errors: new Set([nothing ? '#N/A' : '#VALUE!']), besides: false };
  }
}

const listed = worksheetFunctions.flatMap((entry) => {
  const takes = (wanted: string): boolean => entry.parameters.some(({ name }) => name === wanted);
  const ofWalls = takes('walls') ? errorsOfWalls.filter(({ given }) => takes('zone') || !given['zone']) : [];
  return [...ofWalls, ...errorsOf[entry.name as FunctionName]].map(
    (error) => [entry.name, error.error, error.where, entry, error] as const,
  );
});

describe('each error that the page of the functions lists', () => {
  it.each(listed)('%s gives %s: %s', (_, error, __, entry, { given, inCells }) => {
    const { errors, besides } = errorsShown(entry, given);
    expect([...errors]).toContain(error);
    expect(besides).toBe(inCells === true);
  });
});

it.each(worksheetFunctions.map((entry) => [entry.name, entry] as const))(
  '%s shows no error where nothing brings one about',
  (_, entry) => {
    expect([...errorsShown(entry, {}).errors]).toEqual([]);
  },
);
