import { describe, expect, it } from 'vitest';
import { allChecks, findingsOf } from '../../src/review/checks';
import { acidOnConcrete, stainUnderAcid } from '../../src/review/checks/acid-on-wall';
import { ageNotStated, tooOld, tooYoung } from '../../src/review/checks/age';
import { whatLiesBelow } from '../../src/review/checks/below';
import { noContactWindow } from '../../src/review/checks/contact-window';
import { heightMissing, mortarDefault, residueForetold } from '../../src/review/checks/defaults-used';
import { factorsOverridden } from '../../src/review/checks/factors-overridden';
import { tooMuchPressure, tooMuchToApply, tooNarrowJet } from '../../src/review/checks/jet';
import { sampleAreaMissing } from '../../src/review/checks/sample-area';
import { strongMortar } from '../../src/review/checks/strong-mortar';
import { unmaskedGlassOrMetal } from '../../src/review/checks/unmasked-glass-or-metal';
import { heavyUnderWeakClass } from '../../src/review/checks/weak-class';
import { tooCold, tooHot, tooWindy } from '../../src/review/checks/weather';
import { zeroArea } from '../../src/review/checks/zero-area';
import type { Check } from '../../src/review/finding';
import { sources } from '../../src/rules/sources';
import { checked, wall, type Row } from './checked';

/** Walls and factors, and what a check says of them: where, and words of what. */
interface Case {
  readonly says: string;
  readonly check: Check;
  readonly rows: readonly Row[];
  readonly factors?: readonly (readonly unknown[])[];
  /** Where it stands and what it says, in order; nothing where all is well. */
  readonly found: readonly (readonly [where: string, what: string | RegExp])[];
}

const brick = wall('A');
const hot = [
  ['weather.surface', 130],
  ['weather.humidity', 10],
  ['weather.wind', 25],
];

