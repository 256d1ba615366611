import { LABEL_FIRST } from '../../src/rules/cautions';
import { siteSources } from '../../src/rules/site-sources';
import { conditionText } from './condition-text';
import type { StandingStep } from '../../src/site/step-gates';
import type { Overruled, ZoneProgress } from '../../src/site/step-progress';

const HEADINGS = [
  'Zone',
  'Step',
  'What',
  'Value',
  'Source',
  'Kind of source',
  'Status',
  'Who',
  'When',
  'Note',
];

/**
 * The checklist of a zone as rows of a worksheet: a row for each step, and below it what to do, its numbers, and the
 * patches timed.
 * @param progress how far the zone is
 * @param steps its steps
 * @param timeText writes a time in words
 * @returns headings and rows
 */
export function stepRows(
  progress: ZoneProgress,
  steps: readonly StandingStep[],
  timeText: (time: string) => string,
): string[][] {
  const { zone, dwells } = progress;
  return [
    HEADINGS,
    [zone, 'Before anything else', LABEL_FIRST, '', '', '', '', '', '', ''],
    ...steps.flatMap(({ step, standing, reason, record }) => {
      const said = reason === '' ? standing : `${standing}: ${reason}`;
      const rows = [
        ...step.todo.map((sentence) => [sentence, '', siteSources[step.source].document, step.kind]),
        ...step.facts.map(({ label, value, source, kind }) => [
          label,
          value,
          siteSources[source].document,
          kind,
        ]),
      ];
      const signed = record ? [record.who, timeText(record.when), record.note] : ['', '', ''];
      return [
        [zone, step.title, '', '', '', '', said, ...signed],
        ...(record?.overruled ? [[zone, step.title, ...overruledCells(record.overruled, timeText)]] : []),
        ...rows.map((row) => [zone, step.title, ...row, '', '', '', '']),
      ];
    }),
    ...dwells.map(({ start, stop }) => [
      zone,
      'Dwell clock',
      'First stroke',
      timeText(start),
      '',
      '',
      `rinsed ${timeText(stop)}`,
      '',
      '',
      '',
    ]),
  ];
}

function overruledCells({ hold, who, when, why }: Overruled, timeText: (time: string) => string): string[] {
  return [
    'Condition overruled',
    conditionText(hold, timeText),
    '',
    '',
    'overruled',
    who,
    timeText(when),
    why,
  ];
}
