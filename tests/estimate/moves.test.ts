import { describe, expect, it } from 'vitest';
import { number } from '../functions/call';

const moves = (rows: unknown[][], factors: unknown[][] = []): number =>
  number(
    'CREWHOURS',
    [['Wall', 'Zone', 'Level', 'Material', 'Area', 'Height', 'Masked'], ...rows],
    null,
    factors,
    'move',
  );
// Each position costs a crew of 2 its 20 min: 0.6667 crew-hours.
const POSITION = (2 * 20) / 60;

describe('moves along a zone', () => {
  it.each([
    ['20 ft, one position', 200, 10, 1],
    ['20.1 ft, two', 201, 10, 2],
    ['100 ft, five', 1000, 10, 5],
    ['1 ft, one', 10, 10, 1],
  ])('%s', (_, area, height, positions) => {
    expect(moves([['A', '', 1, 'Red clay brick', area, height, '']])).toBeCloseTo(positions * POSITION, 9);
  });

  it('stand levels above one another: the longest sets the length, not the sum', () => {
    // Level 1: 30 + 25 ft; level 2: 45 ft; level 3: 10 ft. 55 ft takes 3 positions; the sum, 110 ft, would take 6.
    const rows = [
      ['A', '', 1, 'Red clay brick', 300, 10, ''],
      ['B', '', 2, 'Red clay brick', 450, 10, ''],
      ['C', '', 1, 'Limestone', 50, 2, ''],
      ['D', '', 3, 'Limestone', 20, 2, ''],
    ];
    expect(moves(rows)).toBeCloseTo(3 * POSITION, 9);
    expect(moves(rows.toReversed())).toBeCloseTo(3 * POSITION, 9);
  });

  it('count masked rows: masking is put up from the same positions', () => {
    // 30 ft washed beside 30 ft masked on one level.
    const rows = [
      ['A', '', 1, 'Red clay brick', 300, 10, ''],
      ['B', '', 1, 'Limestone', 300, 10, 'yes'],
    ];
    expect(moves(rows)).toBeCloseTo(3 * POSITION, 9);
  });

  it('leave out a row without a height', () => {
    expect(moves([['A', '', 1, 'Red clay brick', 300, '', '']])).toBe(0);
  });

  it('are counted by zone', () => {
    // 30 ft each: two positions each, four in the job; one wall of 60 ft would take three.
    const rows = [
      ['A', 'North', 1, 'Red clay brick', 300, 10, ''],
      ['B', 'South', 1, 'Red clay brick', 300, 10, ''],
    ];
    expect(moves(rows)).toBeCloseTo(4 * POSITION, 9);
  });

  it('follow drop width, time of a move and crew', () => {
    const factors = [
      ['access.dropWidth', 8],
      ['access.move', 30],
      ['crew', 3],
    ];
    // 30 ft at 8 ft: 4 positions of half an hour for 3 persons.
    expect(moves([['A', '', 1, 'Red clay brick', 300, 10, '']], factors)).toBeCloseTo(4 * 0.5 * 3, 9);
  });
});
