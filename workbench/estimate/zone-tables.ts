import type { Bundle } from '../engine/bundle';
import { callFunction, type Argument } from '../engine/call';
import type { FormulaResult } from '../engine/recalculate';
import { soleCall } from '../engine/washdown-names';
import type { CellValue } from '../xlsx/cell-value';

const WHOLE_ESTIMATE = 'SCHEDULE';

function fromSheets(washdown: readonly FormulaResult[]): CellValue[][][] {
  return washdown.flatMap(({ formula, result }) =>
    soleCall(formula) === WHOLE_ESTIMATE && Array.isArray(result) ? [result] : [],
  );
}

function askedAgain(washdown: readonly FormulaResult[], bundle: Bundle): CellValue[][][] {
  const schedule = bundle.get(WHOLE_ESTIMATE);
  const wanted = ['walls', 'factors', 'headings'];
  const asked = new Map<string, CellValue[][]>();
  for (const { id, args } of washdown.flatMap(({ calls }) => calls)) {
    const parameters = bundle.get(id)?.metadata.parameters ?? [];
    if (!schedule || args.length === 0 || !parameters.some(({ name }) => name === 'walls')) continue;
    const given = schedule.metadata.parameters.map(({ name }) => {
      const place = wanted.includes(name) ? parameters.findIndex((each) => each.name === name) : -1;
      return (args[place] ?? undefined) as Argument;
    });
    const key = JSON.stringify(given);
    if (asked.has(key)) continue;
    const { result } = callFunction(schedule, given);
    if (Array.isArray(result)) asked.set(key, result);
  }
  return [...asked.values()];
}

/**
 * The estimate a zone: what the workbook's own SCHEDULE formulas give, or, where it has none, what SCHEDULE gives for
 * the walls that its other formulas read.
 * @param washdown the recalculated formulas
 * @param bundle the built functions
 * @returns a grid with a header row for each set of walls
 */
export function zoneTables(washdown: readonly FormulaResult[], bundle: Bundle): CellValue[][][] {
  const own = fromSheets(washdown);
  return own.length > 0 ? own : askedAgain(washdown, bundle);
}
