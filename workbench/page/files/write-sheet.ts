import { XMLSerializer, type Document, type Element } from '@xmldom/xmldom';
import type { IColumnData, IFreeze, IRange, IWorksheetData, Nullable } from '@univerjs/presets';
import { areaAddress, cellAddress } from '../../xlsx/address';
import { elements } from '../../xlsx/xml';
import type { CellLooks } from './cell-looks';
import { plainColour } from './colour';
import { heightInPoints, widthInCharacters } from './measure';
import { DECLARATION, makeElement, orderedChild, removeElement, rootOf } from '../../xlsx/package-parts';
import { children } from './read-looks';
import { SHEET_ORDER } from './sheet-order';

const PROPERTIES_ORDER = ['tabColor', 'outlinePr', 'pageSetUpPr'];
const VIEW_ORDER = ['pane', 'selection', 'pivotSelection', 'extLst'];

type Sheet = Partial<IWorksheetData>;

function viewOf(root: Element): Element {
  const view = orderedChild(orderedChild(root, 'sheetViews', SHEET_ORDER), 'sheetView', [
    'sheetView',
    'extLst',
  ]);
  if (!view.hasAttribute('workbookViewId')) view.setAttribute('workbookViewId', '0');
  return view;
}

function sameFreeze(one: IFreeze | undefined, other: IFreeze | undefined): boolean {
  const key = (freeze: IFreeze | undefined): string =>
    freeze && (freeze.xSplit > 0 || freeze.ySplit > 0)
      ? JSON.stringify([freeze.xSplit, freeze.ySplit, freeze.startRow, freeze.startColumn])
      : '';
  return key(one) === key(other);
}

function setFreeze(root: Element, freeze: IFreeze | undefined): void {
  const view = viewOf(root);
  for (const each of children(view, 'selection')) if (each.hasAttribute('pane')) removeElement(each);
  removeElement(children(view, 'pane')[0]);
  const [across, down] = [freeze?.xSplit ?? 0, freeze?.ySplit ?? 0];
  if (!freeze || (across <= 0 && down <= 0)) return;
  const row = Math.max(0, freeze.startRow);
  const column = Math.max(0, freeze.startColumn);
  if (row > down || column > across) {
    view.setAttribute('topLeftCell', cellAddress(Math.max(0, row - down), Math.max(0, column - across)));
  } else view.removeAttribute('topLeftCell');
  const pane = orderedChild(view, 'pane', VIEW_ORDER);
  if (across > 0) pane.setAttribute('xSplit', String(across));
  if (down > 0) pane.setAttribute('ySplit', String(down));
  pane.setAttribute('topLeftCell', cellAddress(row, column));
  pane.setAttribute('activePane', across > 0 ? (down > 0 ? 'bottomRight' : 'topRight') : 'bottomLeft');
  pane.setAttribute('state', 'frozen');
}

function areas(merges: readonly IRange[] | undefined): string[] {
  return (merges ?? [])
    .map(({ startRow, startColumn, endRow, endColumn }) =>
      areaAddress({ top: startRow, left: startColumn, bottom: endRow, right: endColumn }),
    )
    .sort();
}

function setMerges(root: Element, merges: readonly string[]): void {
  removeElement(children(root, 'mergeCells')[0]);
  if (merges.length === 0) return;
  const list = orderedChild(root, 'mergeCells', SHEET_ORDER);
  list.setAttribute('count', String(merges.length));
  for (const ref of merges) list.appendChild(makeElement(list, 'mergeCell', { ref }));
}

function columnKey(column: Nullable<Partial<IColumnData>>): string {
  return JSON.stringify([column?.w ?? null, column?.hd ? 1 : 0, column?.s ?? null]);
}

interface FiledColumns {
  readonly first: number;
  readonly last: number;
  readonly element: Element;
}

function filedColumns(root: Element): FiledColumns[] {
  return elements(root, 'col').map((element) => ({
    first: Number(element.getAttribute('min')) - 1,
    last: Number(element.getAttribute('max')) - 1,
    element,
  }));
}

