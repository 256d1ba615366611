import { expect, it } from 'vitest';
import { stepRows } from '../../../taskpane/steps/step-rows';
import type { StandingStep } from '../../../src/site/step-gates';

const START = '2026-05-04T08:00:00Z';
const STOP = '2026-05-04T08:04:00Z';

const age: StandingStep = {
  step: {
    id: 'age',
    title: 'Age of the wall',
    todo: ['Look it up.'],
    facts: [{ label: 'Youngest', value: '10 days: S-1', source: 'rows', kind: 'input' }],
    decidedOn: ['S-1'],
    source: 'tn20',
    kind: 'published',
  },
  standing: 'again',
  reason: 'New: S-9.',
  record: { step: 'age', done: true, who: 'R. Mason', when: START, note: 'seen', decidedOn: ['S-1'] },
  condition: '',
  overruled: undefined,
};

it('has a row for each step, what to do, each number and each patch, all of one width', () => {
  const progress = {
    zone: 'South',
    walls: [],
    records: [],
    dwells: [{ start: START, stop: STOP }],
    clock: '',
  };
  const rows = stepRows(progress, [age], (time) => time.slice(11, 16));
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([10]));
  expect(rows[1]?.[2]).toContain('label, its safety data sheet, local codes and licensed practice');
  const said = 'again: New: S-9.';
  expect(rows.slice(2)).toEqual([
    ['South', 'Age of the wall', '', '', '', '', said, 'R. Mason', '08:00', 'seen'],
    [
      ...['South', 'Age of the wall', 'Look it up.', ''],
      ...['BIA Technical Note 20, Cleaning Brickwork', 'published', '', '', '', ''],
    ],
    [
      ...['South', 'Age of the wall', 'Youngest', '10 days: S-1'],
      ...['The rows of wall data', 'input', '', '', '', ''],
    ],
    ['South', 'Dwell clock', 'First stroke', '08:00', '', '', 'rinsed 08:04', '', '', ''],
  ]);
});

it('says who overruled a condition of a step, and why', () => {
  const overruled = {
    hold: `Too early: wait 7 days from ${START}.`,
    who: 'A. Signer',
    when: STOP,
    why: 'mortar tested',
  };
  const progress = { zone: 'South', walls: [], records: [], dwells: [], clock: '' };
  const of = age.record && { ...age, record: { ...age.record, overruled } };
  const rows = stepRows(progress, of ? [of] : [], (time) => time.slice(11, 16));
  expect(rows[3]).toEqual([
    ...[
      'South',
      'Age of the wall',
      'Condition overruled',
      'Too early: wait 7 days from 08:00.',
      '',
      '',
      'overruled',
    ],
    ...['A. Signer', '08:04', 'mortar tested'],
  ]);
});
