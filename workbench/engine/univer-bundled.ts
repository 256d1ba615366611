// The packages' import form, of which a bundle holds what is used; see univer.ts for why Node takes the other one.
export { CellValueType, Univer, LocaleType, UniverInstanceType, ObjectMatrix } from '@univerjs/presets';
export {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  ICalculateFormulaService,
  IDefinedNamesService,
  IFunctionService,
  NumberValueObject,
  StringValueObject,
  UniverFormulaEnginePlugin,
  UniverSheetsPlugin,
} from '@univerjs/preset-sheets-node-core';
export type { Univer as UniverInstance } from '@univerjs/presets';
