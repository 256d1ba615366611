import { expect, it } from 'vitest';
import { column, number, spill } from '../functions/call';

const HEADINGS = ['Wall', 'Material', 'Area', 'Height', 'Openings', 'Fixtures', 'Residue', 'Masked'];

function shares(rows: readonly unknown[][]): number[] {
  const walls = [HEADINGS, ...rows];
  const hours = column(spill('WALLROWS', walls), 'Set-up hours') as number[];
  const zone = number('CREWHOURS', walls, null, null, 'setup');
  return hours.map((value) => value / zone);
}

it('what belongs to a zone is shared out by washed area, whatever is masked', () => {
  // 100 ft2 washed, and 400 less 100 of openings; the fixtures put most of the masking on the first row.
  const [first, second] = shares([
    ['A', 'Red clay brick', 100, 10, 0, 200, 'light', ''],
    ['B', 'Red clay brick', 400, 10, 100, 0, 'light', ''],
  ]);
  expect(first).toBeCloseTo(0.25, 12);
  expect(second).toBeCloseTo(0.75, 12);
});

it('by masked area where nothing is washed', () => {
  // Edges of 2 * (10 + 10) and 2 * (30 + 10) ft with 0.5 ft of lap: 100 + 20 and 300 + 40 ft2.
  const [first, second] = shares([
    ['A', 'Red clay brick', 100, 10, 0, 0, '', 'yes'],
    ['B', 'Red clay brick', 300, 10, 0, 0, '', 'yes'],
  ]);
  expect(first).toBeCloseTo(120 / 460, 12);
  expect(second).toBeCloseTo(340 / 460, 12);
});

it('in equal parts where there is neither', () => {
  const walls = [
    HEADINGS,
    ['A', 'Red clay brick', 0, 10, 0, 0, '', ''],
    ['B', 'Red clay brick', 0, 10, 0, 0, '', ''],
    ['C', 'Red clay brick', 0, 10, 0, 0, '', ''],
  ];
  const spilled = spill('TRACE', 'set-up hours', walls, null, null, null, 'B');
  const at = column(spilled, 'Symbol').indexOf('share_r3');
  expect(column(spilled, 'Expression')[at]).toBe('1 / 3');
  expect(column(spilled, 'Value')[at]).toBeCloseTo(1 / 3, 12);
  expect(column(spill('WALLROWS', walls), 'Crew-hours')).toEqual([0, 0, 0]);
});