const cases: readonly Case[] = [
  {
    says: 'a cleaner that dries before its least dwell',
    check: noContactWindow,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: hot,
    found: [
      ['South', /^No contact window: the cleaner dries after [0-9.]+ min, before its least dwell of 3 min/],
      ['North', /^No contact window/],
    ],
  },
  {
    says: 'least and most dwell that are one, at unequal rates',
    check: noContactWindow,
    rows: [brick],
    factors: [
      ['dwell.least', 5],
      ['dwell.most', 5],
    ],
    found: [['South', 'least and most dwell are both 5 min']],
  },
  { says: 'mild weather', check: noContactWindow, rows: [brick], found: [] },
  {
    says: 'clear water in any weather',
    check: noContactWindow,
    rows: [wall('A', { Material: 'Marble' })],
    factors: hot,
    found: [],
  },

  {
    says: 'masonry of less than 7 days, the youngest named',
    check: tooYoung,
    rows: [wall('A', { Age: 6 }), wall('B', { Age: 3 }), wall('C'), wall('D', { Zone: 'North', Age: 6.5 })],
    found: [
      ['South: A, B', 'Masonry 3 days old, younger than 7 days'],
      ['North: D', 'Masonry 6.5 days old'],
    ],
  },
  {
    says: 'masonry of 7 days, of no stated age, and young masonry that is masked',
    check: tooYoung,
    rows: [wall('A', { Age: 7 }), wall('B', { Age: '' }), wall('C', { Age: 2, Masked: 'yes' })],
    found: [],
  },
  {
    says: 'masonry younger than the age that the user asks for',
    check: tooYoung,
    rows: [wall('A', { Age: 10 })],
    factors: [['limit.age', 14]],
    found: [['South: A', 'younger than 14 days']],
  },

  {
    says: 'washed masonry without an age',
    check: ageNotStated,
    rows: [wall('A', { Age: '' }), wall('B'), wall('C', { Age: '', Masked: 'yes' })],
    found: [['South: A', 'Age is not stated']],
  },
  { says: 'a stated age', check: ageNotStated, rows: [brick], found: [] },

  {
    says: 'cold air and a cold face, each by itself',
    check: tooCold,
    rows: [brick],
    factors: [
      ['weather.air', 39],
      ['weather.surface', 35],
    ],
    found: [
      ['factor weather.air', 'Air at 39 °F, the coldest is 40 °F'],
      ['factor weather.surface', 'Face at 35 °F, the coldest is 40 °F'],
    ],
  },
  { says: '40 degF and above', check: tooCold, rows: [brick], factors: [['weather.air', 40]], found: [] },
  {
    says: 'cold weather where every wall is masked',
    check: tooCold,
    rows: [wall('A', { Masked: 'yes' })],
    factors: [['weather.air', 20]],
    found: [],
  },

  {
    says: 'a face of 90 degF, once for the job',
    check: tooHot,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: [['weather.surface', 90]],
    found: [['factor weather.surface', 'Face at 90 °F, no cleaner goes on at 90 °F or more']],
  },
  {
    says: 'a face below 90 degF, and a hotter one under clear water',
    check: tooHot,
    rows: [brick],
    factors: [['weather.surface', 89.5]],
    found: [],
  },
  {
    says: 'a hot face under clear water',
    check: tooHot,
    rows: [wall('A', { Material: 'Marble' })],
    factors: [['weather.surface', 120]],
    found: [],
  },

  {
    says: 'more than 10 mph of wind, once for the job',
    check: tooWindy,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: [['weather.wind', 11]],
    found: [['factor weather.wind', 'Wind of 11 mph, no cleaner is sprayed in more than 10 mph']],
  },
  { says: 'wind at the limit', check: tooWindy, rows: [brick], factors: [['weather.wind', 10]], found: [] },

  {
    says: 'masonry of more than 28 days, the oldest named',
    check: tooOld,
    rows: [wall('A', { Age: 29 }), wall('B', { Age: 60 }), wall('C', { Age: 90, Masked: 'yes' })],
    found: [['South: A, B', 'Masonry 60 days old, older than 28 days']],
  },
  { says: 'masonry of 28 days', check: tooOld, rows: [brick, wall('B', { Age: '' })], found: [] },

  {
    says: 'block, precast and cast stone under an acid, which a public specification rules out',
    check: acidOnConcrete,
    rows: [
      wall('A', { Material: 'Plain concrete block', Residue: 'moderate' }),
      wall('B', { Material: 'Cast stone', Residue: 'moderate' }),
      wall('C', { Residue: 'moderate' }),
      wall('D', { Zone: 'North', Material: 'Split-face block' }),
    ],
    found: [['South: A, B', 'Plain concrete block, Cast stone under class 2 (buffered mild acid)']],
  },
  {
    says: 'block under detergent, and granite and brick under acid',
    check: acidOnConcrete,
    rows: [
      wall('A', { Material: 'Plain concrete block' }),
      wall('B', { Zone: 'North', Residue: 'moderate' }),
      wall('C', { Zone: 'North', Material: 'Granite', Residue: 'moderate' }),
    ],
    found: [],
  },

  {
    says: 'cleaner put on with more than 50 psi, once for the job',
    check: tooMuchToApply,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: [['apply.pressure', 60]],
    found: [['factor apply.pressure', 'Cleaner put on at 60 psi, the most is 50 psi']],
  },
  {
    says: 'cleaner put on with 30 psi',
    check: tooMuchToApply,
    rows: [brick],
    factors: [['apply.pressure', 30]],
    found: [],
  },

  {
    says: 'glass and metal in the washed set',
    check: unmaskedGlassOrMetal,
    rows: [
      brick,
      wall('B', { Material: 'Coated glass' }),
      wall('C', { Material: 'Copper' }),
      wall('D', { Material: 'Plain glass', Masked: 'never' }),
    ],
    found: [['South: B, C, D', 'Coated glass, Copper, Plain glass is not masked']],
  },
  {
    says: 'masked glass, and no glass',
    check: unmaskedGlassOrMetal,
    rows: [brick, wall('B', { Material: 'Coated glass', Masked: 'yes' }), wall('C', { Material: 'Timber' })],
    found: [],
  },

  {
    says: 'more pressure than the weakest washed face takes',
    check: tooMuchPressure,
    rows: [brick, wall('B', { Material: 'Sand-faced brick' }), wall('C', { Zone: 'North' })],
    found: [['South', 'Rinsing at 400 psi, Sand-faced brick takes 200 psi']],
  },
  {
    says: 'a nozzle too near with too narrow a fan, once for the job',
    check: tooNarrowJet,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: [
      ['nozzle.distance', 5],
      ['nozzle.angle', 15],
    ],
    found: [
      ['factor nozzle.distance', 'Nozzle at 5 in, the least is 6 in'],
      ['factor nozzle.angle', 'Fan of 15°, the narrowest is 25°'],
    ],
  },
  {
    says: 'pressure at its limit, and a weak face that is masked',
    check: tooMuchPressure,
    rows: [brick, wall('B', { Material: 'Coated glass', Masked: 'yes' })],
    factors: [['nozzle.pressure', 800]],
    found: [],
  },
  {
    says: 'distance and angle at their limits',
    check: tooNarrowJet,
    rows: [brick],
    factors: [
      ['nozzle.distance', 6],
      ['nozzle.angle', 25],
    ],
    found: [],
  },

  {
    says: 'light and manganese-coloured brick under an acid',
    check: stainUnderAcid,
    rows: [
      wall('A', { Material: 'Light clay brick', Residue: 'moderate' }),
      wall('B', { Material: 'Manganese-coloured brick' }),
      wall('C', { Material: 'Granite' }),
    ],
    found: [['South: A, B', 'Light clay brick, Manganese-coloured brick under class 2 (buffered mild acid)']],
  },
  {
    says: 'light brick under detergent, under masking, and red brick under acid',
    check: stainUnderAcid,
    rows: [
      wall('A', { Material: 'Light clay brick' }),
      wall('B', { Zone: 'North', Residue: 'heavy' }),
      wall('C', { Zone: 'North', Material: 'Light clay brick', Masked: 'yes' }),
    ],
    found: [],
  },

  {
    says: 'a base of another zone that may not meet the class used above it',
    check: whatLiesBelow,
    rows: [
      wall('A', { Residue: 'heavy' }),
      wall('B', { Zone: 'Base', Level: 2, Material: 'Limestone' }),
      wall('C', { Zone: 'Base', Level: 3, Material: 'Marble', Masked: 'yes' }),
    ],
    found: [
      ['Base: B, C', 'Limestone, Marble lies lower than walls washed with class 3 in South'],
      // The limestone is washed with detergent, and the marble below it takes clear water only.
      ['Base: C', 'Marble lies lower than walls washed with class 1 in Base'],
    ],
  },
  {
    says: 'a masked base of the same zone',
    check: whatLiesBelow,
    rows: [wall('A', { Residue: 'heavy' }), wall('B', { Level: 2, Material: 'Limestone', Masked: 'yes' })],
    found: [['South: B', 'Limestone lies lower']],
  },
  {
    says: 'a base that governs its own zone, one that stands higher, one without a level, and a strong one',
    check: whatLiesBelow,
    rows: [
      wall('A', { Level: 2, Residue: 'heavy' }),
      wall('B', { Level: 3, Residue: 'light' }),
      wall('C', { Zone: 'Top', Level: 1, Material: 'Limestone' }),
      wall('D', { Zone: 'Top', Level: 2, Material: 'Limestone' }),
      wall('E', { Zone: 'Aside', Level: '', Material: 'Marble' }),
    ],
    found: [],
  },
  {
    says: 'a masked wall of no stated level that receives the rinse, at once or by way of another zone',
    check: whatLiesBelow,
    rows: [
      wall('A', { Residue: 'heavy' }),
      wall('B', { Zone: 'Mid', Level: '', Material: 'Granite', Receives: 'South' }),
      wall('C', { Zone: 'Base', Level: '', Material: 'Limestone', Masked: 'yes', Receives: 'Mid' }),
      wall('D', { Zone: 'Yard', Level: '', Material: 'Limestone', Masked: 'yes' }),
    ],
    // Granite takes class 2, so what runs over it governs South too: class 2 above class 1.
    found: [['Base: C', 'Limestone lies lower than walls washed with class 2 in South']],
  },
  {
    says: 'walls above that are masked, or washed with clear water',
    check: whatLiesBelow,
    rows: [
      wall('A', { Masked: 'yes' }),
      wall('B', { Zone: 'Lower', Level: 2, Material: 'Marble' }),
      wall('C', { Zone: 'Lower', Level: 3, Material: 'Copper' }),
    ],
    found: [],
  },

  {
    says: 'heavy residue under a class that does not take it off',
    check: heavyUnderWeakClass,
    rows: [
      wall('A', { Residue: 'heavy' }),
      wall('B', { Material: 'Limestone' }),
      wall('C', { Residue: 'moderate' }),
      wall('D', { Residue: 'heavy', Masked: 'yes' }),
    ],
    found: [['South: A', 'Heavy residue under class 1 (neutral detergent)']],
  },
  {
    says: 'heavy residue under its class',
    check: heavyUnderWeakClass,
    rows: [wall('A', { Residue: 'heavy' })],
    found: [],
  },
  {
    says: 'heavy residue under a milder class of the user',
    check: heavyUnderWeakClass,
    rows: [wall('A', { Residue: 'heavy' })],
    factors: [['cleaner.class', 2]],
    found: [['South: A', 'under class 2']],
  },

  {
    says: 'no sample area',
    check: sampleAreaMissing,
    rows: [brick],
    found: [['factor sample.area', 'No sample area has been looked at']],
  },
  {
    says: 'too small a sample area',
    check: sampleAreaMissing,
    rows: [brick],
    factors: [['sample.area', 12]],
    found: [['factor sample.area', 'The sample area is only 12 ft²']],
  },
  {
    says: 'a sample area of 20 ft2',
    check: sampleAreaMissing,
    rows: [brick],
    factors: [['sample.area', 20]],
    found: [],
  },

  {
    says: 'a labelled row without an area, masked or not',
    check: zeroArea,
    rows: [brick, wall('B', { Area: 0 }), wall('C', { Area: '', Masked: 'yes' })],
    found: [['South: B, C', 'Area is 0 or blank']],
  },
  { says: 'a small area', check: zeroArea, rows: [wall('A', { Area: 0.01 })], found: [] },

  {
    says: 'mortar of Type S or M',
    check: strongMortar,
    rows: [wall('A', { Mortar: 'S' }), wall('B', { Mortar: 'M' }), wall('C', { Mortar: 'S' }), wall('D')],
    found: [['South: A, B, C', /^Mortar Type S and M$/]],
  },
  {
    says: 'mortar of Type N or O, and none stated',
    check: strongMortar,
    rows: [brick, wall('B', { Mortar: 'O' }), wall('C', { Mortar: '' })],
    found: [],
  },

  {
    says: 'washed rows without a mortar',
    check: mortarDefault,
    rows: [wall('A', { Mortar: '' }), brick, wall('C', { Mortar: '', Masked: 'yes' })].map((row, index) => ({
      ...row,
      Wall: `W${String(index)}`,
    })),
    found: [['South: W0', 'Type N is taken']],
  },
  { says: 'a stated mortar', check: mortarDefault, rows: [brick], found: [] },

  {
    says: 'washed rows without a residue',
    check: residueForetold,
    rows: [wall('A', { Residue: '' }), wall('B'), wall('C', { Residue: '', Masked: 'yes' })],
    found: [['South: A', 'Residue is not stated']],
  },
  { says: 'a stated residue', check: residueForetold, rows: [brick], found: [] },

  {
    says: 'rows without a height, masked ones too',
    check: heightMissing,
    rows: [wall('A', { Height: '' }), wall('B'), wall('C', { Height: 0, Masked: 'yes' })],
    found: [['South: A, C', 'Height is not stated']],
  },
  { says: 'a stated height', check: heightMissing, rows: [brick], found: [] },

  {
    says: "the user's own factors, materials and class",
    check: factorsOverridden,
    rows: [brick],
    factors: [
      ['crew', 4],
      ['nozzle.number', 12],
      ['nozzle.distance', 18],
      ['material.limestone.ceiling', 0],
      ['material.limestone.pressure', 500],
      ['material.Own stone.ceiling', 2],
      ['material.Own stone.suction', 9],
      ['material.Own stone.pressure', 700],
      ['cleaner.class', 1],
    ],
    found: [
      ['factor crew', /^crew is 4 persons; the starting value is 2 persons$/],
      ['factor nozzle.number', /^nozzle\.number is 12; the starting value is 10$/],
      ['factor nozzle.distance', /^nozzle\.distance is 18 in; the starting value is 12 in$/],
      ['material limestone', /^Limestone: ceiling 0, pressure 500 psi$/],
      ['material Own stone', /^Own stone: ceiling 2, suction 9 g\/30in², pressure 700 psi$/],
      ['factor cleaner.class', /^Class 1 is chosen/],
    ],
  },
  {
    says: "the user's own factors in SI units",
    check: factorsOverridden,
    rows: [wall('A', { Area: 10, Height: 3 })],
    factors: [
      ['units', 'SI'],
      ['nozzle.distance', 450],
    ],
    // Twelve inches are 304.8 mm.
    found: [['factor nozzle.distance', /^nozzle\.distance is 450 mm; the starting value is 304\.8 mm$/]],
  },
  { says: 'starting values', check: factorsOverridden, rows: [brick], factors: [['units', 'US']], found: [] },
];

