import { describe, expect, it } from 'vitest';
import { maskOptions, type MaskOption } from '../../../src/estimate/options';
import { readFactors } from '../../../src/rules/read-factors';
import { readWalls } from '../../../src/walls/read-walls';
import { zonesOf } from '../../../src/walls/zones';
import { ladderOutcome, rungCondition, rungMarks, rungName } from '../../../taskpane/decisions/ladder-words';
import { number } from '../../functions/call';

const HEADINGS = ['Wall', 'Zone', 'Material', 'Area', 'Height', 'Residue', 'Masked'];
const brick = ['F-1', 'Front', 'Red clay brick', 800, 20, 'moderate', ''];
const limestone = ['F-2', 'Front', 'Limestone', 60, 3, 'light', ''];
const castStone = ['F-3', 'Front', 'Cast stone', 40, 1, 'light', 'never'];

function ladderOf(rows: readonly unknown[][], range: readonly unknown[][] = []): [MaskOption[], string] {
  const factors = readFactors(range);
  const [zone] = zonesOf(readWalls([HEADINGS, ...rows], factors));
  if (!zone) throw new Error('There is no zone.');
  const options = maskOptions(zone, factors);
  return [options, ladderOutcome(options, factors)];
}

const hours = (rows: readonly unknown[][]): number => number('CREWHOURS', [HEADINGS, ...rows], '', []);
const threeDigits = (value: number): string => String(Number(value.toPrecision(3)));

describe('the ladder in words', () => {
  it('says of each rung its class, what must be masked or why it cannot be had, and its marks', () => {
    const [options] = ladderOf([brick, limestone, castStone]);
    expect(options.map(rungName)).toEqual([
      'Class 0, clear water',
      'Class 1, neutral detergent',
      'Class 2, buffered mild acid',
      'Class 3, buffered acid at full label strength',
    ]);
    expect(options.map((option) => rungCondition(option, 'US'))).toEqual([
      'Nothing more to mask.',
      'Nothing more to mask.',
      'To mask: F-2; 60 ft² stays unwashed.',
      'Not feasible: cannot be masked: F-3 (Cast stone).',
    ]);
    const factors = readFactors([]);
    expect(options.map((option) => rungMarks(option, factors).map(({ word }) => word))).toEqual([
      [],
      ['as it stands'],
      ['fewest crew-hours'],
      [],
    ]);
    const priced = readFactors([['price.labour', 55]]);
    expect(options.flatMap((option) => rungMarks(option, priced)).map(({ word }) => word)).toEqual([
      'as it stands',
      'cheapest',
    ]);
  });

  it('says what the best rung saves against the zone as it stands', () => {
    const [, outcome] = ladderOf([brick, limestone, castStone]);
    const best = hours([brick, [...limestone.slice(0, 6), 'yes'], castStone]);
    const saved = hours([brick, limestone, castStone]) - best;
    expect(outcome).toBe(
      `Fewest crew-hours: class 2 with F-2 masked (60 ft² not washed), ${threeDigits(best)} crew-hours; ${threeDigits(saved)} crew-hours less than as it stands.`,
    );
  });

  it('prices it where labour has a price', () => {
    const [, outcome] = ladderOf([brick, limestone, castStone], [['price.labour', 55]]);
    // Labour alone is priced.
    const best = 55 * hours([brick, [...limestone.slice(0, 6), 'yes'], castStone]);
    expect(outcome.replace(/(\d)[^\d. ](\d)/g, '$1$2')).toContain(
      `F-2 masked (60 ft² not washed), ${best.toFixed(2)}; `,
    );
  });

  it('says that the zone is best as it stands', () => {
    const [, outcome] = ladderOf([brick]);
    expect(outcome).toBe(
      `Fewest crew-hours: class 2 with nothing more masked, ${threeDigits(hours([brick]))} crew-hours, as it stands.`,
    );
  });

  it('compares with nothing where every wall is masked already', () => {
    const [options, outcome] = ladderOf([[...brick.slice(0, 6), 'yes']]);
    expect(options.map((option) => rungCondition(option, 'US'))).toEqual(
      options.map(() => 'Not feasible: nothing would be left to wash.'),
    );
    expect(outcome).toBe('No class of cleaner can be used here: see why at each.');
  });

  it('says that the zone has no value as it stands, where the cleaner dries too soon', () => {
    const hot = [
      ['weather.air', 100],
      ['weather.surface', 130],
      ['weather.humidity', 10],
      ['weather.wind', 25],
    ];
    const [, outcome] = ladderOf([brick], hot);
    expect(outcome).toMatch(/^Fewest crew-hours: class 0 .*; as it stands has no value\.$/);
  });
});
