import { fromBase } from '../../../src/quantity/conversions';
import { lines, numberIn } from '../../properties/call';
import { material, printed, type PublishedCheck, type SourceChecks } from '../check';

/** Usual suction of clay brick. */
export const brickSuction: SourceChecks = {
  document: 'Textbook of building materials, page on water absorption and suction of clay brick',
  edition: 'excerpt on the web, not dated',
  section: 'low or medium suction rates: 1.0 to 2.0 kg/m2 in a minute',
  checks: (['at least', 'at most'] as const).map((relation) => ({
    what: `starting suction of red clay brick, ${relation}`,
    value: relation === 'at least' ? 1 : 2,
    unit: 'kg/m2',
    mark: 'published' as const,
    relation,
    within: 0,
    because: 'ours is an assumption within the published span',
    ours: () => material('Red clay brick', 'Suction', 'SI'),
  })),
};

const span = (name: string, least: number, most: number, of: string): PublishedCheck[] =>
  (
    [
      ['at least', least],
      ['at most', most],
    ] as const
  ).map(([relation, value]) => ({
    what: `starting suction of ${name.toLowerCase()}, ${relation} that of ${of}`,
    value,
    unit: 'g on 30 in2',
    mark: 'computed',
    relation,
    within: 0,
    because: 'ours is an assumption within the measured span',
    ours: () => material(name, 'Suction'),
  }));
const near = (name: string, value: number, of: string, within: number): PublishedCheck => ({
  what: `starting suction of ${name.toLowerCase()}, near that of ${of}`,
  value,
  unit: 'g on 30 in2',
  mark: 'computed',
  within,
  because: 'ours is rounded',
  ours: () => material(name, 'Suction'),
});

/** Water that a square meter takes up at most: suction so high that the unit fills. */
function full(): number {
  const [line] = lines(
    'WALLROWS',
    [
      ['Wall', 'Material', 'Area', 'Residue', 'Suction'],
      ['A', 'Red clay brick', 1, 'moderate', 10],
    ],
    null,
    [
      ['units', 'SI'],
      ['reclean.share', 0],
    ],
  );
  return numberIn(line, 'Water taken up');
}

/** Suction and capacity that were measured: first minute = Aw sqrt(60). */
export const measuredSuction: SourceChecks = {
  document: 'MASEA and RIBuild, measured records of building materials',
  edition: 'as stored in two open libraries',
  section:
    'clay brick 7.6, 10.2, 16.1, 27.0, 29.8, 41.7 g on 30 in2 (median 21.5); the spread of our five bricks is an assumption within it',
  checks: [
    {
      what: 'a solid brick of Aw 0.18 kg/(m2 s^0.5) in the first minute',
      value: 27,
      unit: 'g on 30 in2',
      mark: 'computed',
      ...printed(1),
      ours: () => fromBase(0.18 * Math.sqrt(60), 'g/30in2'),
    },
    ...[
      'Red clay brick',
      'Dark clay brick',
      'Light clay brick',
      'Manganese-colored brick',
      'Sand-faced brick',
    ].flatMap((name) => span(name, 7.6, 41.7, 'the six records')),
    near('Calcium silicate brick', 6.7, 'calcium silicate brick', 0.5),
    near('Cast stone', 3.2, 'concrete', 0.5),
    near('Architectural precast', 3.2, 'concrete', 0.5),
    near('Plain concrete block', 7, 'lightweight concrete', 1),
    ...span('Stucco', 0.3, 4.3, 'outside renders'),
    near('Marble', 0.23, 'weathered marble', 0.05),
    {
      what: 'water that a wythe of 3 5/8 in. takes up when full, at most that of the least absorbent clay brick',
      value: 14.7,
      unit: 'L/m2',
      mark: 'computed',
      relation: 'at most',
      within: 1e-9,
      because: 'the records hold 0.16 to 0.275 m3/m3: 14.7 to 25.3 L/m2',
      ours: full,
    },
    {
      what: 'the same, at least that of concrete',
      value: 13,
      unit: 'L/m2',
      mark: 'computed',
      relation: 'at least',
      within: 1e-9,
      because: 'one value stands for brick and block',
      ours: full,
    },
  ],
};
