import { describe, expect, it } from 'vitest';
import { estimateBook } from '../../workbench/estimate/estimate-book';
import { openArchive, packArchive, partText, type Archive } from '../../workbench/xlsx/archive';
import { readBook } from '../../workbench/xlsx/read-book';
import { asCalculated, withRecalculationOnOpen } from '../../workbench/xlsx/calculation-settings';
import { fakeBundle } from './fake-bundle';
import { rawArchive, WALLS } from './raw-workbook';

const BID = 'xl/worksheets/sheet2.xml';

async function estimated(
  rows: string,
  extra = '',
): Promise<{ before: Archive; after: Archive; bid: string }> {
  const before = rawArchive([WALLS, { name: 'Bid', rows }], extra, ['shared']);
  const { archive } = await estimateBook(before, fakeBundle());
  const after = openArchive(packArchive(archive));
  return { before, after, bid: /<sheetData>(.*)<\/sheetData>/.exec(partText(after, BID))?.[1] ?? '' };
}

function changedParts(before: Archive, after: Archive): string[] {
  return [...after.keys()].filter((path) => {
    const [was, is] = [before.get(path), after.get(path)];
    return !was || !is || Buffer.compare(was, is) !== 0;
  });
}

describe('writing values beside formulas', () => {
  it('changes the Washdown cells of the sheet, byte for byte nothing else', async () => {
    const rows =
      '<row r="1" spans="1:3" ht="20"><c r="A1" s="7"><f>_xldudf_WASH_WATER(Walls[#All])</f><v>1</v></c><c r="B1"><f>A1*2</f><v>2</v></c><c r="C1" t="s"><v>0</v></c></row>' +
      '<row r="2"><c r="A2" s="1" t="str"><f ca="1">_xldudf_WASH_GOVERNOR(Walls[#All])</f><v>old</v></c></row>';
    const { before, after } = await estimated(rows);
    expect(changedParts(before, after)).toEqual([BID]);
    expect(partText(after, BID)).toBe(
      partText(before, BID)
        .replace(
          '<f>_xldudf_WASH_WATER(Walls[#All])</f><v>1</v>',
          '<f>_xldudf_WASH_WATER(Walls[#All])</f><v>360</v>',
        )
        .replace('<f>A1*2</f><v>2</v>', '<f>A1*2</f><v>720</v>')
        .replace('<v>old</v>', '<v>W1</v>'),
    );
  });

  it('stores what was typed in the form that a spreadsheet finds', async () => {
    const { bid } = await estimated(
      '<row r="1"><c r="A1"><f>1+WASH.WATER(Walls!A1:C4,"South")</f></c></row>',
    );
    expect(bid).toBe(
      '<row r="1"><c r="A1"><f>1+_xldudf_WASH_WATER(Walls!A1:C4,"South")</f><v>301</v></c></row>',
    );
  });

  it('writes errors as error cells', async () => {
    const { bid } = await estimated(
      '<row r="1"><c r="A1"><f>_xldudf_WASH_WATER(Walls[#All],"West")</f><v>3</v></c></row>',
    );
    expect(bid).toBe(
      '<row r="1"><c r="A1" t="e"><f>_xldudf_WASH_WATER(Walls[#All],"West")</f><v>#N/A</v></c></row>',
    );
  });

  it('marks a spilling formula as a dynamic array and adds what the mark needs', async () => {
    const { before, after, bid } = await estimated(
      '<row r="2"><c r="B2"><f>WASH.SCHEDULE(Walls[#All])</f></c></row><row r="4"><c r="C4" s="9"/><c r="D4"><v>8</v></c></row>',
    );
    expect(bid).toBe(
      '<row r="2"><c r="B2" cm="1" t="str"><f t="array" ref="B2:C4">_xldudf_WASH_SCHEDULE(Walls[#All])</f><v>Zone</v></c><c r="C2" t="str"><v>Water, gal</v></c></row>' +
        '<row r="3"><c r="B3" t="str"><v>South</v></c><c r="C3"><v>300</v></c></row>' +
        '<row r="4"><c r="B4" t="str"><v>North</v></c><c r="C4" s="9"><v>60</v></c><c r="D4"><v>8</v></c></row>',
    );
    expect(changedParts(before, after)).toEqual([
      '[Content_Types].xml',
      'xl/_rels/workbook.xml.rels',
      BID,
      'xl/metadata.xml',
    ]);
    expect(partText(after, 'xl/metadata.xml')).toContain('fDynamic="1"');
    const again = await estimateBook(after, fakeBundle());
    expect(changedParts(after, again.archive)).toEqual([]);
  });

  it('finds its number among marks that the file has', async () => {
    const before = new Map(
      rawArchive([WALLS, { name: 'Bid', rows: '<row r="1"><c r="A1"><f>WASH.MIXED()</f></c></row>' }]),
    );
    const links = 'xl/_rels/workbook.xml.rels';
    const link =
      '<Relationship Id="rId7" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>';
    before.set(links, Buffer.from(partText(before, links).replace('</Relationships>', link)));
    before.set(
      'xl/metadata.xml',
      Buffer.from(
        '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><metadataTypes count="1"><metadataType name="OTHER" cellMeta="1"/></metadataTypes><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>',
      ),
    );
    const { archive } = await estimateBook(before, fakeBundle());
    expect(partText(archive, BID)).toContain('<c r="A1" cm="2"><f t="array" ref="A1:B2">');
    const metadata = partText(archive, 'xl/metadata.xml');
    expect(metadata).toContain('<metadataType name="OTHER" cellMeta="1"/><metadataType name="XLDAPR"');
    expect(metadata).toContain(
      '<cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata>',
    );
    expect(archive.get('[Content_Types].xml')).toBe(before.get('[Content_Types].xml'));
  });

  it('clears what a smaller spill leaves behind and keeps the formats', async () => {
    const { bid } = await estimated(
      '<row r="1"><c r="A1" cm="1" t="str"><f t="array" ref="A1:C4">_xldudf_WASH_SCHEDULE(Walls[#All])</f><v>Zone</v></c><c r="B1" t="str"><v>x</v></c><c r="C1" t="str"><v>y</v></c></row>' +
        '<row r="4"><c r="A4" s="2"><v>9</v></c><c r="B4"><v>9</v></c><c r="D4"><v>1</v></c></row>',
    );
    expect(bid).toContain('<f t="array" ref="A1:B3">');
    expect(bid).not.toContain('r="C1"');
    expect(bid).toContain('<row r="4"><c r="A4" s="2"/><c r="D4"><v>1</v></c></row>');
  });

  it('overwrites nothing where a spill has no room', async () => {
    const { bid } = await estimated(
      '<row r="1"><c r="A1"><f>_xldudf_WASH_SCHEDULE(Walls[#All])</f></c></row><row r="3"><c r="A3"><v>77</v></c></row>',
    );
    // The format has no name for this error; a spreadsheet finds it again when it recalculates.
    expect(bid).toBe(
      '<row r="1"><c r="A1" cm="1" t="e"><f t="array" ref="A1">_xldudf_WASH_SCHEDULE(Walls[#All])</f><v>#VALUE!</v></c></row><row r="3"><c r="A3"><v>77</v></c></row>',
    );
  });

  it('takes apart a shared formula whose text changes', async () => {
    const { bid } = await estimated(
      '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="3">WASH.ECHO(B1)</f></c><c r="B1"><v>1</v></c></row>' +
        '<row r="2"><c r="A2"><f t="shared" si="3"/></c><c r="B2"><v>2</v></c></row>',
    );
    expect(bid).toContain('<c r="A1" t="str"><f>_xldudf_WASH_ECHO(B1)</f><v>[[1]]</v></c>');
    expect(bid).toContain('<c r="A2" t="str"><f>_xldudf_WASH_ECHO(B2)</f><v>[[2]]</v></c>');
  });

  it('leaves a shared formula shared where only its values change', async () => {
    const { bid } = await estimated(
      '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="3">_xldudf_WASH_ECHO(B1)</f></c></row><row r="2"><c r="A2"><f t="shared" si="3"/></c></row>',
    );
    expect(bid).toContain('<f t="shared" ref="A1:A2" si="3">_xldudf_WASH_ECHO(B1)</f><v>');
    expect(bid).toContain('<c r="A2" t="str"><f t="shared" si="3"/><v>');
  });

  it('gives an ordinary formula its new value where it depends on Washdown, over names, spills and whole columns', async () => {
    const rows =
      '<row r="1"><c r="A1"><f>_xldudf_WASH_WATER(Walls[#All])</f></c><c r="B1"><f>A1/2</f></c><c r="C1"><f>B1+1</f><v>1</v></c><c r="D1"><f>Total*2</f></c><c r="E1"><f>SUM(Bid!$A:$A)</f></c><c r="F1"><f>1+1</f></c><c r="G1"><f>WASH.SCHEDULE(Walls[#All])</f></c></row>' +
      '<row r="9"><c r="B9"><f>SUM(_xlfn.ANCHORARRAY(G1))</f></c></row>';
    const names = '<definedNames><definedName name="Total">Bid!$A$1</definedName></definedNames>';
    const before = rawArchive([WALLS, { name: 'Bid', rows }], names);
    const { archive, left, recalculates } = await estimateBook(before, fakeBundle());
    const cells = readBook(archive).sheets[1]?.cells;
    const value = (address: string) => cells?.get(address)?.value;
    expect(['B1', 'C1', 'D1', 'E1', 'B9'].map(value)).toEqual([180, 181, 720, 360, 360]);
    // It does not depend on Washdown, and is not touched.
    expect(value('F1')).toBeNull();
    expect([left, recalculates]).toEqual([[], true]);
    const all = await estimateBook(before, fakeBundle(), true);
    expect(readBook(all.archive).sheets[1]?.cells.get('F1')?.value).toBe(2);
    expect(partText(all.archive, 'xl/workbook.xml')).toContain('<calcPr calcId="191029"/>');
  });

  it('leaves and lists what depends on Washdown and cannot be worked out here, and what depends on that', async () => {
    const rows =
      '<row r="1"><c r="A1"><f>_xldudf_WASH_WATER(Walls[#All])</f><v>1</v></c><c r="B1"><f>_xldudf_OTHER_THING(A1)</f><v>4</v></c><c r="C1"><f>B1+1</f><v>5</v></c><c r="D1"><f>_xldudf_OTHER_THING(Walls!C2)</f><v>6</v></c><c r="E1"><f>A1+1</f><v>2</v></c></row>';
    const before = rawArchive([WALLS, { name: 'Bid', rows }], '<calcPr calcId="5"/>');
    const { archive, left, recalculates } = await estimateBook(before, fakeBundle());
    const cells = readBook(archive).sheets[1]?.cells;
    expect(['A1', 'B1', 'C1', 'D1', 'E1'].map((address) => cells?.get(address)?.value)).toEqual([
      360, 4, 5, 6, 361,
    ]);
    expect(left.map(({ column }) => column)).toEqual([1, 2]);
    expect(recalculates).toBe(true);
    // Nothing is forced, and nothing is claimed.
    expect(partText(archive, 'xl/workbook.xml')).toContain('<calcPr calcId="5"/>');
  });

  it('writes no grid over the neighbours of a formula that the file keeps as one of a single cell', async () => {
    const rows =
      '<row r="1"><c r="A1"><f>_xldudf_WASH_WATER(Walls[#All])</f></c></row><row r="3"><c r="B3"><f>A1*Walls!C2:C4</f><v>7</v></c></row><row r="4"><c r="B4"><v>8</v></c></row>';
    const { archive, left } = await estimateBook(rawArchive([WALLS, { name: 'Bid', rows }]), fakeBundle());
    const cells = readBook(archive).sheets[1]?.cells;
    // Its own row of the range: 360 * 50.
    expect([cells?.get('B3')?.value, cells?.get('B4')?.value]).toEqual([18000, 8]);
    expect(left).toEqual([]);
  });
});

