import { createUniver, LocaleType, mergeLocales, type FUniver, type Univer } from '@univerjs/presets';
import { CalculationMode, FunctionType, UniverSheetsCorePreset } from '@univerjs/presets/preset-sheets-core';
import coreWords from '@univerjs/presets/preset-sheets-core/locales/en-US';
import { UniverSheetsTablePreset, UniverSheetsTableUIPlugin } from '@univerjs/presets/preset-sheets-table';
import tableWords from '@univerjs/presets/preset-sheets-table/locales/en-US';
import type { Bundle } from '../engine/bundle';
import { engineFunctions, functionDescriptions, type Reasons } from './worksheet-functions';

/** The spreadsheet on the page. */
export interface Spreadsheet {
  readonly univer: Univer;
  readonly api: FUniver;
}

/**
 * Puts the spreadsheet on the page, with the built functions beside its own.
 * @param container id of the element that it fills
 * @param bundle the built functions
 * @param reasons takes down why cells are in error
 * @returns the spreadsheet, without a workbook
 */
export function createSpreadsheet(container: string, bundle: Bundle, reasons: Reasons): Spreadsheet {
  const { univer, univerAPI } = createUniver({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, tableWords) },
    presets: [
      UniverSheetsCorePreset({
        container,
        formula: {
          // The spreadsheet's type lists its own function names only; it takes any.
          function: engineFunctions(bundle, reasons) as never,
          description: functionDescriptions(bundle, FunctionType.User),
          // Tables and names come after the cells; then everything is worked out once.
          initialFormulaComputing: CalculationMode.NO_CALCULATION,
        },
      }),
      // The sign with a table's name would cover headings that stay in view.
      {
        plugins: UniverSheetsTablePreset().plugins.map((plugin) =>
          plugin === UniverSheetsTableUIPlugin ? [UniverSheetsTableUIPlugin, { hideAnchor: true }] : plugin,
        ),
      },
    ],
  });
  return { univer, api: univerAPI };
}