describe('each check', () => {
  it.each(cases)('$says', ({ check, rows, factors, found }) => {
    const findings = check(checked(rows, factors));
    expect(findings.map(({ where }) => where)).toEqual(found.map(([where]) => where));
    found.forEach(([, what], index) => {
      const said = findings[index]?.what ?? '';
      if (typeof what === 'string') expect(said).toContain(what);
      else expect(said).toMatch(what);
    });
    for (const { check: name, why, todo, source } of findings) {
      expect([name, why, todo].every((text) => text !== '')).toBe(true);
      expect(Object.keys(sources)).toContain(source);
    }
  });

  it('is tried on walls that it speaks of and on walls that it passes over', () => {
    for (const check of allChecks) {
      const tried = cases.filter((row) => row.check === check);
      expect(tried.some(({ found }) => found.length > 0)).toBe(true);
      expect(tried.some(({ found }) => found.length === 0)).toBe(true);
    }
  });
});

describe('all checks together', () => {
  it("have nothing to say of a wall in order but that values are the user's own", () => {
    const findings = findingsOf(checked([brick], [['sample.area', 20]]));
    expect(findings.map(({ check, where }) => [check, where])).toEqual([['override', 'factor sample.area']]);
  });

  it('say what can harm first, and overrides last', () => {
    const rows = [wall('A', { Age: 3, Mortar: '' }), wall('B', { Material: 'Coated glass' })];
    const names = findingsOf(checked(rows, [...hot, ['weather.air', 30]])).map(({ check }) => check);
    // Coated glass holds the zone at clear water, which has no contact window to miss.
    expect([...new Set(names)]).toEqual([
      'age',
      'freezing',
      'unmasked glass or metal',
      'nozzle pressure',
      'sample area',
      'default used',
      'override',
    ]);
  });

  it('name the zone beside the walls, one finding a zone', () => {
    const rows = ['North', 'South', 'Yard'].flatMap((Zone) => [
      wall(`${Zone} 1`, { Zone, Residue: '' }),
      wall(`${Zone} 2`, { Zone, Residue: '' }),
    ]);
    const where = findingsOf(checked(rows, [['sample.area', 20]]))
      .filter(({ check }) => check === 'default used')
      .map((finding) => finding.where);
    expect(where).toEqual(['North: North 1, North 2', 'South: South 1, South 2', 'Yard: Yard 1, Yard 2']);
  });

  it('count walls beyond the twentieth', () => {
    const rows = Array.from({ length: 23 }, (_, index) => wall(`W${String(index + 1)}`, { Age: '' }));
    const [finding] = ageNotStated(checked(rows));
    expect(finding?.where).toMatch(/^South: W1, .*, W20 and 3 more$/);
    expect(ageNotStated(checked(rows.slice(0, 20)))[0]?.where).toMatch(/, W20$/);
  });
});
