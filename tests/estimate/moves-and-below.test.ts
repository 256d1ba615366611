import { describe, expect, it } from 'vitest';
import { estimateOf, type Lines, type MadeRow } from '../core/made';

const factors: Lines = [
  ['team.size', 2],
  ['working.share', 1],
  ['access.dropWidth', 20],
  ['access.lift', 20],
  ['access.ground', 8],
  ['access.move', 20],
  ['access.groundMove', 3],
  ['below.interval', 10],
  ['below.water', 0.5],
  ['reclean.share', 0],
];
const moves = (rows: readonly MadeRow[]): number => estimateOf(rows, factors).totals.moveHours;

describe('moves', () => {
  // Hours of two persons for 400 ft2, a position of 20 by 20 ft.
  it.each<[string, MadeRow[], number]>([
    ['a wall within reach of the ground', [{ area: 400, height: 8 }], 3],
    ['a wall of 20 ft, of which 12 are above reach', [{ area: 400, height: 20 }], 3 + 17 * 0.6],
    ['a wall without a height, as high as a lift', [{ area: 400 }], 3 + 17 * 0.6],
    ['two positions', [{ area: 800, height: 8 }], 6],
    ['half a position', [{ area: 200, height: 8 }], 1.5],
  ])('%s', (_, rows, minutes) => {
    expect(moves(rows)).toBeCloseTo((minutes * 2) / 60, 9);
  });

  it('count the height of the levels below, masked rows too', () => {
    const upper: MadeRow = { area: 400, height: 8, level: 1 };
    const below: MadeRow[] = [
      { area: 60, height: 3, level: 2, mask: 'only' },
      { area: 60, height: 6, level: 2, mask: 'only' },
    ];
    // It stands on 6 ft: 6 of its 8 ft are above reach.
    expect(moves([upper, ...below])).toBeCloseTo(((3 + 17 * 0.75) * 2) / 60, 9);
  });
});

describe('what lies below', () => {
  const upper: MadeRow = { area: 400, height: 8, level: 1 };
  const wateredBy = (below: readonly MadeRow[]): number => {
    const job = estimateOf([upper, ...below], factors);
    const first = job.zones[0]?.washed.find(({ row }) => row.row === 2)?.how;
    // Wettings: the team's time on an area by 10 min, each of 0.5 L/m2 of strip.
    const wettings = (first?.cycle?.time ?? NaN) / 10;
    return (first?.belowWater ?? NaN) / (wettings * 0.5 * 0.09290304);
  };

  it.each<[string, MadeRow[], number]>([
    ['nothing', [], 0],
    ['a drop of 20 ft by 5 ft', [{ area: 500, height: 5, level: 2 }], 100],
    ['no more masonry than there is', [{ area: 30, height: 5, level: 2 }], 30],
    // prettier-ignore
    ['level by level', [{ area: 500, height: 5, level: 2 }, { area: 40, height: 10, level: 3 }], 140],
    // prettier-ignore
    ['the greatest height of a level', [{ area: 500, height: 5, level: 2 }, { area: 500, height: 7, level: 2 }], 140],
    ['no glass', [{ area: 500, height: 5, level: 2, material: 'Plain glass' }], 0],
    ['what is masked and washed afterwards as well', [{ area: 500, height: 5, level: 2, mask: 'yes' }], 100],
    ['nothing that stays unwashed', [{ area: 500, height: 5, level: 2, mask: 'only' }], 0],
    [
      'nothing beside or above',
      [
        { area: 500, height: 5, level: 1 },
        { area: 500, height: 5 },
      ],
      0,
    ],
  ])('%s is kept wet', (_, below, strip) => {
    expect(wateredBy(below)).toBeCloseTo(strip, 9);
  });
});
