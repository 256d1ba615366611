import { describe, expect, it } from 'vitest';
import { exampleWalls } from '../../taskpane/set-up/new-estimate';
import { readFactors } from '../../src/rules/read-factors';
import { readWalls } from '../../src/walls/read-walls';
import { readZones } from '../../src/walls/read-zones';
import { call, column, number, refusal, spill } from '../functions/call';

const factors = readFactors(null);
const header = ['Wall', 'Zone', 'Material', 'Area'];
const example = (label: string): unknown[] => [`Example: ${label}`, 'Z', 'Marble', 1000];
const own = ['South', 'Z', 'Red clay brick', 400];
const labels = (...rows: unknown[][]): string[] =>
  readWalls([header, ...rows], factors).map(({ wall }) => wall);
const said = (...rows: unknown[][]): unknown[][] =>
  spill('CHECKS', [header, ...rows]).filter(([check]) => check === 'example rows');

describe('an example row', () => {
  it('is left out of the job while a wall of the user is there, wherever either stands', () => {
    expect(labels(example('a'), own, example('b'))).toEqual(['South']);
    expect(labels(own, example('a'))).toEqual(['South']);
    const plain = [header, own];
    const mixed = [header, example('a'), own, example('b')];
    for (const name of ['LABORHOURS', 'WATER', 'GOVERNING', 'MASKING'])
      expect(number(name, mixed)).toBe(number(name, plain));
    expect(spill('WALLROWS', mixed)).toHaveLength(2);
    expect(readZones(mixed, factors)).toHaveLength(1);
  });

  it('is known in any case and spacing, by the colon', () => {
    expect(labels(['EXAMPLE : x', 'Z', 'Marble', 1], own)).toEqual(['South']);
    expect(labels([' example:x', 'Z', 'Marble', 1], own)).toEqual(['South']);
    for (const label of ['Example wall', 'Examples: x', 'East: example: x', 'E'])
      expect(labels([label, 'Z', 'Marble', 1], own)).toEqual([label, 'South']);
  });

  it('may hold what no wall may, and the label of another', () => {
    expect(labels(['Example: x', 'Z', 'any material', 'any area'], example('b'), example('b'), own)).toEqual([
      'South',
    ]);
  });

  it('is not counted where it is the last of its zone', () => {
    const range = [header, ['Example: x', 'Example zone', 'Marble', 100], own];
    expect(refusal(() => call('WATER', range, 'Example zone')).type).toBe('nothing');
  });
});

describe('a range of examples alone', () => {
  it('is worked out, so that a new estimate shows what it does', () => {
    expect(labels(example('a'), example('b'))).toEqual(['Example: a', 'Example: b']);
    expect(number('GOVERNING', exampleWalls('US'))).toBe(1);
    expect(spill('WALLROWS', exampleWalls('SI'), null, [['units', 'SI']])).toHaveLength(4);
  });

  it('has its cells checked', () => {
    expect(refusal(() => labels(['Example: x', 'Z', 'any material', 10])).message).toContain('any material');
    expect(refusal(() => labels(example('a'), example('a'))).message).toContain('which row 2 has already');
  });

  it('is none where a row of the user cannot be read', () => {
    const message = refusal(() => labels(example('a'), ['South', 'Z', 'any material', 10])).message;
    expect(message).toMatch(/^Row 3 \(South\), column Material/);
  });
});

describe('CHECKS', () => {
  it('says how many example rows are left out', () => {
    const [finding] = said(example('a'), own, example('b'));
    expect(finding?.slice(1, 3)).toEqual(['2 example rows left out of the job', 'Example: a; Example: b']);
    expect(said(example('a'), own)[0]?.[1]).toBe('1 example row left out of the job');
  });

  it('says where every row is an example', () => {
    expect(said(example('a'), example('b'))[0]?.[1]).toBe(
      'Every wall row is an example, 2 example rows: what is worked out is not a bid',
    );
  });

  it('names five, and says nothing where there are none', () => {
    const many = Array.from({ length: 8 }, (_, index) => example(String(index)));
    expect(said(own, ...many)[0]?.[2]).toBe(
      'Example: 0; Example: 1; Example: 2; Example: 3; Example: 4 and 3 more',
    );
    expect(said(own)).toEqual([]);
    expect(column(spill('CHECKS', [header, own]), 'Check')).not.toContain('example rows');
  });

  it('finds them by the heading of the user', () => {
    const range = [
      ['Face', 'Material', 'Area'],
      ['Example: x', 'Marble', 1],
      ['South', 'Limestone', 1],
    ];
    const found = spill('CHECKS', range, null, null, [['Wall', 'Face']]);
    expect(column(found, 'Check')).toContain('example rows');
  });
});
