import { checksFunction } from './checks';
import { classFunction, governingFunction, governorFunction } from './governing';
import { quantityFunctions } from './quantity-functions';
import { scheduleFunction, wallRowsFunction } from './spills';
import { factorsFunction, materialsFunction, sourcesFunction } from './tables';
import { traceFunction } from './trace';
import type { WorksheetFunction } from './worksheet-function';

/** The one list of the worksheet functions: it feeds functions.json, the README and the pane's help. */
export const worksheetFunctions: readonly WorksheetFunction[] = [
  classFunction,
  governingFunction,
  governorFunction,
  ...quantityFunctions,
  scheduleFunction,
  wallRowsFunction,
  traceFunction,
  checksFunction,
  factorsFunction,
  materialsFunction,
  sourcesFunction,
];

/**
 * The list as the host's metadata file functions.json has it.
 * @returns the object to write as JSON
 */
export function metadata(): object {
  return {
    functions: worksheetFunctions.map(({ name, description, parameters, result }) => ({
      id: name,
      name,
      description,
      parameters: parameters.map(
        ({ name: parameter, description: says, type, dimensionality, optional }) => ({
          name: parameter,
          description: says,
          type,
          dimensionality,
          ...(optional ? { optional } : {}),
        }),
      ),
      result: { type: 'any', dimensionality: result },
    })),
  };
}
