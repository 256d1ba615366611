import { referenceParts } from '../../src/spreadsheet/reference';
import { areaAddress, parseArea, type Area } from '../xlsx/address';

const STORED =
  /(?:_xlfn\.)?ANCHORARRAY\(\s*((?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d{1,7})\s*\)/giu;
const TYPED =
  /((?:'(?:[^']|'')+'|(?<![\p{L}\p{N}_.])[\p{L}_][\p{L}\p{N}_.]*)!)?(?<![\p{L}\p{N}_.$])(\$?[A-Z]{1,3}\$?\d{1,7})#/giu;

/**
 * Replaces references to a whole spill (`A1#`) by the range that it fills: the engine does not know them.
 * @param formula without `=`
 * @param sheet the sheet of the formula
 * @param areaOf what the formula in a cell fills at present, undefined where it does not spill
 * @returns the formula with plain ranges
 */
export function withoutSpillReferences(
  formula: string,
  sheet: string,
  areaOf: (sheet: string, address: string) => Area | undefined,
): string {
  const replace = (_: string, prefix: string | undefined, address: string): string => {
    const { sheet: named = sheet } = referenceParts(prefix ?? '');
    const plain = areaAddress(parseArea(address));
    const area = areaOf(named, plain);
    return (prefix ?? '') + (area ? areaAddress(area) : plain);
  };
  return formula.replace(STORED, replace).replace(TYPED, replace);
}
