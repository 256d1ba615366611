import { partText, type Archive } from './archive';
import { relationships, workbookPart } from './parts';
import { elements, parseXml } from './xml';

// Last but one word of the content type of the workbook part ([MS-OFFMACRO2] 2.3.2; ECMA-376 Part 1, 12.3.23).
const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/ms-excel\.sheet\.macroenabled/i, '.xlsm'],
  [/ms-excel\.template\.macroenabled/i, '.xltm'],
  [/ms-excel\.addin\.macroenabled/i, '.xlam'],
  [/spreadsheetml\.template/i, '.xltx'],
];

/**
 * What the name of a workbook file ends in, as its content says.
 * @param archive the file
 * @returns for example `.xlsx`
 * @throws {BadFile} where the file is no workbook
 */
export function endingOf(archive: Archive): string {
  const path = `/${workbookPart(archive)}`.toLowerCase();
  const types = '[Content_Types].xml';
  const type = elements(parseXml(partText(archive, types), types), 'Override')
    .find((each) => each.getAttribute('PartName')?.toLowerCase() === path)
    ?.getAttribute('ContentType');
  return ENDINGS.find(([pattern]) => pattern.test(type ?? ''))?.[1] ?? '.xlsx';
}

/**
 * Whether a workbook carries a digital signature, which holds for its bytes as they are.
 * @param archive the file
 * @returns true where it does
 */
export function isSigned(archive: Archive): boolean {
  return relationships(archive, '').some(({ kind }) => kind === 'origin');
}
