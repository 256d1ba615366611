import type { Element } from '@xmldom/xmldom';
import type { IWorkbookData, IWorksheetData } from '@univerjs/presets';
import { relationships } from '../../xlsx/parts';
import { elements } from '../../xlsx/xml';
import { BLANK_SHEET } from './blank-file';
import { CONTENT, OFFICE, pointWith, relationshipId } from '../../xlsx/format-names';
import { sheetId } from './names-of-file';
import {
  addPart,
  addRelationship,
  editPart,
  freePath,
  makeElement,
  orderedChild,
  removeElement,
  removeRelationships,
  type Parts,
} from '../../xlsx/package-parts';
import { renameInFormulas } from './renamed-sheets';
import type { ShownWorkbook } from './shown-workbook';
import { WORKBOOK_ORDER, writeNames } from './write-names';

const MACRO_SHEETS = ['xlMacrosheet', 'xlIntlMacrosheet'];

/** A sheet that is listed in the workbook. */
interface Listed {
  readonly element: Element;
  readonly relationship: string;
  readonly id: string;
  readonly name: string;
  readonly kind: string;
}

function listedSheets(parts: Parts, workbook: string, root: Element): Listed[] {
  const links = relationships(parts, workbook);
  return elements(root, 'sheet').map((element) => {
    const relationship = relationshipId(element);
    return {
      element,
      relationship,
      id: sheetId(element.getAttribute('sheetId') ?? ''),
      name: element.getAttribute('name') ?? '',
      kind: links.find(({ id }) => id === relationship)?.kind ?? '',
    };
  });
}

/**
 * The sheets of the page in their order.
 * @param snapshot the workbook
 * @returns the sheets, each with its id
 */
export function shownSheets(snapshot: IWorkbookData): Partial<IWorksheetData>[] {
  return snapshot.sheetOrder.map((id) => ({ ...snapshot.sheets[id], id }));
}

/**
 * Gives sheets of the file the names that they have on the page.
 * @param parts the file
 * @param workbook path of its workbook part
 * @param snapshot the workbook of the page
 */
export function renameSheets(parts: Parts, workbook: string, snapshot: IWorkbookData): void {
  const renames = new Map<string, string>();
  editPart(parts, workbook, (root) => {
    for (const { id, name, kind, element } of listedSheets(parts, workbook, root)) {
      const next = kind === 'worksheet' ? snapshot.sheets[id]?.name : undefined;
      if (next === undefined || next === name) continue;
      renames.set(name, next);
      element.setAttribute('name', next);
    }
  });
  renameInFormulas(parts, renames);
}

function isHidden(sheet: Element): boolean {
  return (sheet.getAttribute('state') ?? 'visible') !== 'visible';
}

function addSheet(parts: Parts, workbook: string, list: Element, name: string): Element {
  const path = freePath(parts, 'xl/worksheets/sheet');
  addPart(parts, path, CONTENT.worksheet, BLANK_SHEET);
  const taken = elements(list, 'sheet').map((each) => Number(each.getAttribute('sheetId')));
  const element = makeElement(list, 'sheet', { name, sheetId: Math.max(0, ...taken) + 1 });
  list.appendChild(element);
  pointWith(element, addRelationship(parts, workbook, `${OFFICE}/worksheet`, path));
  return element;
}

/** The sheet that is in front stays there as long as it can be seen. */
function setFront(root: Element, before: readonly Listed[], now: readonly Element[]): void {
  const [view] = elements(root, 'workbookView');
  if (!view) return;
  const active = Number(view.getAttribute('activeTab') ?? 0);
  const front = before[active]?.element;
  const isSeen = front && now.includes(front) && !isHidden(front);
  const tab = isSeen ? now.indexOf(front) : now.findIndex((each) => !isHidden(each));
  if (tab === active) return;
  view.setAttribute('activeTab', String(tab));
  view.removeAttribute('firstSheet');
}

function listIn(root: Element, parts: Parts, workbook: string, shown: ShownWorkbook): void {
  const before = listedSheets(parts, workbook, root);
  const sheets = shownSheets(shown.snapshot);
  const isKept = ({ id, kind }: Listed): boolean =>
    kind === 'worksheet' ? sheets.some((sheet) => sheet.id === id) : !MACRO_SHEETS.includes(kind);
  const list = orderedChild(root, 'sheets', WORKBOOK_ORDER);
  const now = sheets.map((sheet) => {
    const known = before.find(({ id, kind }) => kind === 'worksheet' && id === sheet.id);
    const element = known?.element ?? addSheet(parts, workbook, list, sheet.name ?? '');
    const hide = sheet.hidden === 1;
    if (isHidden(element) !== hide) element.setAttribute('state', hide ? 'hidden' : 'visible');
    return element;
  });
  for (const [place, each] of before.entries()) {
    if (each.kind !== 'worksheet' && isKept(each)) now.splice(place, 0, each.element);
  }
  const gone = before.filter((each) => !isKept(each));
  removeRelationships(parts, workbook, new Set(gone.map(({ relationship }) => relationship)));
  for (const each of elements(list, 'sheet')) removeElement(each);
  for (const each of now) list.appendChild(each);
  setFront(root, before, now);
  writeNames(
    root,
    [...shown.names, ...(shown.keptNames ?? [])],
    before.map((each) => (isKept(each) ? each.name : undefined)),
    now.map((each) => each.getAttribute('name') ?? ''),
  );
}

/**
 * Lists the sheets and names as the page has them; what the page does not show keeps its place.
 * @param parts the file
 * @param workbook path of its workbook part
 * @param shown what the page shows
 */
export function listSheets(parts: Parts, workbook: string, shown: ShownWorkbook): void {
  editPart(parts, workbook, (root) => {
    listIn(root, parts, workbook, shown);
  });
}