describe('a file that a spreadsheet without the add-in opens', () => {
  const uri = '{B58B0392-4F1F-4190-BB64-5DF3571DCE5F}';
  const names = ['RD', 'Single', 'FV', 'CNMTM', 'LET_WF', 'LAMBDA_WF', 'ARRAYTEXT_WF'];
  const feature = (prefix: string) => (name: string) => `<${prefix}:feature name="microsoft.com:${name}"/>`;
  const ext = `<ext uri="${uri}" xmlns:xcalcf="http://schemas.microsoft.com/office/spreadsheetml/2018/calcfeatures"><xcalcf:calcFeatures>${names.map(feature('xcalcf')).join('')}</xcalcf:calcFeatures></ext>`;

  // ISO/IEC 29500-1, 18.2.2: a file of an older engine, or one that asks for it, is worked out anew on opening; [MS-XLSX]
  // 2.4.82: so is one that does not list what the engine can do.
  it.each([
    ['<calcPr calcId="1" fullCalcOnLoad="1"/>', '<calcPr calcId="191029"/>'],
    ['<calcPr fullCalcOnLoad="true" calcMode="manual"/>', '<calcPr calcId="191029" calcMode="manual"/>'],
    ['<calcPr calcId="191029"/>', '<calcPr calcId="191029"/>'],
    ['<calcPr iterate="1" calcId="200000"></calcPr>', '<calcPr iterate="1" calcId="200000"></calcPr>'],
    ['<definedNames/><oleSize ref="A1"/>', '<definedNames/><calcPr calcId="191029"/><oleSize ref="A1"/>'],
  ])('%s', (before, after) => {
    const archive = asCalculated(rawArchive([WALLS], before));
    expect(partText(archive, 'xl/workbook.xml')).toContain(
      `</sheets>${after}<extLst>${ext}</extLst></workbook>`,
    );
  });

  it.each([
    ['another extension', '<extLst><ext uri="{1}"/></extLst>', `<extLst><ext uri="{1}"/>${ext}</extLst>`],
    ['an empty list', '<extLst/>', `<extLst>${ext}</extLst>`],
    ['all features', `<extLst>${ext}</extLst>`, `<extLst>${ext}</extLst>`],
    [
      'those of an earlier engine',
      `<extLst><ext uri="${uri}"><y:calcFeatures xmlns:y="z"><y:feature name="microsoft.com:RD"/></y:calcFeatures></ext></extLst>`,
      `<extLst><ext uri="${uri}"><y:calcFeatures xmlns:y="z">${names.map(feature('y')).join('')}</y:calcFeatures></ext></extLst>`,
    ],
  ])('keeps %s', (_, before, after) => {
    const archive = asCalculated(rawArchive([WALLS], `<calcPr calcId="191029"/>${before}`));
    expect(partText(archive, 'xl/workbook.xml')).toContain(
      `</sheets><calcPr calcId="191029"/>${after}</workbook>`,
    );
  });
});

describe('asking for a recalculation on opening', () => {
  it.each([
    ['<calcPr calcId="1"/>', '<calcPr calcId="1" fullCalcOnLoad="1"/>'],
    ['<calcPr fullCalcOnLoad="0" calcId="1"></calcPr>', '<calcPr calcId="1" fullCalcOnLoad="1"></calcPr>'],
    ['<calcPr fullCalcOnLoad="true"/>', '<calcPr fullCalcOnLoad="true"/>'],
    ['<definedNames/><oleSize ref="A1"/>', '<definedNames/><calcPr fullCalcOnLoad="1"/><oleSize ref="A1"/>'],
  ])('%s', (before, after) => {
    const archive = withRecalculationOnOpen(rawArchive([WALLS], before));
    expect(partText(archive, 'xl/workbook.xml')).toContain(`</sheets>${after}</workbook>`);
  });
});
