import { describe, expect, it } from 'vitest';
import { sheetFormula } from '../../workbench/bench/sheet-formula';

const formula = (expression: string) =>
  sheetFormula(expression, (symbol) => `<${symbol}>`).replaceAll(' ', '');

describe('an expression of the rules as a formula of a sheet', () => {
  it('keeps its arithmetic and its brackets', () => {
    expect(formula('(water# + mix#) / (1 - share)^2')).toBe('(<water$>+<mix$>)/(1-<share>)^2');
  });

  it('calls what a sheet calls', () => {
    expect(formula('min(1, max(a, sqrt(b)))')).toBe('MIN(1,MAX(<a>,SQRT(<b>)))');
    expect(formula('kind == 2 ? a : b')).toBe('IF(<kind>=2,<a>,<b>)');
  });

  it('rounds up towards the greater number, also below 0', () => {
    expect(formula('ceil(a - b)')).toBe('(-INT(-(<a>-<b>)))');
  });

  it('knows no unit, so that nothing of one is 0', () => {
    expect(formula('max(0 * dwell, dwell)')).toBe('MAX(0,<dwell>)');
  });

  it('hands on which symbols are of the line, and what stands in braces', () => {
    expect(formula('left_{class} * effort# * {limit} + price~')).toBe(
      '<left_$class>*<effort$>*<$limit>+<price$>',
    );
  });

  it('refuses a call that it does not know', () => {
    expect(() => formula('round(a, 2)')).toThrow('No formula for round');
  });
});
