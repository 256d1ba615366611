import { describe, expect, it } from 'vitest';
import { needClass, residueRules } from '../../src/govern/residue';
import type { MortarType } from '../../src/rules/mortars';
import type { Residue } from '../../src/rules/residues';
import { estimateOf, factorsOf, wallRow, type Lines, type MadeRow } from '../core/made';

const need = (made: Partial<MadeRow>, lines: Lines = []): number => {
  const factors = factorsOf(lines);
  return needClass(wallRow({ area: 60, ...made }, 0, factors), residueRules(factors));
};
const classOf = (rows: readonly Partial<MadeRow>[], lines: Lines = []): number | undefined =>
  estimateOf(
    rows.map((row) => ({ area: 60, ...row })),
    lines,
  ).zones[0]?.classToUse;

describe('class that a row needs', () => {
  // Left to the brush: 1, 0.4, 0.16, 0.06 of light 0.2, moderate 0.5, heavy 1, by effort; no more than 0.085 is enough.
  // Effort: N 1, S sqrt(1800/750) = 1.549, M sqrt(2500/750) = 1.826, O sqrt(350/750) = 0.683.
  it.each<[Residue, MortarType, number, string]>([
    ['light', 'N', 1, '0.4 x 0.2 = 0.08'],
    ['moderate', 'N', 2, '0.16 x 0.5 = 0.08'],
    ['heavy', 'N', 3, '0.06'],
    ['light', 'S', 2, '0.08 x 1.549 = 0.124 is more; 0.032 x 1.549 = 0.050'],
    ['light', 'M', 2, '0.032 x 1.826 = 0.058'],
    ['moderate', 'S', 3, '0.08 x 1.549 = 0.124 is more; 0.03 x 1.549 = 0.046'],
    ['moderate', 'M', 3, '0.03 x 1.826 = 0.055'],
    ['heavy', 'S', 3, '0.06 x 1.549 = 0.093 is more, and there is no stronger'],
    ['light', 'O', 1, '0.2 x 0.683 = 0.137 is more; 0.08 x 0.683 = 0.055'],
    ['moderate', 'O', 2, '0.2 x 0.683 is more; 0.08 x 0.683 = 0.055'],
    ['heavy', 'O', 3, '0.16 x 0.683 = 0.109 is more; 0.041'],
  ])('%s residue, Type %s: %i, for %s', (residue, mortar, worked) => {
    expect(need({ residue, mortar })).toBe(worked);
  });

  it('is that of Type N where no mortar is stated, and of the residue that brushing leads one to expect', () => {
    expect(need({ residue: 'light' })).toBe(1);
    expect(need({ brushed: true })).toBe(1);
    expect(need({ brushed: false })).toBe(2);
    expect(need({})).toBe(2);
    // Seen residue counts, and brushing no second time.
    expect(need({ residue: 'heavy', brushed: true })).toBe(3);
  });

  it('follows the values of the user', () => {
    expect(need({ residue: 'light' }, [['left.0', 0.4]])).toBe(0);
    expect(need({ residue: 'light' }, [['scrub.least', 0.05]])).toBe(2);
    expect(need({ residue: 'moderate', mortar: 'M' }, [['mortar.effortExponent', 0]])).toBe(2);
  });
});

describe('class to use in a zone', () => {
  it('is the greatest need of its rows where the ceiling allows', () => {
    expect(classOf([{ residue: 'light' }, { residue: 'moderate' }])).toBe(2);
    expect(classOf([{ residue: 'light' }, { residue: 'light' }])).toBe(1);
  });

  it('is no stronger than the ceiling, and the brush makes up for it', () => {
    const rows: MadeRow[] = [
      { area: 60, residue: 'heavy' },
      { area: 60, material: 'Limestone', residue: 'light' },
    ];
    expect(classOf(rows)).toBe(1);
    // Heavy at class 1 leaves 0.4, light 0.08 and so 0.085: (0.4 + 0.085) x 60 / 18 net hours, by 50 of 60 minutes.
    const hours = ((0.4 + 0.085) * 60) / 18 / (50 / 60);
    expect(estimateOf(rows).totals.scrubHours).toBeCloseTo(hours, 9);
  });

  it('weighs what it takes: a little heavy residue does not call for acid on a wall of light', () => {
    const rows: MadeRow[] = [
      { area: 1000, residue: 'light' },
      { area: 1, residue: 'heavy' },
    ];
    const byClass = [0, 1, 2, 3].map((of) => estimateOf(rows, [['cleaner.class', of]]).totals.laborHours);
    expect(byClass[classOf(rows) ?? NaN]).toBe(Math.min(...byClass));
  });

  it('leaves out a masked row, which has its own class afterwards', () => {
    const [zone] = estimateOf([
      { area: 60, residue: 'light' },
      { area: 60, residue: 'heavy', mask: 'yes' },
    ]).zones;
    expect(zone?.classToUse).toBe(1);
    expect(zone?.laterClasses).toEqual([3]);
  });

  it.each([
    [0, 0, 1],
    [1, 1, 0.4],
    [2, 2, 0.16],
    [3, 2, 0.16],
  ])('chosen %i on granite (ceiling 2): class %i, which leaves %d', (chosen, used, left) => {
    const [zone] = estimateOf(
      [{ area: 60, material: 'Granite', residue: 'heavy' }],
      [['cleaner.class', chosen]],
    ).zones;
    expect(zone?.classToUse).toBe(used);
    expect(zone?.totals.scrubHours).toBeCloseTo((left * 60) / 18 / (50 / 60), 9);
  });

  it('can be chosen above the need', () => {
    expect(classOf([{ residue: 'light' }], [['cleaner.class', 3]])).toBe(3);
    expect(classOf([{ residue: 'moderate' }], [['cleaner.class', 'By need']])).toBe(2);
  });
});

describe('classes of masked rows', () => {
  const field: MadeRow = { area: 500, material: 'Light clay brick', residue: 'moderate' };

  it('are no stronger than the bare rows tolerate', () => {
    const [zone] = estimateOf([field, { area: 60, residue: 'heavy', mask: 'yes' }]).zones;
    expect(zone?.governing?.ceiling).toBe(2);
    expect(zone?.laterClasses).toEqual([2]);
  });

  it('are those of each row, the strongest first, and one where a second set-up costs more than it saves', () => {
    const rows: MadeRow[] = [
      field,
      { area: 60, material: 'Limestone', residue: 'light', mask: 'yes' },
      { area: 60, residue: 'moderate', mask: 'yes' },
      { area: 60, material: 'Granite', residue: 'moderate', mask: 'yes' },
    ];
    expect(estimateOf(rows).zones[0]?.laterClasses).toEqual([2, 1]);
    const dear = estimateOf(rows, [['setup.zone', 50]]).zones[0];
    expect(dear?.laterClasses).toEqual([1]);
    // The first wash and one later.
    expect(dear?.totals.zonesetupHours).toBe(100);
  });

  it('follow their own ceilings where no bare row is left', () => {
    const [zone] = estimateOf([
      { area: 60, residue: 'heavy', mask: 'yes' },
      { area: 60, material: 'Marble', residue: 'light', mask: 'yes' },
      { area: 60, material: 'Red clay brick', mask: 'only' },
    ]).zones;
    expect(zone?.governing).toBeUndefined();
    expect(zone?.laterClasses).toEqual([3, 0]);
    expect(zone?.totals.washedArea).toBeCloseTo(120 * 0.09290304, 9);
  });
});
