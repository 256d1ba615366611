import { lines, numberIn } from '../../properties/call';
import { factor, material, exact, findings, type PublishedCheck, type SourceChecks } from '../check';

const bound = { mark: 'published', within: 1e-9, because: 'a bound' } as const;

/** Pressure cleaning of new brick. */
export const regionalPressure: SourceChecks = {
  document: 'Brick Industry Association Southeast Region, Good Practice for Cleaning New Brickwork',
  edition: 'as stored; the passage in a copy on the web',
  section: 'high pressure water cleaning: 400 to 800 psi',
  checks: [
    ...(['Red clay brick', 'Dark clay brick'] as const).map((name): PublishedCheck => ({
      what: `most pressure on ${name.toLowerCase()}`,
      reading: true,
      value: 800,
      unit: 'psi',
      relation: 'at most',
      ...bound,
      ours: () => material(name, 'Pressure'),
    })),
    {
      what: 'starting pressure of the rinse nozzle',
      reading: true,
      value: 400,
      unit: 'psi',
      relation: 'at least',
      ...bound,
      ours: () => factor('nozzle.pressure'),
    },
  ],
};

/** Low pressure for masonry. */
export const gsaProcedure: SourceChecks = {
  document: 'GSA technical procedure 0440001P, Removing Dirt from Stone Masonry by Pressure Washing',
  edition: 'June 2012',
  section: 'low pressure, as that of the pump: 100 to 400 psi; it shows a range, and founds no value of ours',
  checks: [
    {
      what: 'starting pressure of the rinse nozzle, at most',
      reading: true,
      value: 400,
      unit: 'psi',
      relation: 'at most',
      ...bound,
      ours: () => factor('nozzle.pressure'),
    },
    {
      what: 'least pressure that any material is given',
      value: 100,
      unit: 'psi',
      relation: 'at least',
      ...bound,
      ours: () => Math.min(...lines('MATERIALS').map((line) => numberIn(line, 'Pressure'))),
    },
  ],
};

const limestoneWall = [
  ['Wall', 'Material', 'Area'],
  ['A', 'Limestone', 100],
];

/** Limestone. */
export const stoneProducer: SourceChecks = {
  document: 'Indiana Limestone Institute of America, Cleaning Indiana Limestone',
  edition: 'as stored; fan and distance as a producer quotes the institute',
  section: 'at most 1,200 psi, at least 6 in. off',
  checks: [
    {
      what: 'most pressure on limestone',
      reading: true,
      value: 1200,
      unit: 'psi',
      relation: 'at most',
      ...bound,
      ours: () => material('Limestone', 'Pressure'),
    },
    {
      what: 'findings where limestone is rinsed at 1,300 psi',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('nozzle pressure', limestoneWall, [['nozzle.pressure', 1300]]),
    },
    {
      what: 'findings at 5 in.',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('nozzle distance', limestoneWall, [['nozzle.distance', 5]]),
    },
    {
      what: 'findings at 6 in.',
      value: 0,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('nozzle distance', limestoneWall, [['nozzle.distance', 6]]),
    },
  ],
};

/** Soft stone in the Navy's manual. */
export const navfacPressure: SourceChecks = {
  document: 'NAVFAC MO-913, Historic Structures Preservation Manual',
  edition: 'September 1991',
  section: 'wet cleaning: 600 to 1,800 psi not on limestone, sandstone, marble',
  checks: (['Limestone', 'Marble'] as const).map((name) => ({
    what: `most pressure on ${name.toLowerCase()}`,
    reading: true,
    value: 600,
    unit: 'psi',
    relation: 'at most' as const,
    ...bound,
    ours: () => material(name, 'Pressure'),
  })),
};

/** Pressure cleaning in another country's practice. */
export const brickMakerPressure: SourceChecks = {
  document: 'Brick maker, pressure cleaning, Australian practice',
  edition: 'as stored',
  section: 'at most 1,000 psi, a fan of at least 40 degrees, no closer than 500 mm (20 in.)',
  checks: [
    {
      what: 'starting pressure of the rinse nozzle',
      reading: true,
      value: 1000,
      unit: 'psi',
      relation: 'at most',
      ...bound,
      ours: () => factor('nozzle.pressure'),
    },
    {
      what: 'starting angle of the fan',
      reading: true,
      value: 40,
      unit: 'degree',
      relation: 'at least',
      ...bound,
      ours: () => factor('nozzle.angle'),
    },
    {
      what: 'starting distance of the nozzle',
      reading: true,
      value: 500,
      unit: 'mm',
      relation: 'at least',
      ...bound,
      ours: () => factor('nozzle.distance', 'SI'),
    },
  ],
};

/** Acid on calcium silicate brick. */
export const vob: SourceChecks = {
  document: 'DIN 18330 (VOB/C)',
  edition: 'as quoted by the makers of calcium silicate brick',
  section: '3.2.6: no hydrochloric acid on calcium silicate brick',
  checks: [
    {
      what: 'strongest class on a wall of it, with heavy residue; class 2 is the gentlest acid',
      value: 1,
      unit: 'class',
      relation: 'at most',
      ...bound,
      ours: () =>
        numberIn(
          lines('SCHEDULE', [
            ['Wall', 'Material', 'Area', 'Residue', 'Mortar'],
            ['A', 'Calcium silicate brick', 100, 'heavy', 'M'],
          ])[0],
          'Class',
        ),
    },
  ],
};
