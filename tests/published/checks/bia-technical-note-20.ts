import { WashdownError } from '../../../src/quantity/problem';
import { number } from '../../properties/call';
import { exact, factor, findings, plain, type SourceChecks } from '../check';

const wall = (age: number): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Age'],
  ['A', 'Red clay brick', 100, age],
];

const stacked: unknown[][] = [
  ['Wall', 'Material', 'Area', 'Age', 'Level', 'Height'],
  ['A', 'Red clay brick', 100, 30, 1, 10],
  ['B', 'Red clay brick', 100, 30, 2, 10],
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
  edition: 'June 2006, as transcribed',
  section: 'summary',
  checks: [
    {
      what: 'sample area in SI units',
      value: 2,
      unit: 'm2',
      mark: 'published',
      within: 0.5,
      because: 'printed to the square meter',
      reading: true,
      ours: () => factor('sample.least', 'SI'),
    },
    {
      what: 'findings where a sample of 19 ft2 was inspected',
      value: 1,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('sample area', wall(30), [['sample.area', 19]]),
    },
    {
      what: 'findings where a sample of 20 ft2 was inspected',
      value: 0,
      unit: 'findings',
      mark: 'published',
      ...exact,
      ours: () => findings('sample area', wall(30), [['sample.area', 20]]),
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
    {
      what: 'water on the brickwork below, kept wet until the final rinse: 1 where a level of brick lies below and 0 where none does',
      value: 1,
      unit: '1',
      mark: 'published',
      ...exact,
      ours: () => {
        const below = (walls: unknown[][]): number => number('WATER', walls, null, null, 'below');
        return Number(below(stacked) > 0 && below(wall(30)) === 0);
      },
    },
  ],
};
