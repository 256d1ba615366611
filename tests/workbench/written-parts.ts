import { DOMParser, type Element } from '@xmldom/xmldom';
import { partText, type Archive } from '../../workbench/xlsx/archive';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/**
 * Children in their order (ECMA-376 Part 1, annex A.2: the sequences of the types of these elements). The schema itself
 * is not kept here.
 */
const ORDER: Readonly<Record<string, string>> = {
  // 18.2.27
  workbook:
    'fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches smartTagPr smartTagTypes webPublishing fileRecoveryPr webPublishObjects extLst',
  // 18.3.1.99
  worksheet:
    'sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF drawingHF picture oleObjects controls webPublishItems tableParts extLst',
  // 18.3.1.80, 18.3.1.73, 18.3.1.4
  sheetData: 'row',
  row: 'c extLst',
  c: 'f v is extLst',
  // 18.8.39
  styleSheet: 'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst',
  xf: 'alignment protection extLst',
  // 18.5.1.2, 18.5.1.3
  table: 'autoFilter sortState tableColumns tableStyleInfo extLst',
  tableColumn: 'calculatedColumnFormula totalsRowFormula xmlColumnPr extLst',
  // 18.4.9, 18.9.10
  sst: 'si extLst',
  metadata: 'metadataTypes metadataStrings mdxMetadata futureMetadata cellMetadata valueMetadata extLst',
};
/** What stands more than once where its parent has an order. */
const MANY = new Set(['row', 'c', 'si', 'cols', 'conditionalFormatting', 'futureMetadata']);
/** Attributes that must be there (the same annex). */
const REQUIRED: Readonly<Record<string, string>> = {
  sheet: 'name sheetId r:id',
  definedName: 'name',
  dimension: 'ref',
  col: 'min max',
  mergeCell: 'ref',
  tablePart: 'r:id',
  dataValidation: 'sqref',
  cfRule: 'priority',
  numFmt: 'numFmtId formatCode',
  table: 'id displayName ref',
  tableColumn: 'id name',
  metadataType: 'name minSupportedVersion',
};
// 18.18.11
const CELL_TYPES = ['b', 'd', 'e', 'inlineStr', 'n', 's', 'str'];
const ERRORS = /^#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|SPILL!|CALC!|GETTING_DATA)$/;

// A large part that several archives have alike is parsed once.
const known = new WeakMap<Uint8Array, Element>();

function parsed(archive: Archive, path: string): Element {
  const bytes = archive.get(path);
  const before = bytes && known.get(bytes);
  if (before) return before;
  const document = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${path}: ${level}: ${message}`);
    },
  }).parseFromString(partText(archive, path), 'text/xml');
  if (!document.documentElement) throw new Error(`${path} is empty.`);
  if (bytes) known.set(bytes, document.documentElement);
  return document.documentElement;
}

function childrenOf(element: Element): Element[] {
  return [...element.childNodes].filter((node) => node.nodeType === 1) as Element[];
}

function allIn(element: Element, name: string): Element[] {
  return [...element.getElementsByTagNameNS(MAIN, name)];
}

/** What is wrong in the order of children and in attributes, in one part. */
function wrongShape(path: string, root: Element): string[] {
  const wrong: string[] = [];
  const look = (element: Element): void => {
    const name = element.localName ?? '';
    const children = childrenOf(element);
    if (element.namespaceURI === MAIN) {
      for (const attribute of REQUIRED[name]?.split(' ') ?? []) {
        const [, link] = /^r:(.+)/.exec(attribute) ?? [];
        const there =
          link === undefined ? element.hasAttribute(attribute) : element.hasAttributeNS(LINKS, link);
        if (!there) wrong.push(`${path}: a ${name} has no ${attribute}`);
      }
      const order = ORDER[name]?.split(' ');
      let last = -1;
      for (const child of order ? children : []) {
        if (child.namespaceURI !== MAIN) continue;
        const at = order?.indexOf(child.localName ?? '') ?? -1;
        const again = at === last && !MANY.has(child.localName ?? '');
        if (at < 0 || at < last || again)
          wrong.push(`${path}: ${String(child.localName)} is out of place in ${name}`);
        last = Math.max(last, at);
      }
    }
    children.forEach(look);
  };
  look(root);
  return wrong;
}

function columnOf(address: string): number {
  return Array.from(address.replace(/\d/g, '')).reduce(
    (sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
    0,
  );
}

/** How many styles, shared texts and marks there are to point at. */
interface Counts {
  readonly styles: number;
  readonly texts: number;
  readonly marks: number;
}

/** What is wrong with the cells of one sheet (18.3.1.73, 18.3.1.4). */
function wrongCells(path: string, sheet: Element, { styles, texts, marks }: Counts): string[] {
  const wrong: string[] = [];
  let row = 0;
  for (const line of allIn(sheet, 'row')) {
    const number = Number(line.getAttribute('r') ?? row + 1);
    if (number <= row) wrong.push(`${path}: row ${String(number)} is behind row ${String(row)}`);
    row = number;
    let column = 0;
    for (const cell of allIn(line, 'c')) {
      const at = cell.getAttribute('r') ?? '';
      const say = (what: string) => wrong.push(`${path}: ${at} ${what}`);
      if (!at.endsWith(String(number)) || columnOf(at) <= column) say('is out of place');
      column = columnOf(at);
      if (Number(cell.getAttribute('s') ?? 0) >= styles) say('has a style that is not there');
      const mark = cell.getAttribute('cm');
      if (mark !== null && (Number(mark) < 1 || Number(mark) > marks)) say('has a mark that is not there');
      const type = cell.getAttribute('t') ?? 'n';
      if (!CELL_TYPES.includes(type)) say(`is of type ${type}`);
      const [value] = allIn(cell, 'v').map((each) => each.textContent ?? '');
      if (value === undefined) continue;
      if (type === 'n' && !Number.isFinite(Number(value || NaN))) say('holds no number');
      if (type === 's' && !(Number(value) < texts)) say('has a text that is not there');
      if (type === 'b' && !/^[01]$/.test(value)) say('is neither true nor false');
      if (type === 'e' && !ERRORS.test(value)) say('is no error');
    }
  }
  return wrong;
}

/** Where the relationships of a part stand, and where a target of them leads. */
function relationshipsOf(path: string): string {
  const at = path.lastIndexOf('/') + 1;
  return `${path.slice(0, at)}_rels/${path.slice(at)}.rels`;
}

function targetOf(path: string, target: string): string {
  return new URL(target, `file:///${path}`).pathname.slice(1);
}

