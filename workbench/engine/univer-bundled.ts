// The packages' import form, of which a bundle holds what is used; see univer.ts for why Node takes the other one.
export { CellValueType, Univer, LocaleType, UniverInstanceType, ObjectMatrix } from '@univerjs/presets';
export {
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
} from '@univerjs/preset-sheets-node-core';
export type { Univer as UniverInstance } from '@univerjs/presets';
export type { ICalculateFormulaService as CalculateFormulaService } from '@univerjs/preset-sheets-node-core';
