import { lines, number, numberIn } from '../../properties/call';
import { exact, factor, plain, type SourceChecks } from '../check';

const wall = (mortar: string): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Mortar', 'Residue'],
  ['A', 'Granite', 100, mortar, 'moderate'],
];
const practice = { mark: 'common practice', ...exact } as const;

/** What the trade does, without a source. */
export const commonPractice: SourceChecks = {
  document: 'Common practice of the trade',
  edition: '',
  section: '',
  checks: [
    { what: 'least dwell', value: 3, unit: 'min', ...practice, ours: () => factor('dwell.least') },
    { what: 'most dwell', value: 5, unit: 'min', ...practice, ours: () => factor('dwell.most') },
    {
      what: 'contact at the first point of the starting patch',
      value: 3,
      unit: 'min',
      ...practice,
      relation: 'at least',
      ours: () =>
        plain(
          'Contact at the first point',
          'PATCH',
          factor('rate.apply'),
          factor('rate.rinse'),
          3,
          5,
          null,
          'US',
        ),
    },
    {
      what: 'contact at the last point of the starting patch',
      value: 5,
      unit: 'min',
      ...practice,
      relation: 'at most',
      ours: () =>
        plain(
          'Contact at the last point',
          'PATCH',
          factor('rate.apply'),
          factor('rate.rinse'),
          3,
          5,
          null,
          'US',
        ),
    },
    {
      what: 'passes of plain water on a face that takes up next to nothing',
      value: 2,
      unit: 'passes',
      ...practice,
      ours: () => numberIn(lines('SCHEDULE', wall('N'))[0], 'Passes'),
    },
    {
      what: 'a mortar that is not stated is scraped as Type N',
      value: 1,
      unit: '1',
      ...practice,
      ours: () =>
        number('CREWHOURS', wall(''), null, null, 'scrape') /
        number('CREWHOURS', wall('N'), null, null, 'scrape'),
    },
  ],
};
