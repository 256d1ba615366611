import { factor, material, plain, exact, findings, type PublishedCheck, type SourceChecks } from '../check';

const bound = { mark: 'published', within: 1e-9, because: 'a bound' } as const;
const startingFlow = (): number =>
  plain('Flow', 'NOZZLE', factor('nozzle.number'), factor('nozzle.pressure'), null, null, 'US');

/** Pressure cleaning of new brick. */
export const regionalPressure: SourceChecks = {
  document: 'Regional brick association text on pressure cleaning of new brick',
  edition: 'not stated',
  section: '400 to 800 psi, 3 to 8 gal/min',
  checks: [
    ...(['Red clay brick', 'Dark clay brick'] as const).map((name): PublishedCheck => ({
      what: `most pressure on ${name.toLowerCase()}`,
      value: 800,
      unit: 'psi',
      relation: 'at most',
      ...bound,
      ours: () => material(name, 'Pressure'),
    })),
    {
      what: 'starting pressure of the rinse nozzle',
      value: 400,
      unit: 'psi',
      relation: 'at least',
      ...bound,
      ours: () => factor('nozzle.pressure'),
    },
    {
      what: 'starting flow of the rinse nozzle, at least',
      value: 3,
      unit: 'gal/min',
      relation: 'at least',
      ...bound,
      ours: startingFlow,
    },
    {
      what: 'starting flow of the rinse nozzle, at most',
      value: 8,
      unit: 'gal/min',
      relation: 'at most',
      ...bound,
      ours: startingFlow,
    },
  ],
};

/** Low pressure for masonry. */
export const gsaProcedure: SourceChecks = {
  document: 'GSA technical procedure 0451004S',
  edition: 'not stated',
  section: 'low pressure for masonry: 100 to 400 psi',
  checks: [
    {
      what: 'starting pressure of the rinse nozzle, at most',
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
      ours: () =>
        Math.min(
          ...(['Coated glass', 'Painted or anodised aluminium', 'Marble'] as const).map((name) =>
            material(name, 'Pressure'),
          ),
        ),
    },
  ],
};

const limestoneWall = [
  ['Wall', 'Material', 'Area'],
  ['A', 'Limestone', 100],
];

/** Limestone. */
export const stoneProducer: SourceChecks = {
  document: 'Limestone producer page quoting the stone institute',
  edition: 'not stated',
  section: 'at most 1,200 psi, at least 6 in. off',
  checks: [
    {
      what: 'most pressure on limestone',
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
      what: 'least distance of the nozzle',
      value: 6,
      unit: 'in',
      mark: 'published',
      ...exact,
      ours: () => factor('limit.distance'),
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
