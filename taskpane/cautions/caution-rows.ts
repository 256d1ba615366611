import { cautionTopics } from '../../src/rules/cautions';
import { siteSources } from '../../src/rules/site-sources';
import type { Source } from '../../src/rules/sources';
import type { AppliedCaution } from '../../src/site/caution-sheet';

/**
 * The caution sheet as rows of a worksheet.
 * @param cautions the cautions that apply
 * @param made when the sheet was made, in words
 * @returns headings, a row for each caution and place, and when it was made
 */
export function cautionRows(cautions: readonly AppliedCaution[], made: string): string[][] {
  return [
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
    ...cautions.flatMap(({ topic, stop, text, places, source, kind }) =>
      places.map(({ why, where }) => [
        cautionTopics[topic],
        stop ? 'stop' : '',
        text,
        why,
        where === '' ? 'the whole job' : where,
        siteSources[source].document,
        kind,
        addressOf(siteSources[source]),
      ]),
    ),
    ['Made', '', made, '', '', '', '', ''],
  ];
}

function addressOf({ address = '' }: Source): string {
  return address;
}
