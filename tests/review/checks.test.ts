import { describe, expect, it } from 'vitest';
import { allChecks, findingsOf } from '../../src/review/checks';
import { acidOnConcrete, stainUnderAcid } from '../../src/review/checks/acid-on-wall';
import { ageNotStated, tooOld, tooYoung } from '../../src/review/checks/age';
import { whatLiesBelow } from '../../src/review/checks/below';
import { noContactWindow } from '../../src/review/checks/contact-window';
import {
  heightMissing,
  mortarDefault,
  openingPerimeterMissing,
  residueAndBrushed,
  residueAssumed,
} from '../../src/review/checks/defaults-used';
import { dryBeforeLeast } from '../../src/review/checks/drying';
import { exampleRowsLeft } from '../../src/review/checks/example-rows';
import { factorsOverridden } from '../../src/review/checks/factors-overridden';
import { impossiblePerimeter } from '../../src/review/checks/impossible-perimeter';
import { tooMuchPressure, tooMuchToApply, tooNarrowJet } from '../../src/review/checks/jet';
import { labelsAlike, zonesAlike } from '../../src/review/checks/names-alike';
import { notPriced } from '../../src/review/checks/not-priced';
import { leftOut, washedNowhere } from '../../src/review/checks/out-of-scope';
import { preWetTooLong, suctionNotMeasured } from '../../src/review/checks/pre-wet';
import { priceOutsideSpan } from '../../src/review/checks/price-span';
import { sampleAreaMissing } from '../../src/review/checks/sample-area';
import { strongMortar } from '../../src/review/checks/strong-mortar';
import { scaffoldUnused, teamOfOne } from '../../src/review/checks/team-and-scaffold';
import { unmaskedGlassOrMetal } from '../../src/review/checks/unmasked-glass-or-metal';
import { heavyUnderWeakClass } from '../../src/review/checks/weak-class';
import { tooCold, tooHot, tooWindy } from '../../src/review/checks/weather';
import { yieldOutsideNorms } from '../../src/review/checks/yield';
import { nothingButOpenings, zeroArea } from '../../src/review/checks/zero-area';
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

/** Everything that starts at nothing, stated as nothing or by one of its two ids. */
const allStated: [string, number][] = [
  'price.labor',
  ...['price.cleaner.1', 'price.cleaner.2', 'price.cleaner.3', 'price.film', 'price.tape', 'price.water'],
  ...['price.equipment', 'price.access', 'price.bicarbonate', 'price.sodaAsh', 'price.disposal'],
  ...['mobilize.hours', 'setup.zone', 'price.protection', 'price.fixed', 'price.supervision'],
  ...['price.contingency', 'price.overhead', 'price.profit', 'price.minimum', 'weather.days'],
].map((id) => [id, 0]);

