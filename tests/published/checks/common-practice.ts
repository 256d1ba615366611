import { lines, number, numberIn } from '../../properties/call';
import { exact, factor, plain, type SourceChecks } from '../check';

const wall = (mortar: string): unknown[][] => [
  ['Wall', 'Material', 'Area', 'Mortar', 'Residue'],
  ['A', 'Granite', 100, mortar, 'moderate'],
];
const practice = { mark: 'common practice', ...exact } as const;
/** Area that a lance rinses in a minute, the starting nozzle and water: ft2/min. */
const rinseRate = (): number =>
  plain('Flow', 'NOZZLE', factor('nozzle.number'), factor('nozzle.pressure'), null, null, 'US') /
  factor('rinse.perArea');

/** What the trade does, without a source. */
export const commonPractice: SourceChecks = {
  document: 'Common practice of the trade',
  edition: '',
  section: '',
  checks: [
    {
      what: 'minimum dwell',
      value: 3,
      unit: 'min',
      ...practice,
      reading: true,
      ours: () => factor('dwell.least'),
    },
    {
      what: 'maximum dwell',
      value: 5,
      unit: 'min',
      ...practice,
      reading: true,
      ours: () => factor('dwell.most'),
    },
    {
      what: 'contact at the first point of the starting patch',
      value: 3,
      unit: 'min',
      ...practice,
      relation: 'at least',
      ours: () =>
        plain('Contact at the first point', 'PATCH', factor('rate.apply'), rinseRate(), 3, 5, null, 'US'),
    },
    {
      what: 'contact at the last point of the starting patch',
      value: 5,
      unit: 'min',
      ...practice,
      relation: 'at most',
      ours: () =>
        plain('Contact at the last point', 'PATCH', factor('rate.apply'), rinseRate(), 3, 5, null, 'US'),
    },
    {
      what: 'passes of plain water on a face that takes up next to nothing',
      value: 2,
      unit: 'passes',
      ...practice,
      ours: () => numberIn(lines('SCHEDULE', wall('N'))[0], 'Most pre-wet passes'),
    },
    {
      what: 'a mortar that is not stated is scraped as Type N',
      value: 1,
      unit: '1',
      ...practice,
      ours: () =>
        number('LABORHOURS', wall(''), null, null, 'scrape') /
        number('LABORHOURS', wall('N'), null, null, 'scrape'),
    },
  ],
};
