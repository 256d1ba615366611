import type { Parameter } from '../../functions/worksheet-function';

/** Cells of a range. */
export type Cells = readonly (readonly (string | number)[])[];

/** Walls that use every rule of the model; invented. */
// A row a line, as on a sheet.
// prettier-ignore
export const exampleWalls: Cells = [
  ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Openings', 'Opening perimeter', 'Fixtures', 'Mortar', 'Residue', 'Brushed', 'Masked'],
  ['parapet', 'front', 1, 'Red clay brick', 300, 3, 0, 0, 0, 'S', 'heavy', 'no', 'no'],
  ['upper wall', 'front', 2, 'Dark clay brick', 1200, 12, 200, 140, 3, 'N', 'moderate', 'yes', 'no'],
  ['glazed bay', 'front', 2, 'Coated glass', 120, 12, 0, 0, 0, '', '', '', 'yes'],
  ['gate', 'front', 3, 'Galvanized steel', 64, 0, 0, 0, 0, '', '', '', 'yes'],
  ['rear wall', 'rear', 1, 'Red clay brick', 900, 10, 60, 50, 1, '', '', 'yes', 'no'],
  ['rear band', 'rear', 1, 'Ground-face block', 100, 2, 0, 0, 0, 'N', 'light', 'no', 'no'],
  ['lobby', 'lobby', 1, 'Marble', 150, 9, 0, 0, 0, 'N', 'light', 'yes', 'no'],
];

/** Without a price of labor nothing is priced. */
export const examplePrices: Cells = [
  ['price.labor', 60],
  ['price.cleaner.3', 20],
];

/** Work recorded on those walls; invented. */
export const exampleActuals: Cells = [
  ['Date', 'Zone', 'Wall', 'Task', 'Area', 'Hours', 'Water', 'Cleaner', 'Note'],
  [46143, 'front', '', 'mask', 300, 4, 0, 0, ''],
  [46144, '', 'upper wall', 'scrape', 800, 3.5, 0, 0, ''],
  [46145, '', 'upper wall', 'wash', 600, 18, 700, 4, 'hydrant slow'],
  [46146, 'rear', '', 'rinse', 400, 2, 250, 0, ''],
];

const byName: Readonly<Record<string, unknown>> = {
  quantity: 'water',
  walls: exampleWalls,
  zone: 'rear',
  factors: examplePrices,
  actuals: exampleActuals,
  before: exampleWalls,
  after: exampleWalls,
  applyRate: 10,
  rinseRate: 8,
  leastDwell: 3,
  mostDwell: 5,
  number: 10,
  pressure: 400,
  air: 68,
  surface: 68,
  humidity: 0.5,
  wind: 6,
};

/**
 * Arguments that a function can be called with.
 * @param parameters its parameters
 * @param given arguments by name, in place of those of the example
 * @returns the arguments in order
 */
export function exampleArguments(
  parameters: readonly Parameter[],
  given: Readonly<Record<string, unknown>> = {},
): unknown[] {
  return parameters.map(({ name }) => (name in given ? given[name] : byName[name]));
}
