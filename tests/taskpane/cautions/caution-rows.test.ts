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
        source: 'practice',
        kind: 'common practice',
      },
    ],
    '4 May 2026, 08:00',
  );
  const source = ['Common practice of the trade', 'common practice'];
  expect(rows).toEqual([
    ['Topic', 'Stop', 'Caution', 'Why it applies here', 'Where', 'Source', 'Kind of source'],
    ['Before anything else', '', 'Follow the label.', '', 'the whole job', ...source],
    ['Pressure', 'stop', 'Lower it.', '400 psi', 'South', ...source],
    ['Pressure', 'stop', 'Lower it.', '300 psi', 'North', ...source],
    ['Made', '', '4 May 2026, 08:00', '', '', '', ''],
  ]);
});
