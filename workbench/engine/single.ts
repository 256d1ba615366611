import type {
  BaseReferenceObject,
  BaseValueObject,
  FunctionVariantType,
} from '@univerjs/preset-sheets-node-core';
import { toArgument, toEngine } from './engine-values';
import { BaseFunction } from '#univer';

/** What the engine calls the function by which a file says `@`. */
export const SINGLE = 'SINGLE';

/**
 * `@`, which the engine lacks: of a range the cell in the formula's own row or column, of a result its first cell
 * (platform documentation, "Implicit intersection operator: @").
 */
export class Single extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;
  override needsReferenceObject = true;

  override calculate(variant: FunctionVariantType): FunctionVariantType {
    if (!variant.isReferenceObject()) return firstOf(variant as BaseValueObject);
    const reference = variant as BaseReferenceObject;
    const { startRow, endRow, startColumn, endColumn } = reference.getRangePosition();
    const row = startRow === endRow ? startRow : this.row;
    const column = startColumn === endColumn ? startColumn : this.column;
    const inside = row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;
    if (!inside) return toEngine({ error: '#VALUE!' });
    const cells = toArgument(reference.toArrayValueObject());
    const line = Array.isArray(cells) ? cells[row - startRow] : undefined;
    return toEngine(line?.[column - startColumn] ?? 0);
  }
}

function firstOf(value: BaseValueObject): FunctionVariantType {
  const given = toArgument(value);
  return Array.isArray(given) ? toEngine(given[0]?.[0] ?? 0) : value;
}
