import { tokensOf } from '../../spreadsheet/tokens';

const CALL = /^(?:_xldudf_)?WASH[._](.+)$/i;
// A quick look that spares most formulas the taking apart.
const MAY_CALL = /(?:_xldudf_WASH[._]|\bWASH\.)/i;

/**
 * The worksheet function that a called name stands for.
 * @param called as typed, `WASH.WATER`, or as stored, `_xldudf_WASH_WATER`
 * @returns for example `WATER`; undefined for any other function
 */
export function washdownName(called: string): string | undefined {
  const stored = called.toLowerCase().startsWith('_xldudf_');
  if (!stored && !called.toUpperCase().startsWith('WASH.')) return undefined;
  return CALL.exec(called)?.[1]?.toUpperCase();
}

/**
 * Whether a formula calls a Washdown function.
 * @param formula with or without `=`
 * @returns true where it does, in the typed or in the stored form
 */
export function callsWashdown(formula: string): boolean {
  return (
    MAY_CALL.test(formula) &&
    tokensOf(formula).some(({ kind, text }) => kind === 'call' && washdownName(text) !== undefined)
  );
}

/**
 * A formula as a person reads it.
 * @param formula in either form
 * @returns with `WASH.WATER(` in place of `_xldudf_WASH_WATER(`
 */
export function readable(formula: string): string {
  return tokensOf(formula)
    .map(({ kind, text }) => {
      const name = kind === 'call' ? washdownName(text) : undefined;
      return name === undefined ? text : `WASH.${name}`;
    })
    .join('');
}