function setColumns(root: Element, shown: Sheet, before: Sheet, looks: CellLooks): void {
  const count = Math.max(shown.columnCount ?? 0, before.columnCount ?? 0);
  const indexes = Array.from({ length: count }, (_, index) => index);
  const isSame = (index: number): boolean =>
    columnKey(shown.columnData?.[index]) === columnKey(before.columnData?.[index]);
  if (indexes.every(isSame)) return;
  const filed = filedColumns(root);
  removeElement(children(root, 'cols')[0]);
  const list = orderedChild(root, 'cols', SHEET_ORDER);
  const add = (element: Element, first: number, last: number): void => {
    element.setAttribute('min', String(first + 1));
    element.setAttribute('max', String(last + 1));
    list.appendChild(element);
  };
  for (const index of indexes) {
    const known = filed.find(({ first, last }) => index >= first && index <= last)?.element;
    if (isSame(index)) {
      if (known) add(known.cloneNode(true) as Element, index, index);
      continue;
    }
    const column = shown.columnData?.[index];
    if (columnKey(column) === columnKey(undefined)) continue;
    const isWidthKept = known && column?.w === before.columnData?.[index]?.w;
    const width = column?.w ?? shown.defaultColumnWidth ?? before.defaultColumnWidth ?? 0;
    const format = looks.column(index, Number(known?.getAttribute('style') ?? 0));
    const attributes = {
      width: isWidthKept ? (known.getAttribute('width') ?? undefined) : widthInCharacters(width),
      customWidth: column?.w === undefined ? undefined : 1,
      hidden: column?.hd ? 1 : undefined,
      style: format > 0 ? format : undefined,
    };
    add(makeElement(list, 'col', attributes), index, index);
  }
  for (const { first, last, element } of filed) {
    if (last >= count) add(element.cloneNode(true) as Element, Math.max(first, count), last);
  }
  if (children(list, 'col').length === 0) removeElement(list);
}

function setMeasures(root: Element, shown: Sheet, before: Sheet): void {
  const width = shown.defaultColumnWidth;
  const height = shown.defaultRowHeight;
  const isWider = width !== undefined && width !== before.defaultColumnWidth;
  const isHigher = height !== undefined && height !== before.defaultRowHeight;
  if (!isWider && !isHigher) return;
  const format = orderedChild(root, 'sheetFormatPr', SHEET_ORDER);
  if (isWider) format.setAttribute('defaultColWidth', String(widthInCharacters(width)));
  const known =
    format.getAttribute('defaultRowHeight') ?? String(heightInPoints(before.defaultRowHeight ?? 20));
  // The format wants a height here in any case.
  format.setAttribute('defaultRowHeight', isHigher ? String(heightInPoints(height)) : known);
  if (isHigher) format.setAttribute('customHeight', '1');
}

function setTab(root: Element, colour: string | undefined): void {
  const properties = orderedChild(root, 'sheetPr', SHEET_ORDER);
  removeElement(children(properties, 'tabColor')[0]);
  if (colour === undefined) return;
  orderedChild(properties, 'tabColor', PROPERTIES_ORDER).setAttribute('rgb', `FF${colour.slice(1)}`);
}

/**
 * Changes what a sheet of the file says besides its cells, where the page shows something else.
 * @param frame the sheet without its cells
 * @param shown the sheet as the page shows it
 * @param before as the page would show what the file has
 * @param looks finds the formats of columns
 */
export function changeFrame(frame: Document, shown: Sheet, before: Sheet, looks: CellLooks): void {
  const root = rootOf(frame);
  if (!sameFreeze(shown.freeze, before.freeze)) setFreeze(root, shown.freeze);
  const merges = areas(shown.mergeData);
  if (merges.join() !== areas(before.mergeData).join()) setMerges(root, merges);
  if ((shown.showGridlines ?? 1) !== (before.showGridlines ?? 1)) {
    viewOf(root).setAttribute('showGridLines', shown.showGridlines === 0 ? '0' : '1');
  }
  if ((shown.rightToLeft ?? 0) !== (before.rightToLeft ?? 0)) {
    viewOf(root).setAttribute('rightToLeft', shown.rightToLeft ? '1' : '0');
  }
  const tab = plainColour(shown.tabColor);
  if (tab !== plainColour(before.tabColor)) setTab(root, tab);
  setMeasures(root, shown, before);
  setColumns(root, shown, before, looks);
}

/**
 * The XML of a sheet.
 * @param frame the sheet without its cells
 * @param rows the XML of its rows
 * @param prefix prefix of its elements, with its colon, or nothing
 * @returns the text of its part
 */
export function sheetText(frame: Document, rows: string, prefix: string): string {
  // Left out, the area that is in use is found by whoever opens the file.
  removeElement(children(rootOf(frame), 'dimension')[0]);
  const xml = new XMLSerializer()
    .serializeToString(frame)
    .replace(/<(?:[\w.-]+:)?sheetData\s*\/>/, () => `<${prefix}sheetData>${rows}</${prefix}sheetData>`);
  return xml.startsWith('<?xml') ? xml : DECLARATION + xml;
}
