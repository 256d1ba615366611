import { expect, it } from 'vitest';
import { cautionRows } from '../../../taskpane/cautions/caution-rows';

it('has a row for each caution and place, and says when it was made', () => {
  const rows = cautionRows(
    [
      {
        id: 'label',
        topic: 'first',
        text: 'Follow the label.',
        places: [{ where: '', why: '' }],
        stop: false,
        source: 'practice',
        kind: 'common practice',
      },
      {
        id: 'over-pressure',
        topic: 'pressure',
        text: 'Lower it.',
        places: [
          { where: 'South', why: '400 psi' },
          { where: 'North', why: '300 psi' },
        ],
        stop: true,
        source: 'niosh-96-118',
        kind: 'published',
      },
    ],
    '4 May 2026, 08:00',
  );
  const source = ['Common practice of the trade', 'common practice', ''];
  const read = [
    'NIOSH 96-118, Preventing Carbon Monoxide Poisoning from Small Gasoline-Powered Engines and Tools',
    'published',
    'https://cdc.gov/niosh/docs/96-118a',
  ];
  expect(rows).toEqual([
    [
      'Topic',
      'Stop',
      'Caution',
      'Why it applies here',
      'Where',
      'Source',
      'Kind of source',
      'Where to read it',
    ],
    ['Before anything else', '', 'Follow the label.', '', 'the whole job', ...source],
    ['Pressure', 'stop', 'Lower it.', '400 psi', 'South', ...read],
    ['Pressure', 'stop', 'Lower it.', '300 psi', 'North', ...read],
    ['Made', '', '4 May 2026, 08:00', '', '', '', '', ''],
  ]);
});
