import { createRequire } from 'node:module';
import type * as Presets from '@univerjs/presets';
import type * as Sheets from '@univerjs/preset-sheets-node-core';

// The packages' import form fails in Node on a dependency that only offers named exports to require.
const require = createRequire(import.meta.url);

const presets = require('@univerjs/presets') as typeof Presets;
const sheets = require('@univerjs/preset-sheets-node-core') as typeof Sheets;

/** Of the spreadsheet's own packages. */
export const { CellValueType, Univer, LocaleType, UniverInstanceType, ObjectMatrix } = presets;
/** Of the packages of its formulas. */
export const {
  ArrayValueObject,
  AstTreeBuilder,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  ICalculateFormulaService,
  IFunctionService,
  Interpreter,
  Lexer,
  LexerNode,
  NumberValueObject,
  StringValueObject,
  UniverFormulaEnginePlugin,
  UniverSheetsPlugin,
} = sheets;
export type { Univer as UniverInstance } from '@univerjs/presets';
export type { ICalculateFormulaService as CalculateFormulaService } from '@univerjs/preset-sheets-node-core';
