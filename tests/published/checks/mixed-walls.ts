import { lines, number, numberIn } from '../../properties/call';
import { exact, factor, findings, type SourceChecks } from '../check';
import { acidMoles } from '../../../src/estimate/neutralizer';

const HEAD = ['Wall', 'Zone', 'Level', 'Material', 'Area', 'Residue'];
const blockAlone = [HEAD, ['A', 'Z', 2, 'Plain concrete block', 100, 'heavy']];
const blockBesideBrick = [...blockAlone, ['B', 'Z', 1, 'Red clay brick', 100, 'heavy']];
const blockBelowBrick = [
  [...HEAD, 'Masked', 'Receives'],
  ['B', 'Upper', 1, 'Red clay brick', 100, 'heavy', '', ''],
  ['A', 'Lower', 2, 'Plain concrete block', 100, 'light', 'yes', 'Upper'],
];

/** Concrete masonry among other masonry. */
export const ncmaTek: SourceChecks = {
  document: 'NCMA TEK 8-4A, Cleaning Concrete Masonry',
  edition: '2005',
  section: 'treat the whole wall alike, special care for mixed materials',
  checks: [
    {
      what: 'classes between block beside brick and block alone',
      value: 0,
      unit: 'classes',
      mark: 'published',
      ...exact,
      ours: () => number('CLASS', blockBesideBrick) - number('CLASS', blockAlone),
    },
    {
      what: 'lines of SCHEDULE, hence classes, for block and brick that wash together',
      value: 1,
      unit: 'lines',
      mark: 'published',
      ...exact,
      ours: () => lines('SCHEDULE', blockBesideBrick).length,
    },
  ],
};

/** Acid cleaner for brick beside block. */
export const tradeMagazine1997: SourceChecks = {
  document: 'Trade magazine on masonry cleaning',
  edition: '1997',
  section: 'test panel; block beside and below brick',
  checks: [
    {
      what: 'minimum sample area, no more than the test panel of 4 by 6 ft',
      value: 24,
      unit: 'ft2',
      mark: 'published',
      relation: 'at most',
      within: 1e-9,
      because: 'a bound',
      reading: true,
      ours: () => factor('sample.least'),
    },
    {
      what: 'findings where masked block receives the rinse of brick that is washed with acid',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('what lies below', blockBelowBrick),
    },
  ],
};

/** Acid of the strongest mix, mol/L. */
function strongestMix(): number {
  const [line] = lines('SCHEDULE', [HEAD, ['A', 'Z', 1, 'Red clay brick', 100, 'heavy']], null, [
    ['units', 'SI'],
  ]);
  const acid = acidMoles(
    numberIn(line, 'Concentrate'),
    factor('acid.3.density', 'SI'),
    factor('acid.3.fraction') / 100,
  );
  return acid / numberIn(line, 'Mixed cleaner');
}

/** The limit of older advice. */
export const tradeMagazine1971: SourceChecks = {
  document: 'Trade magazine on acid cleaning, superseded by BIA Technical Note 20',
  edition: '1971',
  section: 'at most 1 part of acid to 9 of water by volume',
  checks: [
    {
      what: 'acid of the strongest mix offered, below that of 1:9 of acid of 31.45%',
      value: 1,
      unit: 'mol/L',
      mark: 'computed',
      relation: 'at most',
      within: 1e-9,
      because: 'a bound',
      ours: strongestMix,
    },
  ],
};

const warm = [
  ['Wall', 'Material', 'Area'],
  ['A', 'Red clay brick', 100],
];

/** Cold. */
export const coldAir: SourceChecks = {
  document: 'UFGS 04900, Masonry Restoration and Cleaning',
  edition: 'as stored',
  section: '3.2.1: air above 40 degF until dry and at least 7 days after',
  checks: [
    {
      what: 'findings with air at 39 degF',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('freezing', warm, [['weather.air', 39]]),
    },
    {
      what: 'findings with air at 41 degF',
      value: 0,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('freezing', warm, [['weather.air', 41]]),
    },
  ],
};
