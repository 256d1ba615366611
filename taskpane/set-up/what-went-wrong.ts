import { errorCode } from '../../src/spreadsheet/cell-error';
import { WashdownError } from '../../src/quantity/problem';
import { parseAddress, areaAddress, cellAddress } from '../../src/spreadsheet/address';
import { areaUnder } from '../workbook/block-area';
import { readSource, type WallSource } from '../shared/wall-source';
import type { Block, Formula, WorkbookPort } from '../workbook/port';
import { functionNamed } from '../shared/job-summary';

// A cell that is not worked out yet shows an error too.
const NOT_YET = ['#BUSY!', '#GETTING_DATA'];
const NAMED = /^=WASH\.(\w+)\(/;
const REASONS: Readonly<Record<string, string>> = {
  '#NAME?': 'The workbook does not know the functions of Washdown: is the add-in loaded here?',
  '#SPILL!': 'The cells that the result fills are not empty.',
};

/**
 * What is wrong with formulas that were just written: a cell that shows an error says here why.
 * @param port the workbook
 * @param source where walls, factors and headings stand
 * @param block what was written
 * @param zoneOf the zone that each row asks for; empty for the whole job
 * @returns a sentence; undefined where all is well
 */
export async function whatWentWrong(
  port: WorkbookPort,
  source: WallSource,
  block: Block,
  zoneOf: (row: number) => string,
): Promise<string | undefined> {
  const [{ worksheetFunctions }, ranges, shown] = await Promise.all([
    import('../../functions/worksheet-functions'),
    readSource(port, source),
    port.readRange({ sheet: block.sheet, address: areaAddress(areaUnder(block)) }),
  ]);
  const { top = 1, left = 1 } = parseAddress(block.address) ?? {};
  for (const [row, contents] of block.rows.entries()) {
    for (const [column, content] of contents.entries()) {
      const name = nameIn(content);
      if (name === undefined) continue;
      const cell = cellAddress(top + row, left + column);
      const text = String(shown[row]?.[column] ?? '');
      const code = errorCode(text) !== undefined && !NOT_YET.includes(text) ? text : undefined;
      const given: Readonly<Record<string, unknown>> = { ...ranges, zone: zoneOf(row) };
      const reason = reasonOf(() =>
        worksheetFunctions
          .find((each) => each.name === name)
          ?.run(functionNamed(name).parameters.map((parameter) => given[parameter.name] ?? null)),
      );
      if (reason !== undefined)
        return `${cell} is an error${code === undefined ? '' : `, ${code}`}. ${reason}`;
      if (code !== undefined)
        return `${cell} is an error, ${code}. ${REASONS[code] ?? 'Select the cell to see why.'}`;
    }
  }
  return undefined;
}

function nameIn(content: string | number | boolean | Formula): string | undefined {
  return typeof content === 'object' ? NAMED.exec(content.formula)?.[1] : undefined;
}

function reasonOf(run: () => unknown): string | undefined {
  try {
    run();
    return undefined;
  } catch (error) {
    if (error instanceof WashdownError) return error.message;
    throw error;
  }
}
