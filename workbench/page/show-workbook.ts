import type { Spreadsheet } from './spreadsheet';
import {
  ICommandService,
  IUniverInstanceService,
  LifecycleService,
  LifecycleStages,
  type FUniver,
  type Univer,
} from '@univerjs/presets';
import {
  SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
  SetDefinedNameMutation,
  type FWorkbook,
} from '@univerjs/presets/preset-sheets-core';
import type { ShownWorkbook } from './files/shown-workbook';
import type { Cells } from './cells';
import { copyAtOnce } from './copy-at-once';
import { growTables } from './grow-tables';
import { keepValues } from './keep-values';
import { keepWhatIsTyped } from './keep-what-is-typed';
import { plainNumbersInText } from './plain-numbers-in-text';
import { ROOM } from './room';
import { readTableNames } from './table-names';
import { addTable, tablesOf } from './tables';
import { areaOf } from '../../taskpane/workbook/block-area';
import { areaAddress } from '../../src/spreadsheet/address';
import type { PageBook } from './page-book';

/** A workbook with one blank sheet. */
export const EMPTY: ShownWorkbook = {
  snapshot: {
    id: 'empty',
    name: 'Workbook',
    appVersion: '',
    locale: 'enUS' as ShownWorkbook['snapshot']['locale'],
    styles: {},
    sheetOrder: ['sheet1'],
    sheets: { sheet1: { id: 'sheet1', name: 'Sheet1', ...ROOM } },
  },
  tables: [],
  names: [],
  spills: [],
  parts: {},
};

let shown = 0;

/**
 * Shows a workbook in place of the one that is shown.
 * @param spreadsheet the spreadsheet
 * @param cells reads its cells
 * @param contents the workbook
 * @param former the workbook that goes
 * @returns the workbook in the spreadsheet, about to be worked out
 */
export async function showWorkbook(
  { univer, api }: Spreadsheet,
  cells: Cells,
  contents: ShownWorkbook,
  former?: FWorkbook,
): Promise<FWorkbook> {
  shown += 1;
  const workbook = api.createWorkbook({ ...contents.snapshot, id: `book${String(shown)}` });
  // What the engine is made of is there once it has had a workbook.
  if (shown === 1) {
    readTableNames(univer);
    keepWhatIsTyped(univer);
    copyAtOnce(univer);
    growTables(univer, api, cells);
    keepValues(univer);
    plainNumbersInText(univer);
  }
  try {
    await fill(univer, api, cells, contents, workbook);
  } catch (cause) {
    // What was shown stays.
    api.disposeUnit(workbook.getId());
    if (former) univer.__getInjector().get(IUniverInstanceService).setCurrentUnitForType(former.getId());
    throw cause;
  }
  if (former) api.disposeUnit(former.getId());
  // What fills several cells is taken up from then on only.
  await univer.__getInjector().get(LifecycleService).onStage(LifecycleStages.Rendered);
  api.getFormula().executeCalculation();
  return workbook;
}

/** Gives a workbook its names and tables. */
async function fill(
  univer: Univer,
  api: FUniver,
  cells: Cells,
  contents: ShownWorkbook,
  workbook: FWorkbook,
): Promise<void> {
  const commands = univer.__getInjector().get(ICommandService);
  for (const [index, { name, refersTo, sheet }] of contents.names.entries()) {
    const place = sheet === undefined ? null : workbook.getSheetByName(sheet);
    // The command of the menu refuses names that files may have.
    commands.syncExecuteCommand(SetDefinedNameMutation.id, {
      id: `name${String(index)}`,
      unitId: workbook.getId(),
      name,
      formulaOrRefString: refersTo,
      localSheetId: place?.getSheetId() ?? SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
    });
  }
  for (const table of contents.tables) {
    const sheet = workbook.getSheetByName(table.sheet);
    if (!sheet) continue;
    const area = areaOf(table.address);
    const [headings = []] = cells.values(sheet, { ...area, bottom: area.top });
    await addTable(api, workbook, { ...table, headings: headings.map(String) });
  }
}

/**
 * The workbook that is shown, as it is to be saved.
 * @param cells reads the cells
 * @param book the workbook
 * @param names its defined names
 * @returns the contents
 */
export function shownContents(cells: Cells, book: PageBook, names: ShownWorkbook['names']): ShownWorkbook {
  const { workbook, parts, keptNames } = book;
  return {
    snapshot: workbook.save(),
    tables: tablesOf(workbook),
    names,
    keptNames,
    spills: workbook.getSheets().flatMap((sheet) =>
      cells.spills(sheet).map(({ area, values }) => ({
        sheet: sheet.getSheetName(),
        address: areaAddress(area),
        values,
      })),
    ),
    parts: Object.fromEntries(parts),
  };
}
