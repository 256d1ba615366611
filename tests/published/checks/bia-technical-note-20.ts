import { WashdownError } from '../../../src/quantity/problem';
import { number } from '../../properties/call';
import { exact, factor, findings, plain, type SourceChecks } from '../check';

const wall = (age: number): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Age'],
  ['A', 'Red clay brick', 100, age],
];

/** 1 where a cleaner that is typed in is refused, with the advice beside it. */
function refused(cleaner: string): number {
  try {
    number('CLASS', wall(30), null, [['cleaner.class', cleaner]]);
    return 0;
  } catch (error) {
    return error instanceof WashdownError && error.message.includes('advises against it') ? 1 : 0;
  }
}

/** Advice on cleaning brickwork. */
export const biaTechnicalNote20: SourceChecks = {
  document: 'BIA Technical Note 20, Cleaning Brickwork',
  edition: 'current',
  section: 'summary',
  checks: [
    {
      what: 'sample area',
      value: 20,
      unit: 'ft2',
      mark: 'published',
      ...exact,
      ours: () => factor('sample.least'),
    },
    {
      what: 'sample area in SI units',
      value: 2,
      unit: 'm2',
      mark: 'published',
      within: 0.5,
      because: 'printed to the square metre',
      ours: () => factor('sample.least', 'SI'),
    },
    {
      what: 'findings where a sample of 19 ft2 was looked at',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('sample area', wall(30), [['sample.area', 19]]),
    },
    {
      what: 'findings where a sample of 20 ft2 was looked at',
      value: 0,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('sample area', wall(30), [['sample.area', 20]]),
    },
    {
      what: 'youngest masonry to clean',
      value: 7,
      unit: 'd',
      mark: 'published',
      ...exact,
      ours: () => factor('limit.age'),
    },
    {
      what: 'findings on masonry of 6 days',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('age', wall(6)),
    },
    {
      what: 'findings on masonry of 7 days',
      value: 0,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('age', wall(7)),
    },
    {
      what: 'unbuffered muriatic acid is refused',
      value: 1,
      unit: 'refusals',
      mark: 'published',
      ...exact,
      ours: () => refused('unbuffered muriatic acid'),
    },
    {
      what: 'the cleaner does not dry on the wall: longest contact where it dries in 4 min',
      value: 4,
      unit: 'min',
      mark: 'published',
      relation: 'at most',
      within: 1e-9,
      because: 'a bound',
      ours: () => plain('Contact at the last point', 'PATCH', 10, 8, 3, 5, 4, 'US'),
    },
  ],
};