/** What is wrong in the package (ECMA-376 Part 2: every part has a type, every relationship leads to a part). */
function wrongPackage(archive: Archive): string[] {
  const types = childrenOf(parsed(archive, '[Content_Types].xml'));
  const given = new Set(
    types.map((each) => each.getAttribute('PartName') ?? `.${each.getAttribute('Extension')}`),
  );
  const wrong: string[] = [];
  const paths = [...archive.keys()].filter((path) => !path.endsWith('/'));
  for (const path of paths) {
    const extension = /\.[^.]+$/.exec(path)?.[0] ?? '';
    if (path !== '[Content_Types].xml' && !given.has(`/${path}`) && !given.has(extension))
      wrong.push(`${path} has no type`);
    const links = archive.has(relationshipsOf(path))
      ? childrenOf(parsed(archive, relationshipsOf(path)))
      : [];
    const ids = links.map((link) => link.getAttribute('Id'));
    if (new Set(ids).size < ids.length) wrong.push(`${path} has two relationships of one id`);
    for (const link of links) {
      const to = targetOf(path, link.getAttribute('Target') ?? '');
      if (link.getAttribute('TargetMode') !== 'External' && !archive.has(to))
        wrong.push(`${path} leads to ${to}`);
    }
    if (!path.endsWith('.xml')) continue;
    for (const [, id] of partText(archive, path).matchAll(/\br:id="([^"]*)"/g))
      if (!ids.includes(id ?? '')) wrong.push(`${path}: no relationship ${String(id)}`);
  }
  for (const type of types) {
    const part = type.getAttribute('PartName');
    if (part !== null && !archive.has(part.slice(1))) wrong.push(`the type of ${part} is that of no part`);
  }
  return wrong;
}

/** What is wrong with the tables of a workbook (18.5.1.2): ids and names once, as many columns as the range is wide. */
function wrongTables(tables: readonly Element[]): string[] {
  const wrong: string[] = [];
  for (const attribute of ['id', 'displayName']) {
    const values = tables.map((table) => table.getAttribute(attribute)?.toLowerCase());
    if (new Set(values).size < values.length) wrong.push(`two tables have one ${attribute}`);
  }
  for (const table of tables) {
    const name = table.getAttribute('displayName') ?? '';
    const [from = '', to = from] = (table.getAttribute('ref') ?? '').split(':');
    const names = allIn(table, 'tableColumn').map((column) => column.getAttribute('name')?.toLowerCase());
    if (names.length !== columnOf(to) - columnOf(from) + 1)
      wrong.push(`${name} has a column too many or too few`);
    if (new Set(names).size < names.length) wrong.push(`${name} has two columns of one name`);
  }
  return wrong;
}

/**
 * What in the parts of a workbook breaks the rules of the format.
 * @param archive the file
 * @returns a sentence for each; none where the file keeps the rules
 */
export function brokenRules(archive: Archive): string[] {
  const roots = [...archive.keys()]
    .filter((path) => path.endsWith('.xml') && path !== '[Content_Types].xml')
    .map((path) => [path, parsed(archive, path)] as const);
  const of = (name: string) => roots.filter(([, root]) => root.localName === name);
  const count = (name: string, within: string): number =>
    of(name).flatMap(([, root]) => allIn(root, within).flatMap(childrenOf)).length;
  const counts: Counts = {
    styles: count('styleSheet', 'cellXfs'),
    texts: of('sst').flatMap(([, root]) => childrenOf(root)).length,
    marks: count('metadata', 'cellMetadata'),
  };
  return [
    ...wrongPackage(archive),
    ...roots.flatMap(([path, root]) => wrongShape(path, root)),
    ...of('worksheet').flatMap(([path, root]) => wrongCells(path, root, counts)),
    ...wrongTables(of('table').map(([, root]) => root)),
  ];
}
