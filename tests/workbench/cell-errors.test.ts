import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/quantity/cell';
import { isErrorText, valueOf } from '../../src/review/audit/outcome';
import { tokensOf } from '../../src/spreadsheet/tokens';
import { fromCellData } from '../../workbench/engine/engine-values';
import { valueOf as filedValueOf } from '../../workbench/page/files/cell-xml';
import { valueParts } from '../../workbench/xlsx/write-cells';

// The texts that cells in error show, by the platform's documentation.
const ERRORS = [
  ['#NULL!', '#DIV/0!', '#VALUE!', '#REF!', '#NAME?', '#NUM!', '#N/A', '#GETTING_DATA', '#SPILL!', '#CALC!'],
  ['#FIELD!', '#BLOCKED!', '#CONNECT!', '#BUSY!', '#UNKNOWN!', '#PYTHON!'],
].flat();
const TEXTS = ['#EAST', '#EAST!', '#A', '#A/A', '#1', '#', 'N/A', '#REF', '#VALUE', '#BUSY?'];

describe('core, audit, page and files agree', () => {
  it.each(ERRORS)('that %s is an error', (text) => {
    expect(readCell(text)).toEqual({ type: 'error', value: text });
    expect(isErrorText(text)).toBe(true);
    expect(valueOf(text)).toEqual({ error: text, message: '' });
    expect(tokensOf(`IFERROR(${text},1)`)[2]).toEqual({ kind: 'error', text });
    expect(fromCellData({ v: text })).toEqual({ error: text });
    expect(filedValueOf(text)).toEqual({ error: text });
    expect(valueParts(filedValueOf(text)).type).toBe('e');
  });

  it.each(TEXTS)('that %s is a text', (text) => {
    expect(readCell(text).type).toBe('text');
    expect(isErrorText(text)).toBe(false);
    expect(valueOf(text)).toBe(text);
    expect(tokensOf(text).some(({ kind }) => kind === 'error')).toBe(false);
    expect(fromCellData({ v: text })).toBe(text);
    expect(filedValueOf(text)).toBe(text);
    expect(valueParts(filedValueOf(text)).type).toBe('str');
  });
});
