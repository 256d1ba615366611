import {
  movesInWords,
  notesInWords,
  togetherInWords,
  whatInWords,
  zoneInWords,
} from '../../functions/alternates-words';
import type { AlternatesResult } from '../../src/alternates/alternates';
import { quoted } from '../shared/formulas';
import { referenceText } from '../shared/wall-source';
import type { Block, CellContent, Formula } from '../workbook/port';

const TOGETHER = 'All that save together';
// Widths in characters: alternate, meaning, two numbers, what to know. Together they fit a page held sideways.
const WIDTHS = [30, 46, 14, 16, 34];
const PLACES = { hours: 6, money: 10 };

/**
 * A page of the alternates for an owner or an architect: words for what each is, formulas for what it comes to.
 * @param result the alternates
 * @param picked names of those that the page tells of
 * @param sheet name of the page
 * @param worked name of the sheet whose first cell spills the alternates
 * @returns what to write; it prints on one page
 */
export function ownerPage(
  result: AlternatesResult,
  picked: ReadonlySet<string>,
  sheet: string,
  worked: string,
): Block {
  const { base, lines, priced } = result;
  const spilled = referenceText({ sheet: worked, address: 'A:K' });
  const look = (name: string, place: number): Formula => ({
    formula: `=VLOOKUP(${quoted(exactly(name))},${spilled},${String(place)},FALSE)`,
  });
  const numbers = (name: string): (CellContent | Formula)[] => [
    ...(priced ? [look(name, PLACES.money)] : []),
    look(name, PLACES.hours),
  ];
  const rows: (CellContent | Formula)[][] = [
    ['Alternates to the wash-down of the facade'],
    [
      '',
      'Each alternate is a choice that changes the base bid by itself. A number with a minus sign is a deduct, one without is an add.',
    ],
    [''],
    [
      'Base bid',
      base.zones.map((each) => zoneInWords(each.zone.name, each)).join('; '),
      ...(priced ? [look('Base bid', 9)] : []),
      look('Base bid', 5),
      'What the base bid takes.',
    ],
    ['Alternate', 'What it changes', ...(priced ? ['Add or deduct'] : []), 'Labor-hours added', 'Notes'],
    ...lines
      .filter(({ alternate: { name } }) => picked.has(name))
      .map((line) => [
        line.alternate.name,
        `${whatInWords(line.alternate)}. ${line.moves.length === 0 ? 'The cleaner stays as it is.' : `Cleaner before: ${movesInWords(line, 'before')}. After: ${movesInWords(line, 'after')}.`}`,
        ...numbers(line.alternate.name),
        notesInWords(line, result).join(' '),
      ]),
    [
      TOGETHER,
      togetherInWords(result),
      ...numbers(TOGETHER),
      'Not the sum of the lines above: choices on the same walls affect each other.',
    ],
    [''],
    [
      '',
      'A class is a step of a scale from 0, clear water, to 3, buffered acid at full label strength. The bare material that tolerates least sets the strongest class that may be used.',
    ],
    [
      '',
      'The engineer and the code choose the mortar. Nothing here replaces a sample panel, the product label or the safety data sheet.',
    ],
  ];
  return {
    sheet,
    address: 'A1',
    rows,
    heading: true,
    widths: priced ? WIDTHS : WIDTHS.toSpliced(2, 1),
    print: { held: 'sideways', onePage: true },
  };
}

/** What looks a name up may not take a mark of it for any text. */
function exactly(name: string): string {
  return name.replace(/[~*?]/g, '~$&');
}
