import { LABEL_FIRST } from '../../src/rules/cautions';
import { siteSources } from '../../src/rules/site-sources';
import { agreedWords, punchList } from '../../src/site/inspection';
import { overruledText } from './condition-text';
import type { CrewPageData } from './crew-page-data';
import { punchWords } from './punch-words';
import { tickWords } from './tick-words';

const HEADINGS = ['Part', 'No.', 'Done', 'What', 'Value', 'Source'];

/**
 * The crew's page as rows of a worksheet.
 * @param data what stands on it
 * @returns headings and rows
 */
export function crewRows({ zone, today, bring, progress, steps, cautions }: CrewPageData): string[][] {
  const { agreed } = progress;
  return [
    HEADINGS,
    [zone.zone.name, '', '', LABEL_FIRST, '', ''],
    ...today.map(({ wall, material }) => ["Today's walls", '', '', wall, material.name, '']),
    ...bring.map(({ label, value }) => ['Bring', '', '☐', label, value, '']),
    ['Sample panel', '', '', agreed ? agreedWords(agreed) : 'No acceptance is recorded.', '', ''],
    ...steps.flatMap(({ step, standing, reason, record }, index) => {
      const number = String(index + 1);
      const done = standing === 'done';
      return [
        ['Steps', number, done ? '☑' : '☐', step.title, done ? tickWords(record) : reason, ''],
        ...(record?.overruled
          ? [['Steps', number, '', 'Condition overruled', overruledText(record.overruled), '']]
          : []),
        ...step.todo.map((sentence) => [
          'Steps',
          number,
          '',
          sentence,
          '',
          siteSources[step.source].document,
        ]),
        ...step.facts.map(({ label, value, source }) => [
          'Steps',
          number,
          '',
          label,
          value,
          siteSources[source].document,
        ]),
      ];
    }),
    ...punchList(progress).map((item) => [
      'Punch list',
      '',
      item.closed ? '☑' : '☐',
      punchWords(item),
      '',
      '',
    ]),
    ...cautions.map(({ text, stop, places, source }) => [
      'Cautions',
      '',
      stop ? 'Stop' : '',
      text,
      places
        .filter(({ why, where }) => why !== '' || where !== '')
        .map(({ why, where }) => `${where}: ${why}`)
        .join('; '),
      siteSources[source].document,
    ]),
  ];
}
