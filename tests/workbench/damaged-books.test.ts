import { describe, expect, it } from 'vitest';
import { partBytes, partText, type Archive } from '../../workbench/xlsx/archive';
import { BadFile } from '../../workbench/xlsx/bad-file';
import { readBook } from '../../workbench/xlsx/read-book';
import { scanSheet } from '../../workbench/xlsx/sheet-scan';
import { parseXml } from '../../workbench/xlsx/xml';
import { rawArchive, WALLS } from './raw-workbook';

const SHEET = 'xl/worksheets/sheet1.xml';

function bid(rows: string, strings: readonly string[] = []): Archive {
  return rawArchive([{ name: 'Bid', rows }], '', strings);
}

function withPart(path: string, change: (text: string) => string): Archive {
  const archive = rawArchive([WALLS, { name: 'Bid', rows: '' }]);
  return new Map(archive).set(path, partBytes(change(partText(archive, path))));
}

describe('a workbook that does not hold together', () => {
  it.each<[string, Archive, RegExp]>([
    ['a cell twice', bid('<row r="1"><c r="A1"><v>1</v></c><c r="A1"><v>2</v></c></row>'), /cell A1 twice/],
    ['a row twice', bid('<row r="1"><c r="A1"><v>1</v></c></row><row r="1"/>'), /row 1 twice/],
    ['a cell in another row', bid('<row r="1"><c r="A2"><v>1</v></c></row>'), /a cell A2 in row 1/],
    ['a row beyond the last', bid('<row r="1048577"/>'), /beyond the end of a sheet/],
    ['a column beyond the last', bid('<row r="1"><c r="XFE1"><v>1</v></c></row>'), /a cell XFE1/],
    ['a cell within a cell', bid('<row r="1"><c r="A1"><c r="B1"/></c></row>'), /no complete cell data/],
    ['a value that does not end', bid('<row r="1"><c r="A1"><v>1</c></row>'), /no complete cell data/],
    ['a comment that does not end', bid('<!-- <row r="1"/>'), /no complete cell data/],
    [
      'a text that is not there',
      bid('<row r="1"><c r="A1" t="s"><v>2</v></c></row>', ['a', 'b']),
      /A1 has the shared text number 2, and there are 2/,
    ],
    [
      'an array of a whole sheet',
      bid('<row r="90"><c r="A90"><f t="array" ref="A90:XFD1048576">1</f></c></row>'),
      /A90:XFD1048576 fills 17,178,411,008 cells/,
    ],
    [
      'an array beyond the sheet',
      bid('<row r="1"><c r="A1"><f t="array" ref="A1:A9999999">1</f></c></row>'),
      /"A1:A9999999" is not a cell or a range. Accepted: A1 to XFD1048576/,
    ],
    [
      'definitions of its own',
      withPart('xl/workbook.xml', (xml) => `<!DOCTYPE a [<!ENTITY b "c">]>${xml}`),
      /has a document type/,
    ],
    [
      'definitions in a sheet',
      withPart(SHEET, (xml) => `<!DOCTYPE a [<!ENTITY b "c">]>${xml}`),
      /has a document type/,
    ],
    [
      'a sheet that leads nowhere',
      withPart('xl/workbook.xml', (xml) => xml.replace('r:id="rId2"', 'r:id="rId7"')),
      /"Bid" leads to no part/,
    ],
    [
      'two sheets in one part',
      withPart('xl/workbook.xml', (xml) => xml.replace('r:id="rId2"', 'r:id="rId1"')),
      /sheet1.xml of a sheet is there twice/,
    ],
    [
      'two sheets of one name',
      withPart('xl/workbook.xml', (xml) => xml.replace('name="Bid"', 'name="walls"')),
      /the sheet "walls" is there twice/,
    ],
    [
      'texts without their part',
      new Map([...rawArchive([WALLS])].filter(([path]) => path !== 'xl/sharedStrings.xml')),
      /sharedStrings.xml is missing/,
    ],
    [
      'a text within a text',
      withPart('xl/sharedStrings.xml', (xml) => xml.replace('</sst>', '<si><si><t>a</t></si></si></sst>')),
      /a text that does not end/,
    ],
  ])('is refused with the reason: %s', (_, archive, reason) => {
    expect(() => readBook(archive)).toThrow(reason);
    expect(() => readBook(archive)).toThrow(BadFile);
  });

  it('is refused where it is nested without end', () => {
    const deep = `${'<a>'.repeat(100_000)}${'</a>'.repeat(100_000)}`;
    expect(() => parseXml(deep, 'xl/deep.xml')).toThrow(/nested deeper than 200 levels/);
  });

  it('is refused where it has more cells than can be worked on', () => {
    const rows = (cells: number): string =>
      `<sheetData><row>${'<c><v>1</v></c>'.repeat(cells)}</row></sheetData>`;
    expect(scanSheet(rows(9), 'a', 10).rows[0]?.cells).toHaveLength(9);
    expect(() => scanSheet(rows(10), 'a', 10)).toThrow(/more than 10 rows and cells/);
  });

  // Each of these took time that grew with the square of the length.
  it.each([
    ['comments', '<!--'],
    ['raw sections', '<![CDATA['],
    ['formulas', '<c><f>'],
    ['texts', '<c t="inlineStr"><is><t>'],
    ['tags', '<c r="'],
    ['values', '<c><v '],
  ])('is refused soon where a hundred thousand %s do not end', (_, tag) => {
    expect(() => readBook(bid(`<row r="1">${tag.repeat(100_000)}`))).toThrow(BadFile);
  });
});

describe('marks of XML in cells', () => {
  it('are read as the characters that they stand for, and comments not at all', () => {
    const rows =
      '<row r="1"><c r="A1"><!-- <v>9</v> --><v>5</v></c><c r="B1" t="str"><v><![CDATA[a<b&]]></v></c>' +
      '<!-- <c r="C1"><v>1</v></c> --><c r="D1" t="s"><v>0</v></c><c r="E1"><f><![CDATA[1<2]]></f><v>1</v></c></row>';
    const [sheet] = readBook(bid(rows, ['<![CDATA[<c>]]> &amp; more'])).sheets;
    expect(
      [...(sheet?.cells ?? [])].map(([address, { value, formula }]) => [address, value, formula]),
    ).toEqual([
      ['A1', 5, undefined],
      ['B1', 'a<b&', undefined],
      ['D1', '<c> & more', undefined],
      ['E1', 1, '1<2'],
    ]);
  });

  it('are read as an error where a number is none', () => {
    const [sheet] = readBook(bid('<row r="1"><c r="A1"><v>1,5</v></c></row>')).sheets;
    expect(sheet?.cells.get('A1')?.value).toEqual({
      error: '#NUM!',
      message: 'The file has "1,5" where a number should be.',
    });
  });
});