const cases: readonly Case[] = [
  {
    says: 'a cleaner that dries before its minimum dwell, once for the job',
    check: dryBeforeLeast,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: hot,
    // 130 degF = 54.44 degC, 25 mph = 40.23 km/h over air of 20 degC and 10%: E = 5 (72.44^2.5 - 0.1 * 38^2.5) * 44.23
    // * 1e-6 = 9.683 kg/(m2 h), so 0.1 mm is dry in 0.6197 min; 5 / 0.6197 - 1 = 7.069.
    found: [
      [
        'factor weather.surface',
        /^The cleaner dries after 0\.6197 min, before its minimum dwell of 3 min: 7\.069 mistings per pass are priced$/,
      ],
    ],
  },
  { says: 'a cleaner that stays wet', check: dryBeforeLeast, rows: [brick], found: [] },
  {
    says: 'water that dries',
    check: dryBeforeLeast,
    rows: [wall('A', { Material: 'Marble' })],
    factors: hot,
    found: [],
  },
  {
    says: 'a smallest patch that takes 8 min to cover, by zone',
    check: noContactWindow,
    rows: [brick, wall('B', { Zone: 'North' })],
    factors: [
      ['rate.apply', 1],
      ['cleaner.class', 1],
    ],
    found: [
      ['South', /^Wall A has no contact window: .* 8 min, and dwell.most is 5 min/],
      ['North', /^Wall B has no contact window/],
    ],
  },
  {
    says: 'least and maximum dwell that are one, at unequal rates: the quicker is paced',
    check: noContactWindow,
    rows: [brick],
    factors: [
      ['dwell.least', 5],
      ['dwell.most', 5],
    ],
    found: [],
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
    says: 'masonry of 7 days, of no stated age, and young masonry that stays masked',
    check: tooYoung,
    rows: [wall('A', { Age: 7 }), wall('B', { Age: '' }), wall('C', { Age: 2, Masked: 'only' })],
    found: [],
  },
  {
    says: 'young masonry that is masked and washed afterwards',
    check: tooYoung,
    rows: [brick, wall('B', { Age: 2, Masked: 'yes' })],
    found: [['South: B', 'Masonry 2 days old']],
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
    rows: [wall('A', { Age: '' }), wall('B'), wall('C', { Age: '', Masked: 'only' })],
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
      ['factor weather.air', 'Air at 39 °F, the minimum is 40 °F'],
      ['factor weather.surface', 'Face at 35 °F, the minimum is 40 °F'],
    ],
  },
  { says: '40 degF and above', check: tooCold, rows: [brick], factors: [['weather.air', 40]], found: [] },
  {
    says: 'cold weather where every wall stays masked',
    check: tooCold,
    rows: [wall('A', { Masked: 'only' })],
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
    rows: [wall('A', { Age: 29 }), wall('B', { Age: 60 }), wall('C', { Age: 90, Masked: 'only' })],
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
    found: [['factor apply.pressure', 'Cleaner applied at 60 psi; the maximum is 50 psi']],
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
    found: [['South: B', 'Nozzle at 400 psi, Sand-faced brick takes 200 psi']],
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
      ['factor nozzle.distance', 'Nozzle at 5 in; the minimum is 6 in'],
      ['factor nozzle.angle', 'Fan of 15°; the minimum is 25°'],
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
      wall('B', { Material: 'Manganese-colored brick' }),
      wall('C', { Material: 'Granite' }),
    ],
    found: [['South: A, B', 'Light clay brick, Manganese-colored brick under class 2 (buffered mild acid)']],
  },
  {
    says: 'light brick under detergent, under masking, and red brick under acid',
    check: stainUnderAcid,
    rows: [
      wall('A', { Material: 'Light clay brick' }),
      wall('B', { Zone: 'North', Residue: 'heavy' }),
      // Washed afterwards with detergent, since its residue is light.
      wall('C', { Zone: 'North', Material: 'Light clay brick', Masked: 'yes' }),
      wall('D', { Zone: 'North', Material: 'Light clay brick', Masked: 'only', Residue: 'heavy' }),
    ],
    found: [],
  },

  {
    says: 'a masked base of another zone that receives the rinse',
    check: whatLiesBelow,
    rows: [
      wall('A', { Residue: 'heavy' }),
      wall('B', { Zone: 'Base', Level: 2, Material: 'Limestone', Masked: 'yes', Receives: 'South' }),
    ],
    found: [
      [
        'Base: B',
        'Limestone receives the rinse of walls washed with class 3 (buffered acid at full label strength) in South',
      ],
    ],
  },
  {
    says: 'a lower level of a zone that receives no rinse: the two may stand on two elevations',
    check: whatLiesBelow,
    rows: [
      wall('A', { Residue: 'heavy' }),
      wall('B', { Zone: 'Base', Level: 2, Material: 'Limestone' }),
      wall('C', { Zone: 'Base', Level: 3, Material: 'Marble', Masked: 'only' }),
    ],
    // Within Base the limestone is washed with detergent, and the marble below it takes clear water only.
    found: [['Base: C', 'Marble lies lower than walls washed with class 1 (neutral detergent) in Base']],
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
    found: [
      ['Base: C', 'Limestone receives the rinse of walls washed with class 2 (buffered mild acid) in South'],
    ],
  },
  {
    says: 'walls above that stay masked, or are washed with clear water',
    check: whatLiesBelow,
    rows: [
      wall('A', { Masked: 'only' }),
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
      wall('D', { Residue: 'heavy', Masked: 'only' }),
      // Uncovered afterwards, beside bare limestone.
      wall('E', { Residue: 'heavy', Masked: 'yes' }),
    ],
    found: [['South: A, E', 'Heavy residue under class 1 (neutral detergent)']],
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
    found: [['factor sample.area', 'No sample area has been inspected']],
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
    rows: [wall('A', { Mortar: '' }), brick, wall('C', { Mortar: '', Masked: 'only' })].map((row, index) => ({
      ...row,
      Wall: `W${String(index)}`,
    })),
    found: [['South: W0', 'Type N is assumed']],
  },
  { says: 'a stated mortar', check: mortarDefault, rows: [brick], found: [] },

  {
    says: 'washed rows without a residue',
    check: residueAssumed,
    rows: [wall('A', { Residue: '' }), wall('B'), wall('C', { Residue: '', Masked: 'only' })],
    found: [['South: A', 'Residue is not stated']],
  },
  { says: 'a stated residue', check: residueAssumed, rows: [brick], found: [] },

  {
    says: 'rows without a height, masked ones too',
    check: heightMissing,
    rows: [wall('A', { Height: '' }), wall('B'), wall('C', { Height: 0, Masked: 'yes' })],
    found: [['South: A, C', 'Height is not stated']],
  },
  {
    says: 'openings without a perimeter, but not those of a masked wall',
    check: openingPerimeterMissing,
    rows: [
      wall('A', { Openings: 20 }),
      wall('B', { Openings: 20, 'Opening perimeter': 18 }),
      wall('C', { Openings: 20, Masked: 'yes' }),
      wall('D'),
    ],
    found: [['South: A', 'that of one square is assumed']],
  },
  { says: 'no openings', check: openingPerimeterMissing, rows: [brick], found: [] },
  {
    says: 'residue that was seen and brushing, both stated',
    check: residueAndBrushed,
    rows: [
      wall('A', { Brushed: 'yes' }),
      wall('B', { Brushed: 'no' }),
      wall('C', { Brushed: 'priced' }),
      wall('D', { Brushed: 'yes', Residue: '' }),
    ],
    found: [['South: A, B', 'Residue and Brushed are both stated: Residue counts']],
  },
  { says: 'residue alone', check: residueAndBrushed, rows: [brick], found: [] },
  {
    says: 'a row that is nothing but openings',
    check: nothingButOpenings,
    rows: [brick, wall('B', { Openings: 100 }), wall('C', { Area: 0 }), wall('D', { Openings: 99 })],
    found: [['South: B', 'Openings take the whole area']],
  },
  { says: 'a row with a face', check: nothingButOpenings, rows: [brick], found: [] },

  {
    says: 'a team of one',
    check: teamOfOne,
    rows: [brick],
    factors: [
      ['team.size', 1],
      ['teams', 3],
    ],
    found: [['factor team.size', 'A team is one person']],
  },
  { says: 'a team of two', check: teamOfOne, rows: [brick], found: [] },
  {
    says: 'a team of one that washes nothing',
    check: teamOfOne,
    rows: [wall('A', { Masked: 'only' })],
    factors: [['team.size', 1]],
    found: [],
  },

  {
    says: 'a scaffold in the bid that no wall is reached by',
    check: scaffoldUnused,
    rows: [brick, wall('B', { Access: 'lift' })],
    factors: [['scaffold', 'yes']],
    found: [['factor scaffold', 'no wall is reached by scaffold']],
  },
  {
    says: 'a scaffold that one wall is reached by',
    check: scaffoldUnused,
    rows: [brick, wall('B', { Access: 'scaffold' })],
    factors: [['scaffold', 'yes']],
    found: [],
  },
  {
    says: 'a scaffold that every wall is reached by',
    check: scaffoldUnused,
    rows: [brick],
    factors: [
      ['scaffold', 'yes'],
      ['access.kind', 'scaffold'],
    ],
    found: [],
  },

  {
    says: 'suction that the most passes do not fill',
    check: preWetTooLong,
    rows: [brick, wall('B', { Suction: 60 }), wall('C', { Suction: 60, Masked: 'only' })],
    // S = 60 * 0.0516668 / 2 = 1.55; L/S = 0.4821 / 1.55 = 0.311; ((3 - 0.0967) / 0.622)^2 = 21.8 min: 11 passes of 2.
    found: [['South: B', 'Pre-wet would take 11 passes; the maximum is 6']],
  },
  { says: 'the suction of red brick', check: preWetTooLong, rows: [brick], found: [] },
  {
    says: 'suction of the table that asks for more pre-wet than the helper has time for',
    check: suctionNotMeasured,
    rows: [brick, wall('B', { Suction: 20 }), wall('C', { Material: 'Granite' })],
    // S = 1.0333; L/S = 0.4665; ((3 - 0.2176) / 0.9331)^2 = 8.89 min: 5 passes, 5 / 15 = 0.333 min/ft2 of one person;
    // while one applies and rinses there are 0.1 + 0.6 / 5.06 = 0.219.
    factors: [
      ['prewet.fieldShare', 1],
      ['rate.wet', 15],
    ],
    found: [['South: A', 'Red clay brick: suction is not measured, and decides the hours']],
  },
  {
    says: 'suction that was stated for the material',
    check: suctionNotMeasured,
    rows: [brick],
    factors: [
      ['prewet.fieldShare', 1],
      ['rate.wet', 15],
      ['material.red-clay-brick.suction', 20],
    ],
    found: [],
  },
  { says: 'pre-wet that fits beside', check: suctionNotMeasured, rows: [brick], found: [] },

  {
    says: 'masonry that is covered and left unwashed',
    check: leftOut,
    rows: [
      brick,
      wall('B', { Material: 'Limestone', Masked: 'only' }),
      wall('C', { Material: 'Copper', Masked: 'only' }),
    ],
    found: [['South: B', 'Limestone is covered and left unwashed']],
  },
  {
    says: 'masonry that is washed afterwards',
    check: leftOut,
    rows: [brick, wall('B', { Material: 'Limestone', Masked: 'yes' })],
    found: [],
  },
  {
    says: 'masonry left unwashed that no other row washes: of another area, or left out twice',
    check: washedNowhere,
    rows: [
      wall('A', { Material: 'Limestone', Area: 90 }),
      wall('B', { Material: 'Limestone', Masked: 'only' }),
      wall('C', { Material: 'Limestone', Masked: 'only', Zone: 'North' }),
      wall('D', { Zone: 'North' }),
    ],
    found: [
      ['South: B', 'No row washes this Limestone'],
      ['North: C', 'No row washes this Limestone'],
    ],
  },
  {
    says: 'masonry left unwashed in one zone and washed in another',
    check: washedNowhere,
    rows: [
      brick,
      wall('B', { Material: 'Limestone', Masked: 'only' }),
      wall('C', { Material: 'Limestone', Zone: 'North' }),
    ],
    found: [],
  },

  {
    says: 'a face scraped at 30 ft2 per labor-hour, slower than the slowest norm',
    check: yieldOutsideNorms,
    rows: [brick],
    factors: [['rate.scrape.light', 30]],
    // 1 / 0.4302 m2 = 25.02 ft2 and 100 / 15.8 m2 = 68.13 ft2. Washing 100 ft2 at 64.5 ft2 per labor-hour takes 1.55,
    // scraping at 30 of 50 minutes in the hour 4, re-clean and moves 0.13, and set-up comes on top of each:
    // 100 / ((1.55 + 4 + 0.13) * 8 / 7.25) = 15.96.
    found: [
      [
        'the whole job',
        /^15\.9\d* ft²\/labor-h of cleaning, outside of 25\.02 ft²\/labor-h to 68\.13 ft²\/labor-h/,
      ],
    ],
  },
  {
    says: 'a small wall, slow over all for its sample panel, which the norms do not have',
    check: yieldOutsideNorms,
    // 100 / (3.88 * 8 / 7.25) = 23.4 over all, 2 hours of it the sample panel.
    rows: [brick],
    found: [],
  },
  {
    says: 'a job quicker over all than the quickest norm',
    check: yieldOutsideNorms,
    rows: [wall('A', { Area: 5000 }), wall('B', { Zone: 'North', Area: 5000 })],
    factors: [
      ['scrub.full', 1000],
      ['rate.scrape.light', 10000],
      ['working.share', 1],
    ],
    // (0.1 + 0.1186 + 0.5 / 41) * 2 persons = 0.46 min/ft2 make 130 ft2 per labor-hour before scraping, moves and set-up.
    found: [['the whole job', /^1\d\d(\.\d)? ft²\/labor-h of cleaning/]],
  },
  { says: 'a wall of 1,000 ft2', check: yieldOutsideNorms, rows: [wall('A', { Area: 1000 })], found: [] },
  {
    says: 'nothing washed',
    check: yieldOutsideNorms,
    rows: [wall('A', { Masked: 'only' })],
    found: [],
  },

  {
    says: 'an example row beside a wall',
    check: exampleRowsLeft,
    rows: [brick, wall('Example: base')],
    found: [['Example: base', '1 example row left out of the job']],
  },
  { says: 'no example row', check: exampleRowsLeft, rows: [brick], found: [] },

  ...(
    [
      // Unicode 16.0, Default_Ignorable_Code_Point and general category Cf.
      ['a space of no width', '\u200b', '200B'],
      ['a mark of direction', '\u202e', '202E'],
      ['a joiner of no width', '\u200d', '200D'],
      ['a soft hyphen', '\u00ad', '00AD'],
      ['a filler', '\u115f', '115F'],
      ['a tag beyond the first plane', '\u{e0041}', 'E0041'],
    ] as const
  ).flatMap(([says, character, code]): Case[] => [
    {
      says: `zones that differ by ${says}`,
      check: zonesAlike,
      rows: [brick, wall('B', { Zone: `so${character}uth` })],
      found: [
        [`row 2 "South" and row 3 "so[U+${code}]uth"`, '2 zones that look the same are different ones'],
      ],
    },
    {
      says: `labels that differ by ${says}`,
      check: labelsAlike,
      rows: [wall('N-1'), wall(`N-1${character}`, { Zone: 'North' })],
      found: [[`row 2 "N-1" and row 3 "N-1[U+${code}]"`, '2 labels that look the same are different ones']],
    },
  ]),
  {
    says: 'zones of one name, in other letters and with another space',
    check: zonesAlike,
    // They are read as one zone.
    rows: [wall('A', { Zone: 'North wing' }), wall('B', { Zone: 'NORTH\u00a0\uff37ing' })],
    found: [],
  },
  {
    says: 'labels with a space that does not break, a letter of full width and a letter in two pieces',
    check: labelsAlike,
    rows: [
      wall('S 1'),
      wall('S\u00a01'),
      wall('\uff33 1'),
      wall('\u00fc'),
      wall('u\u0308'),
      wall('T  1'),
      wall('T 1'),
    ],
    found: [
      [
        'row 2 "S 1" and row 3 "S[U+00A0]1" and row 4 "[U+FF33] 1"; row 5 "\u00fc" and row 6 "u[U+0308]"; row 7 "T  1" and row 8 "T 1"',
        '7 labels',
      ],
    ],
  },
  {
    says: 'labels that differ in what is seen',
    check: labelsAlike,
    rows: ['A-1', 'a-1', 'A1', 'A 1', 'A11', '\u00c5', '\u202etxt', '\u65e5\u672c'].map((label) =>
      wall(label),
    ),
    found: [],
  },
  {
    says: 'more labels that look alike than are named',
    check: labelsAlike,
    rows: [1, 2, 3, 4, 5, 6, 7].flatMap((number) => [
      wall(`W${String(number)}`),
      wall(`W${String(number)}\u200b`),
    ]),
    found: [
      [
        [1, 2, 3, 4, 5]
          .map(
            (each) =>
              `row ${String(2 * each)} "W${String(each)}" and row ${String(2 * each + 1)} "W${String(each)}[U+200B]"`,
          )
          .join('; ') + ' and 2 more',
        '14 labels',
      ],
    ],
  },

  {
    says: 'openings of 12 ft2 in 12 ft, where a circle has 12.28',
    check: impossiblePerimeter,
    rows: [wall('A', { Openings: 12, 'Opening perimeter': 12 }), wall('B')],
    found: [['South: A', 'Opening perimeter is shorter than that of one round opening of the same area']],
  },
  {
    says: 'openings of 12 ft2 in 14 ft',
    check: impossiblePerimeter,
    rows: [wall('A', { Openings: 12, 'Opening perimeter': 14 })],
    found: [],
  },

  {
    says: 'a price per area above the span',
    check: priceOutsideSpan,
    rows: [brick],
    factors: [
      ['price.labor', 60],
      ['price.span.most', 0.01],
    ],
    found: [['the whole job', / over all, above the highest that you state, 0\.01 per ft²$/]],
  },
  {
    says: 'a price per area without a span',
    check: priceOutsideSpan,
    rows: [brick],
    factors: [['price.labor', 60]],
    found: [],
  },

  { says: 'a stated height', check: heightMissing, rows: [brick], found: [] },

  {
    says: "the user's own factors, materials and class; what only the user can know is theirs to state",
    check: factorsOverridden,
    rows: [brick],
    factors: [
      ['team.size', 4],
      ['teams', 2],
      ['price.labor', 60],
      ['price.cleaner.1', 20],
      ['weather.air', 60],
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
      ['factor nozzle.number', /^nozzle\.number is 12; the starting value is 16$/],
      ['factor nozzle.distance', /^nozzle\.distance is 18 in; the starting value is 20 in$/],
      ['material limestone', /^Limestone: ceiling 0, pressure 500 psi$/],
      ['material Own stone', /^Own stone: ceiling 2, suction 9 g\/30in², pressure 700 psi$/],
      ['factor cleaner.class', /^Class 1 \(neutral detergent\) is chosen/],
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
    // Twenty inches are 508 mm.
    found: [['factor nozzle.distance', /^nozzle\.distance is 450 mm; the starting value is 508 mm$/]],
  },
  { says: 'starting values', check: factorsOverridden, rows: [brick], factors: [['units', 'US']], found: [] },

  {
    says: 'what starts at nothing, in one line',
    check: notPriced,
    rows: [brick],
    found: [
      [
        'factor table',
        'Not stated, so nothing in the price: labor, cleaner of class 1 (neutral detergent), water, equipment rental, lift or scaffold rental, disposal of runoff, mobilization, site set-up of each zone, protection of landscaping, paving and neighbors, fixed sums of your own, supervision, contingency, overhead, profit, minimum charge, weather days',
      ],
    ],
  },
  {
    says: 'the cleaner of a later wash, film, tape and alkali where the job has them, and what is not stated as 0',
    check: notPriced,
    rows: [wall('A', { Residue: 'moderate' }), wall('B', { Material: 'Limestone', Masked: 'yes' })],
    factors: [
      ...allStated.filter(([id]) => !/cleaner|film|tape|bicarbonate|sodaAsh|fixed/.test(id)),
      ['price.sodaAsh', 0],
    ],
    found: [
      [
        'factor table',
        /^Not stated, so nothing in the price: cleaner of class 1 \(neutral detergent\), cleaner of class 2 \(buffered mild acid\), masking film, tape, sodium bicarbonate, fixed sums of your own$/,
      ],
    ],
  },
  { says: 'everything stated, be it as 0', check: notPriced, rows: [brick], factors: allStated, found: [] },
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

describe('checks of one zone', () => {
  const rows = [
    wall('A'),
    wall('B', { Material: 'Limestone', Masked: 'only' }),
    wall('C', { Material: 'Limestone', Zone: 'North', Access: 'scaffold' }),
  ];
  const whole = checked(rows, [
    ['scaffold', 'yes'],
    ['rate.scrape.light', 30],
  ]);
  const south = { ...whole, zones: whole.zones.slice(0, 1) };

  it.each([
    ['masonry that another zone washes', washedNowhere],
    ['a scaffold that another zone uses', scaffoldUnused],
    ['the yield of the whole job', yieldOutsideNorms],
  ])('know the rest of the job: %s', (_, check) => {
    expect(check(south)).toEqual([]);
  });

  it('would speak of each where the zone is all there is', () => {
    const alone = { ...whole, zones: south.zones, job: south.zones };
    for (const check of [washedNowhere, scaffoldUnused, yieldOutsideNorms])
      expect(check(alone)).toHaveLength(1);
  });
});

describe('all checks together', () => {
  it("have nothing to say of a wall in order but that values are the user's own", () => {
    const rows = [wall('A', { Area: 1000 })];
    const findings = findingsOf(
      checked(rows, [...allStated, ['sample.area', 20], ['dwell.most', 6], ['dwell.least', 3]]),
    );
    expect(findings.map(({ check, where }) => [check, where])).toEqual([['override', 'factor dwell.most']]);
  });

  it('say what can harm first, then overrides, and last what is not priced', () => {
    const rows = [wall('A', { Area: 1000, Age: 3, Mortar: '' }), wall('B', { Material: 'Coated glass' })];
    const factors = [...hot, ['weather.air', 30], ['nozzle.number', 15]];
    const names = findingsOf(checked(rows, factors)).map(({ check }) => check);
    // Coated glass holds the zone at clear water, which has no contact window to miss and may dry.
    expect([...new Set(names)]).toEqual([
      'age',
      'freezing',
      'unmasked glass or metal',
      'nozzle pressure',
      'sample area',
      'default used',
      'override',
      'not priced',
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
