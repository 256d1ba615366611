import type { Element } from '@xmldom/xmldom';
import type { NameInfo } from '../../../taskpane/workbook/port';
import { elements } from '../../xlsx/xml';
import { filedFormula, typedFormula } from './formula-form';
import { BUILT_IN_NAME } from './names-of-file';
import { makeElement, orderedChild, removeElement } from '../../xlsx/package-parts';

/** Children of the workbook in the order that the format wants (ECMA-376 Part 1, 18.2.27). */
export const WORKBOOK_ORDER = [
  'fileVersion',
  'fileSharing',
  'workbookPr',
  'workbookProtection',
  'bookViews',
  'sheets',
  'functionGroups',
  'externalReferences',
  'definedNames',
  'calcPr',
  'oleSize',
  'customWorkbookViews',
  'pivotCaches',
  'smartTagPr',
  'smartTagTypes',
  'webPublishing',
  'fileRecoveryPr',
  'webPublishObjects',
  'extLst',
];

function key(name: string, sheet: string | undefined): string {
  return JSON.stringify([name.toLowerCase(), sheet ?? null]);
}

/**
 * Gives a workbook the names that the page has. Names of the spreadsheet's own, such as print areas, stay.
 * @param root the workbook
 * @param names the names
 * @param before sheets in the order that the file had, by their present names; undefined where one is gone
 * @param now sheets in the order that the file is to have
 */
export function writeNames(
  root: Element,
  names: readonly NameInfo[],
  before: readonly (string | undefined)[],
  now: readonly string[],
): void {
  const filed = new Map<string, Element>();
  const kept: Element[] = [];
  for (const element of elements(root, 'definedName')) {
    const place = element.getAttribute('localSheetId');
    const sheet = place === null ? undefined : before[Number(place)];
    const name = element.getAttribute('name') ?? '';
    if (place !== null && sheet === undefined) continue;
    if (sheet !== undefined) element.setAttribute('localSheetId', String(now.indexOf(sheet)));
    if (BUILT_IN_NAME.test(name)) kept.push(element);
    else filed.set(key(name, sheet), element);
  }
  removeElement(elements(root, 'definedNames')[0]);
  for (const { name, sheet, refersTo } of names) {
    const place = sheet === undefined ? undefined : now.indexOf(sheet);
    if (place === -1) continue;
    const known = filed.get(key(name, sheet));
    const element = known ?? makeElement(root, 'definedName', { name, localSheetId: place });
    if (typedFormula(known?.textContent ?? '') !== refersTo) element.textContent = filedFormula(refersTo);
    kept.push(element);
  }
  if (kept.length === 0) return;
  const list = orderedChild(root, 'definedNames', WORKBOOK_ORDER);
  for (const element of kept) list.appendChild(element);
}
