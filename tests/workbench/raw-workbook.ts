import { packArchive, partBytes, type Archive } from '../../workbench/xlsx/archive';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';

/** A sheet given as the XML of its rows, so that a test has every character of it in hand. */
export interface RawSheet {
  readonly name: string;
  readonly rows: string;
  readonly tables?: readonly { name: string; ref: string; columns: readonly string[]; totals?: boolean }[];
}

function tableXml(id: number, table: NonNullable<RawSheet['tables']>[number]): string {
  const columns = table.columns
    .map((name, index) => `<tableColumn id="${String(index + 1)}" name="${name}"/>`)
    .join('');
  return `<table xmlns="${MAIN}" id="${String(id)}" name="${table.name}" displayName="${table.name}" ref="${table.ref}"${table.totals ? ' totalsRowCount="1"' : ''}><tableColumns count="${String(table.columns.length)}">${columns}</tableColumns></table>`;
}

/**
 * Builds the parts of a workbook.
 * @param sheets its sheets
 * @param extra XML to put behind the list of sheets in the workbook part
 * @param strings the shared strings
 * @returns the parts
 */
export function rawArchive(
  sheets: readonly RawSheet[],
  extra = '',
  strings: readonly string[] = [],
): Archive {
  const parts = new Map<string, string>();
  parts.set(
    '[Content_Types].xml',
    `<Types xmlns="${PACKAGE}/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>`,
  );
  parts.set(
    '_rels/.rels',
    `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
  );
  const list = sheets
    .map(
      ({ name }, index) =>
        `<sheet name="${name}" sheetId="${String(index + 1)}" r:id="rId${String(index + 1)}"/>`,
    )
    .join('');
  parts.set(
    'xl/workbook.xml',
    `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${list}</sheets>${extra}</workbook>`,
  );
  const links = sheets
    .map(
      (_, index) =>
        `<Relationship Id="rId${String(index + 1)}" Type="${OFFICE}/worksheet" Target="worksheets/sheet${String(index + 1)}.xml"/>`,
    )
    .join('');
  parts.set(
    'xl/_rels/workbook.xml.rels',
    `<Relationships xmlns="${PACKAGE}/relationships">${links}<Relationship Id="rId90" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/></Relationships>`,
  );
  parts.set(
    'xl/sharedStrings.xml',
    `<sst xmlns="${MAIN}">${strings.map((text) => `<si><t>${text}</t></si>`).join('')}</sst>`,
  );
  let tables = 0;
  for (const [index, sheet] of sheets.entries()) {
    const path = `xl/worksheets/sheet${String(index + 1)}.xml`;
    parts.set(
      path,
      `<worksheet xmlns="${MAIN}"><dimension ref="A1:C9"/><sheetData>${sheet.rows}</sheetData><pageMargins left="0.7"/></worksheet>`,
    );
    const relations: string[] = [];
    for (const table of sheet.tables ?? []) {
      tables += 1;
      parts.set(`xl/tables/table${String(tables)}.xml`, tableXml(tables, table));
      relations.push(
        `<Relationship Id="rId${String(tables)}" Type="${OFFICE}/table" Target="../tables/table${String(tables)}.xml"/>`,
      );
    }
    if (relations.length > 0) {
      parts.set(
        `xl/worksheets/_rels/sheet${String(index + 1)}.xml.rels`,
        `<Relationships xmlns="${PACKAGE}/relationships">${relations.join('')}</Relationships>`,
      );
    }
  }
  // A part that nothing refers to and nobody may touch.
  parts.set('custom/anything.bin', '\u0000\u0001 left alone');
  return new Map([...parts].map(([path, text]) => [path, partBytes(text)]));
}

/**
 * The bytes of a workbook.
 * @param sheets its sheets
 * @returns the file
 */
export function rawFile(sheets: readonly RawSheet[]): Uint8Array {
  return packArchive(rawArchive(sheets));
}

/** A sheet of three walls in two zones: 100 and 50 in South, 30 in North; table Walls, A1:C4. */
export const WALLS: RawSheet = {
  name: 'Walls',
  rows: [
    '<row r="1"><c r="A1" t="inlineStr"><is><t>Wall</t></is></c><c r="B1" t="inlineStr"><is><t>Zone</t></is></c><c r="C1" t="inlineStr"><is><t>Area</t></is></c></row>',
    '<row r="2"><c r="A2" t="inlineStr"><is><t>W1</t></is></c><c r="B2" t="inlineStr"><is><t>South</t></is></c><c r="C2" s="4"><v>100</v></c></row>',
    '<row r="3"><c r="A3" t="inlineStr"><is><t>W2</t></is></c><c r="B3" t="inlineStr"><is><t>South</t></is></c><c r="C3"><f>C2/2</f></c></row>',
    '<row r="4"><c r="A4" t="inlineStr"><is><t>W3</t></is></c><c r="B4" t="inlineStr"><is><t>North</t></is></c><c r="C4"><f>C2*0.3</f><v>30</v></c></row>',
  ].join(''),
  tables: [{ name: 'Walls', ref: 'A1:C4', columns: ['Wall', 'Zone', 'Area'] }],
};
