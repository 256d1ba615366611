import { describe, expect, it } from 'vitest';
import { openWorkbook } from '../../../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../../../workbench/page/files/save-workbook';
import { openArchive, packArchive, partBytes, partText } from '../../../../workbench/xlsx/archive';
import { relationships } from '../../../../workbench/xlsx/parts';
import { readBook } from '../../../../workbench/xlsx/read-book';
import { rawArchive, rawFile, WALLS } from '../../raw-workbook';

const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

function link(id: string, type: string, target: string): string {
  return `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
}

function put(parts: Map<string, Uint8Array>, path: string, text: string): void {
  parts.set(path, partBytes(text));
}

/** A workbook with a chart, a chart sheet, macros, a signature and an order of calculation. */
function fullFile(): Uint8Array {
  const parts = new Map(
    rawArchive([WALLS, { name: 'Other', rows: '<row r="1"><c r="A1"><f>Walls!C2</f><v>100</v></c></row>' }]),
  );
  const workbook = partText(parts, 'xl/workbook.xml');
  put(
    parts,
    'xl/workbook.xml',
    workbook
      .replace('<sheets>', '<bookViews><workbookView activeTab="2"/></bookViews><sheets>')
      .replace('<sheet name="Other"', '<sheet name="Picture" sheetId="9" r:id="rId9"/><sheet name="Other"')
      .replace(
        '</sheets>',
        '</sheets><definedNames><definedName name="Rows" localSheetId="2">Other!$A$1</definedName></definedNames>',
      ),
  );
  const links = partText(parts, 'xl/_rels/workbook.xml.rels');
  put(
    parts,
    'xl/_rels/workbook.xml.rels',
    links.replace(
      '</Relationships>',
      link('rId9', `${OFFICE}/chartsheet`, 'chartsheets/sheet1.xml') +
        link('rId10', 'http://schemas.microsoft.com/office/2006/relationships/vbaProject', 'vbaProject.bin') +
        link('rId11', `${OFFICE}/calcChain`, 'calcChain.xml') +
        '</Relationships>',
    ),
  );
  put(parts, 'xl/chartsheets/sheet1.xml', '<chartsheet xmlns="urn:any"/>');
  put(parts, 'xl/vbaProject.bin', 'code');
  put(parts, 'xl/calcChain.xml', '<calcChain xmlns="urn:any"/>');
  const sheet = 'xl/worksheets/_rels/sheet1.xml.rels';
  put(
    parts,
    sheet,
    partText(parts, sheet).replace(
      '</Relationships>',
      link('rId7', `${OFFICE}/drawing`, '../drawings/drawing1.xml') + '</Relationships>',
    ),
  );
  put(parts, 'xl/drawings/drawing1.xml', '<wsDr xmlns="urn:any"/>');
  put(
    parts,
    'xl/drawings/_rels/drawing1.xml.rels',
    `<Relationships xmlns="${PACKAGE}">${link('rId1', `${OFFICE}/chart`, '/xl/charts/chart1.xml')}</Relationships>`,
  );
  put(parts, 'xl/charts/chart1.xml', '<c:chart xmlns:c="urn:chart"><c:f>Walls!$C$2:$C$4</c:f></c:chart>');
  const root = partText(parts, '_rels/.rels');
  const signature = 'http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin';
  put(
    parts,
    '_rels/.rels',
    root.replace(
      '</Relationships>',
      `${link('rId8', signature, '_xmlsignatures/origin.sigs')}</Relationships>`,
    ),
  );
  put(parts, '_xmlsignatures/origin.sigs', 'signed');
  return packArchive(parts);
}

describe('what the page does not show', () => {
  it('is said', async () => {
    expect((await openWorkbook(fullFile())).notShown).toEqual([
      'chart sheets',
      'charts',
      'digital signatures',
      'macros',
    ]);
  });

  it('stays in the file, but for macros and signatures, which are said to be lost', async () => {
    const bytes = fullFile();
    const shown = await openWorkbook(bytes);
    const walls = shown.snapshot.sheets[shown.snapshot.sheetOrder[0] ?? ''];
    if (walls) walls.name = 'Faces';
    const saved = await saveWorkbook(
      { ...shown, tables: shown.tables.map((table) => ({ ...table, sheet: 'Faces' })) },
      bytes,
    );
    expect(saved.lost).toEqual(['digital signatures', 'macros']);
    const archive = openArchive(saved.bytes);
    const kinds = relationships(archive, 'xl/workbook.xml').map(({ kind }) => kind);
    expect(kinds).toContain('chartsheet');
    expect(kinds).not.toContain('vbaProject');
    expect(kinds).not.toContain('calcChain');
    expect(
      ['xl/vbaProject.bin', 'xl/calcChain.xml', '_xmlsignatures/origin.sigs'].filter((path) =>
        archive.has(path),
      ),
    ).toEqual([]);
    expect(partText(archive, 'xl/charts/chart1.xml')).toContain("<c:f>'Faces'!$C$2:$C$4</c:f>");
    // Nothing led to it before either.
    expect(archive.has('custom/anything.bin')).toBe(true);
    const workbook = partText(archive, 'xl/workbook.xml');
    expect([...workbook.matchAll(/<sheet name="([^"]*)"/g)].map((each) => each[1])).toEqual([
      'Faces',
      'Picture',
      'Other',
    ]);
    expect(workbook).toContain('activeTab="2"');
    expect(readBook(archive).names).toEqual([{ name: 'Rows', formula: 'Other!$A$1', sheet: 'Other' }]);
    expect(readBook(archive).sheets[1]?.cells.get('A1')?.formula).toBe('Walls!C2');
  });

  it('keeps its place when sheets are moved and deleted', async () => {
    const bytes = fullFile();
    const shown = await openWorkbook(bytes);
    const [walls = '', other = ''] = shown.snapshot.sheetOrder;
    const sheets = Object.fromEntries(Object.entries(shown.snapshot.sheets).filter(([id]) => id !== walls));
    const saved = await saveWorkbook(
      { ...shown, tables: [], snapshot: { ...shown.snapshot, sheetOrder: [other], sheets } },
      bytes,
    );
    const archive = openArchive(saved.bytes);
    const workbook = partText(archive, 'xl/workbook.xml');
    expect([...workbook.matchAll(/<sheet name="([^"]*)"/g)].map((each) => each[1])).toEqual([
      'Other',
      'Picture',
    ]);
    expect(workbook).toContain('activeTab="0"');
    expect(readBook(archive).names[0]?.sheet).toBe('Other');
    expect(saved.lost).toEqual(['charts', 'digital signatures', 'macros']);
  });
});

describe('a file without looks, ids of cells or values', () => {
  it('opens, and can be saved', async () => {
    const rows =
      '<row><c t="inlineStr"><is><t>first</t></is></c><c><f>1+1</f></c></row><row r="5"><c r="B5" t="str"><f>"a"&amp;""</f><v></v></c></row>';
    const bytes = rawFile([{ name: 'Bare', rows }]);
    const shown = await openWorkbook(bytes);
    const sheet = shown.snapshot.sheets[shown.snapshot.sheetOrder[0] ?? ''];
    expect(sheet?.cellData?.[0]).toEqual({ 0: { v: 'first', t: 1 }, 1: { f: '=1+1' } });
    expect(sheet?.cellData?.[4]).toEqual({ 1: { f: '="a"&""', v: '', t: 1, custom: { keeps: 'single' } } });
    const saved = await saveWorkbook(shown, bytes);
    const cells = readBook(openArchive(saved.bytes)).sheets[0]?.cells;
    expect(cells?.get('A1')?.value).toBe('first');
    expect(cells?.get('B1')).toMatchObject({ formula: '1+1', value: null });
    expect(cells?.get('B5')).toMatchObject({ formula: '"a"&""', value: '' });
    expect(await openWorkbook(saved.bytes)).toEqual(shown);
  });

  it('has what-if tables as their values, and keeps them', async () => {
    const rows =
      '<row r="1"><c r="A1"><f t="dataTable" ref="A1:A2" dt2D="0" dtr="0" r1="C1"/><v>4</v></c></row><row r="2"><c r="A2"><v>5</v></c></row>';
    const bytes = rawFile([{ name: 'What if', rows }]);
    const shown = await openWorkbook(bytes);
    const sheet = shown.snapshot.sheets[shown.snapshot.sheetOrder[0] ?? ''];
    expect(sheet?.cellData?.[0]?.[0]).toEqual({ v: 4, t: 2 });
    expect(shown.notShown).toEqual(['what-if tables']);
    const kept = await saveWorkbook(shown, bytes);
    expect(partText(openArchive(kept.bytes), 'xl/worksheets/sheet1.xml')).toContain(rows);
    if (sheet?.cellData?.[0]) sheet.cellData[0][0] = { v: 6, t: 2 };
    expect((await saveWorkbook(shown, bytes)).lost).toEqual(['what-if tables']);
  });
});

describe('a file that cannot be used', () => {
  const old = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0, 0]);
  const cut = rawFile([WALLS]).slice(0, 200);
  const broken = new Map(rawArchive([WALLS]));
  broken.set('xl/worksheets/sheet1.xml', partBytes('<worksheet><sheetData><row r="1">'));
  const badTable = new Map(rawArchive([WALLS]));
  badTable.set(
    'xl/tables/table1.xml',
    partBytes(partText(badTable, 'xl/tables/table1.xml').replace('A1:C4', 'nowhere')),
  );
  const without = new Map(rawArchive([WALLS]));
  without.delete('xl/worksheets/sheet1.xml');

  it.each([
    [new Uint8Array(), 'The file is empty.'],
    [new TextEncoder().encode('Wall,Area'), 'it is not a zip file'],
    [old, 'is an old .xls workbook or is protected by a password'],
    [cut, 'The file is damaged: its zip cannot be read'],
    [packArchive(broken), 'xl/worksheets/sheet1.xml has no complete cell data'],
    [packArchive(badTable), '"nowhere" is not a cell or a range'],
    [packArchive(without), 'its part xl/worksheets/sheet1.xml is missing'],
  ])('is refused with the reason (%#)', async (bytes, reason) => {
    await expect(openWorkbook(bytes)).rejects.toThrow(
      expect.objectContaining({ name: 'BadFile', message: expect.stringContaining(reason) as string }),
    );
  });
});
