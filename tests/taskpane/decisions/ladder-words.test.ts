import { describe, expect, it } from 'vitest';
import { maskOptions, type MaskOption } from '../../../src/estimate/options';
import { readFactors } from '../../../src/rules/read-factors';
import { readWalls } from '../../../src/walls/read-walls';
import { zonesOf } from '../../../src/walls/zones';
import { ladderOutcome, rungCondition, rungMark, rungName } from '../../../taskpane/decisions/ladder-words';
import { number } from '../../functions/call';

const HEADINGS = ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Residue', 'Masked'];
const brick = ['F-1', 'Front', 'Red clay brick', 800, 20, 'heavy', ''];
const limestone = ['F-2', 'Front', 'Limestone', 60, 3, 'light', ''];
const castStone = ['F-3', 'Front', 'Cast stone', 40, 1, 'light', 'never'];
const yard = ['Y-1', 'Yard', 'Red clay brick', 300, 9, 'light', ''];

function ladderOf(rows: readonly unknown[][], range: readonly unknown[][] = []): [MaskOption[], string] {
  const factors = readFactors(range);
  const zones = zonesOf(readWalls([HEADINGS, ...rows, yard], factors));
  const [options] = maskOptions(zones.slice(0, 1), zones, factors);
  if (!options) throw new Error('There is no zone.');
  return [options, ladderOutcome(options, factors)];
}

/** Labor-hours of the whole job, the yard with it. */
const hours = (rows: readonly unknown[][], range: unknown = []): number =>
  number('LABORHOURS', [HEADINGS, ...rows, yard], '', range);
const rounded = (value: number): string =>
  String(value >= 100 ? Math.round(value) : Number(value.toPrecision(3)));
const masked = (row: readonly unknown[]): unknown[] => [...row.slice(0, 6), 'yes'];

describe('the ladder in words', () => {
  it('says of each line its class, what is masked and washed afterwards or why it is not offered, and its mark', () => {
    const [options] = ladderOf([brick, limestone, castStone]);
    expect(options.map(rungName)).toEqual([
      'As marked',
      'Class 0, clear water',
      'Class 1, neutral detergent',
      'Class 2, buffered mild acid',
      'Class 3, buffered acid at full label strength',
    ]);
    expect(options.map(rungCondition)).toEqual([
      'Nothing masked.',
      'Nothing masked.',
      'Nothing masked.',
      'Masked: F-2; masonry washed afterwards with class 1 (neutral detergent).',
      'Not offered: cannot be masked: F-3 (Cast stone).',
    ]);
    const marks = (range: readonly unknown[][]) =>
      options.map((option) => rungMark(option, readFactors(range)));
    expect(marks([])).toEqual([undefined, undefined, undefined, 'fewest labor-hours', undefined]);
    expect(marks([['price.labor', 55]])[3]).toBe('cheapest');
  });

  it('says of glass that it is masked, and of nothing that it is washed afterwards', () => {
    const [options] = ladderOf([brick, ['F-4', 'Front', 'Coated glass', 90, 9, '', 'yes']]);
    expect(options.map(rungCondition)[0]).toBe('Masked: F-4.');
  });

  it('says what the best line saves the job against the zone as it is marked', () => {
    const [, outcome] = ladderOf([brick, limestone, castStone]);
    const best = hours([brick, masked(limestone), castStone]);
    const saved = hours([brick, limestone, castStone]) - best;
    expect(saved).toBeGreaterThan(0);
    expect(outcome).toBe(
      `Fewest labor-hours: class 2 (buffered mild acid) with F-2 masked, ${rounded(best)} labor-hours for the job; ${rounded(saved)} labor-hours less than as marked.`,
    );
  });

  it('prices it where labor has a price', () => {
    const [, outcome] = ladderOf([brick, limestone, castStone], [['price.labor', 55]]);
    // Labor alone is priced.
    const best = 55 * hours([brick, masked(limestone), castStone]);
    expect(outcome.replace(/(\d)[^\d. ](\d)/g, '$1$2')).toContain(
      `F-2 masked, ${best.toFixed(2)} for the job; `,
    );
  });

  it('says that the zone is best as it is marked', () => {
    const [, outcome] = ladderOf([brick]);
    expect(outcome).toBe(
      `Fewest labor-hours: as marked, ${rounded(hours([brick]))} labor-hours for the job.`,
    );
  });

  it('tries bare what is masked', () => {
    const [options, outcome] = ladderOf([masked(brick)]);
    expect(options.map(rungCondition)).toEqual([
      'Masked: F-1; masonry washed afterwards with class 3 (buffered acid at full label strength).',
      'Nothing masked.',
      'Nothing masked.',
      'Nothing masked.',
      'Nothing masked.',
    ]);
    expect(outcome).toMatch(
      /^Fewest labor-hours: class 0 \(clear water\) with nothing masked, .* less than as marked\.$/,
    );
  });

  it('says that no class can be used where the walls are to stay covered', () => {
    const [options] = ladderOf([[...brick.slice(0, 6), 'only']]);
    expect(options.slice(1).map(rungCondition)).toEqual(
      Array.from({ length: 4 }, () => 'Not offered: nothing bare would be left to wash.'),
    );
  });

  it('says that the zone has no value as it is marked, where its cleaner has no cycle', () => {
    // 5 min of dwell at 10 ft2/min are 50 ft2: no patch of 60 ft2 can be. Clear water has none.
    const factors = [
      ['patch.least', 60],
      ['patch.most', 60],
      ['cleaner.class', 3],
    ];
    const marble = ['F-5', 'Front', 'Marble', 30, 2, 'light', 'yes'];
    const clean = ['Y-1', 'Yard', 'Marble', 300, 9, 'light', ''];
    const inForce = readFactors(factors);
    const zones = zonesOf(readWalls([HEADINGS, brick, marble, clean], inForce));
    const [options = []] = maskOptions(zones.slice(0, 1), zones, inForce);
    expect(ladderOutcome(options, inForce)).toMatch(
      /^Fewest labor-hours: class 0 \(clear water\) with nothing masked, .*; as marked has no value\.$/,
    );
  });
});
