export { CellValueType } from '@univerjs/presets';
export {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/presets/preset-sheets-core';
