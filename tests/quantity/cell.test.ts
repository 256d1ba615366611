import { describe as group, expect, it } from 'vitest';
import { comparable, describe, isBlankOrZero, readCell } from '../../src/quantity/cell';

group('a cell', () => {
  it.each<[unknown, string]>([
    [12, 'number'],
    [0, 'number'],
    [-0.5, 'number'],
    [NaN, 'unknown'],
    [-Infinity, 'unknown'],
    [true, 'boolean'],
    ['', 'blank'],
    [' \t', 'blank'],
    [null, 'blank'],
    [undefined, 'blank'],
    ['brick', 'text'],
    ['Level 2', 'text'],
    ['2 x 4', 'text'],
    ['#1', 'text'],
    ['-', 'text'],
    ['1,200', 'number as text'],
    ['1.200.000,5', 'number as text'],
    ['12\u00a0000', 'number as text'],
    ['€ 12', 'number as text'],
    ['(12)', 'number as text'],
    ['50 %', 'number as text'],
    ['.5', 'number as text'],
    ['1e-3', 'number as text'],
    ['2025-12-31', 'date'],
    ['2025-12-31T10:00:00', 'date'],
    ['31/12/25', 'date'],
    ['#N/A', 'error'],
    ['#value!', 'error'],
    ['#SPILL!', 'error'],
    ['#GETTING_DATA', 'error'],
    ['#EAST', 'text'],
    ['#EAST!', 'text'],
    ['#A', 'text'],
    ['#N/A 2', 'text'],
    ...['BUSY!', 'CALC!', 'FIELD!', 'BLOCKED!', 'CONNECT!', 'UNKNOWN!', 'PYTHON!'].map(
      (code): [unknown, string] => [`#${code}`, 'error'],
    ),
    [{ type: 'Double', basicType: 'Double', basicValue: 3 }, 'number'],
    [{ type: 'String', basicType: 'String', basicValue: '1,5' }, 'number as text'],
    [{ type: 'Empty', basicType: 'Empty', basicValue: '' }, 'blank'],
    [{ type: 'Boolean', basicType: 'Boolean', basicValue: true }, 'boolean'],
    [{ type: 'Entity', text: 'Part', basicType: 'Error', basicValue: '#VALUE!' }, 'error'],
    [{ type: 'FormattedNumber', basicType: 'Double', basicValue: 1, numberFormat: 'd mmm' }, 'date'],
    [{ type: 'FormattedNumber', basicType: 'Double', basicValue: 1, numberFormat: '0.0' }, 'number'],
    [{}, 'unknown'],
    [{ basicValue: { nested: 1 } }, 'unknown'],
    [() => 1, 'unknown'],
    [new Date(0), 'date'],
    [Object.assign(new Error('no'), { code: '#N/A' }), 'error'],
  ])('%o is a %s', (raw, type) => {
    expect(readCell(raw).type).toBe(type);
  });

  it.each<[unknown, string]>([
    [12.5, '12.5'],
    ['brick ', '"brick"'],
    ['12,5', '"12,5" (a number stored as text)'],
    ['1/2/2025', '"1/2/2025" (a date)'],
    [new Date(Date.UTC(2025, 0, 2)), '"2025-01-02T00:00:00.000Z" (a date)'],
    [true, 'TRUE'],
    [null, 'a blank cell'],
    ['#ref!', 'the error #ref!'],
    [{ type: 'Error', basicType: 'Error', basicValue: '#NUM!' }, 'the error #NUM!'],
    [{ type: 'Error', basicType: 'Error' }, 'the error #VALUE!'],
  ])('%o is named %s', (raw, named) => {
    expect(describe(readCell(raw))).toBe(named);
  });

  it('that is blank and one that holds 0 are one', () => {
    for (const raw of [0, '', null, undefined]) expect(isBlankOrZero(readCell(raw))).toBe(true);
    for (const raw of [1, '0', false, 'x', '#N/A']) expect(isBlankOrZero(readCell(raw))).toBe(false);
  });

  it('is compared without case, spacing and form of its letters', () => {
    expect(comparable(' Red  Clay\u00a0Brick ')).toBe('redclaybrick');
    // A full-width letter, and e with an accent in two characters.
    expect(comparable('\uff32ed')).toBe('red');
    expect(comparable('Cafe\u0301')).toBe(comparable('CAF\u00c9'));
  });
});
