import { describe, expect, it } from 'vitest';
import { readFactors } from '../../src/rules/read-factors';
import { readRanges } from '../../src/rules/read-ranges';
import { factors, type Factor } from '../../src/rules/factors';
import { call, column, number, refusal, spill } from '../functions/call';

const percentCell = (basicValue: number, numberFormat = '0%'): unknown => ({
  type: 'FormattedNumber',
  basicType: 'Double',
  basicValue,
  numberFormat,
});
const overhead = (cell: unknown): number => readFactors([['price.overhead', cell]]).value('price.overhead');
const refused = (id: string, cell: unknown): string => refusal(() => readFactors([[id, cell]])).message;
const percents = factors.filter((row: Factor) => row.kind === 'percent').map(({ id }) => id);

describe('a factor in %', () => {
  it.each<[unknown, number]>([
    [10, 0.1],
    ['10 %', 0.1],
    ['10%', 0.1],
    [percentCell(0.1), 0.1],
    [percentCell(0.07, '0.00%'), 0.07],
    ['0.5%', 0.005],
    ['.5 %', 0.005],
    [percentCell(0.005), 0.005],
    [0, 0],
    ['', 0],
    ['0%', 0],
    [1, 0.01],
    [300, 3],
    ['300%', 3],
  ])('reads %j as the share %d', (cell, share) => {
    expect(overhead(cell)).toBe(share);
  });

  it.each([0.1, 0.999, 1e-9])('refuses %d with both readings', (cell) => {
    const ofCell = { 0.1: '10', 0.999: '99.9', 1e-9: '1e-7' }[cell] ?? '';
    expect(refused('price.overhead', cell)).toBe(
      `Row 1 (price.overhead), column value: ${String(cell)} cannot be used. Accepted: a number from 0 to 300%; ${String(cell)} may be ${ofCell}% in a percent cell, or ${String(cell)}%: type '${ofCell}% or '${String(cell)}%, with the apostrophe in front.`,
    );
  });

  it.each([
    [1, '100'],
    [1.2, '120'],
    [3, '300'],
  ])('refuses a percent cell of %d, which a formula takes for a hundredth of it', (cell, shown) => {
    expect(overhead(cell)).toBe(cell / 100);
    expect(refused('price.overhead', percentCell(cell))).toContain(
      `${String(cell)} may be ${shown}% in a percent cell, or ${String(cell)}%: type '${shown}%`,
    );
  });

  it('offers what is read in the cell as it is: the apostrophe makes a text, also in a percent cell', () => {
    const [, ...offered] = /type '(\S+) or '(\S+), with/.exec(refused('price.overhead', 0.1)) ?? [];
    expect(offered.map(overhead)).toEqual([0.1, 0.001]);
  });

  it.each(percents)('%s refuses 0.1, and takes it as a text or in a percent cell', (id) => {
    expect(refused(id, 0.1)).toContain('may be 10% in a percent cell, or 0.1%');
    expect(readFactors([[id, '0.1%']]).value(id)).toBeCloseTo(0.001, 15);
    expect(readFactors([[id, percentCell(0.1)]]).value(id)).toBe(0.1);
  });

  it('counts the humidity of the air', () => {
    expect(percents).toContain('weather.humidity');
  });

  it.each<[unknown, string]>([
    ['-5%', '"-5%" (a number stored as text)'],
    [percentCell(-0.05), '-5% (a percent cell)'],
    [percentCell(10), '1000% (a percent cell)'],
    ['301%', '"301%" (a number stored as text)'],
    ['12,5%', '"12,5%" (a number stored as text)'],
    ['10', '"10" (a number stored as text)'],
    ['ten %', '"ten %"'],
  ])('refuses %j as any other number out of range', (cell, seen) => {
    expect(refused('price.overhead', cell)).toBe(
      `Row 1 (price.overhead), column value: ${seen} cannot be used. Accepted: a number from 0 to 300%.`,
    );
  });

  it('is a plain number where its format shows a literal sign', () => {
    for (const format of ['0"%"', '0\\%'])
      expect(refused('price.overhead', percentCell(0.1, format))).toContain('may be 10%');
  });
});

describe('a share of 1', () => {
  it.each(['working.share', 'prewet.fieldShare'] as const)('is no percent: %s', (id) => {
    expect(readFactors([[id, 0.6]]).value(id)).toBe(0.6);
    expect(readFactors([[id, percentCell(0.6)]]).value(id)).toBe(0.6);
    expect(refused(id, '60%')).toMatch(/Accepted: a number from 0(\.1)? to 1\.$/);
  });
});

describe('a range of a factor in %', () => {
  it('refuses numbers between 0 and 1 in each of its columns', () => {
    expect(refusal(() => readRanges([['price.overhead', 0.05, 0.1, 0.15]], 'US')).message).toMatch(
      /column low: 0\.05 cannot be used\..* 5% in a percent cell.* 2 more problems were found\.$/,
    );
    const [range] = readRanges([['price.overhead', '5%', percentCell(0.1), 15]], 'US');
    expect(range).toEqual({ id: 'price.overhead', low: 0.05, likely: 0.1, high: 0.15 });
  });
});

describe('the bid', () => {
  const walls = [
    ['Wall', 'Material', 'Area', 'Height'],
    ['South', 'Red clay brick', 19790, 20],
  ];
  const bid = (cell: unknown): number =>
    number('BIDPRICE', walls, null, [
      ['price.labor', 50],
      ['price.overhead', cell],
    ]);

  it('is the same for 10, the text 10% and a cell of 10%, and a tenth more than without', () => {
    expect(bid('10%')).toBe(bid(10));
    expect(bid(percentCell(0.1))).toBe(bid(10));
    // Rounded to cents at both ends.
    expect(Math.abs(bid(10) - 1.1 * bid(0))).toBeLessThan(0.02);
    expect(() => bid(0.1)).toThrow('10% in a percent cell');
  });
});

describe('FACTORS', () => {
  it('spills a percent below 1 so that it is read as the same where it is fed back', () => {
    const spilled = spill('FACTORS', [['price.overhead', '0.5%']]);
    const place = column(spilled, 'Factor').indexOf('price.overhead');
    expect(column(spilled, 'Value')[place]).toBe('0.5%');
    expect(readFactors(spilled).value('price.overhead')).toBe(0.005);
  });
});

describe('DRYING', () => {
  it('takes the humidity as a fraction of 1, in a percent cell or not', () => {
    const drying = (humidity: unknown): unknown => call('DRYING', 80, 80, humidity, 10);
    expect(drying(percentCell(0.4))).toEqual(drying(0.4));
    expect(() => drying(0.004)).not.toThrow();
    expect(refusal(() => drying(40)).message).toBe(
      'The humidity cannot be 40. Accepted: a number from 0 to 1.',
    );
  });
});
