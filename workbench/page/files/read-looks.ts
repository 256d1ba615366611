import type { Document, Element } from '@xmldom/xmldom';
import type { IBorderData, IStyleData } from '@univerjs/presets';
import { partText, type Archive } from '../../xlsx/archive';
import { relationships } from '../../xlsx/parts';
import { elements, parseXml } from '../../xlsx/xml';
import { colourOf, INDEXED, plainColour, type Palette } from './colour';
import { formatPattern } from '../../xlsx/number-formats';
import { ACROSS, BORDER_LINES, DOWN, INDENT, PADDING, RAISED, WRAPPED } from './style-words';

/** The looks of a file. */
export interface Looks {
  /** Path of the part that holds them, and the part itself; undefined where the file has none. */
  readonly path?: string;
  readonly document?: Document;
  /** What each cell format of the file looks like, by its number. */
  readonly styles: readonly IStyleData[];
  readonly palette: Palette;
}

/** What a cell looks like where nothing is said: the first format that a spreadsheet writes. */
export const PLAIN: IStyleData = { ff: 'Calibri', fs: 11 };

// A theme lists dark before light; cells count light first (ECMA-376 Part 1, 18.8.3 and 20.1.6.2).
const THEME_ORDER = [
  'lt1',
  'dk1',
  'lt2',
  'dk2',
  'accent1',
  'accent2',
  'accent3',
  'accent4',
  'accent5',
  'accent6',
  'hlink',
  'folHlink',
];

/**
 * The children of an element that have a name.
 * @param parent the element
 * @param name the local name
 * @returns the children in order
 */
export function children(parent: Element | undefined, name: string): Element[] {
  if (!parent) return [];
  return Array.from(parent.childNodes).filter((node) => (node as Element).localName === name) as Element[];
}

function themeColours(archive: Archive, workbook: string): string[] {
  const path = relationships(archive, workbook).find(({ kind }) => kind === 'theme')?.target;
  if (path === undefined || !archive.has(path)) return [];
  const [scheme] = elements(parseXml(partText(archive, path), path), 'clrScheme');
  return THEME_ORDER.map((name) => {
    const [colour] = scheme ? elements(scheme, name) : [];
    const [system] = colour ? elements(colour, 'sysClr') : [];
    const [plain] = colour ? elements(colour, 'srgbClr') : [];
    return (
      plainColour(`#${system?.getAttribute('lastClr') ?? plain?.getAttribute('val') ?? ''}`) ?? '#000000'
    );
  });
}

function palette(archive: Archive, workbook: string, document: Document): Palette {
  const [own] = elements(document, 'indexedColors');
  const listed = own
    ? elements(own, 'rgbColor').map((each) => `#${(each.getAttribute('rgb') ?? '').slice(-6)}`)
    : [];
  return {
    theme: themeColours(archive, workbook),
    indexed: [...listed, ...INDEXED.slice(listed.length)],
  };
}

/** Whether an on-off element such as `<b/>` is on. */
function isOn(parent: Element, name: string): boolean {
  const [element] = children(parent, name);
  return element !== undefined && !['0', 'false', 'none'].includes(element.getAttribute('val') ?? '');
}

function fontStyle(font: Element | undefined, colours: Palette): IStyleData {
  if (!font) return { ...PLAIN };
  const valueOf = (name: string): string | null | undefined => children(font, name)[0]?.getAttribute('val');
  const [colour] = children(font, 'color');
  const rgb = colourOf(colour, colours);
  const raised = RAISED.get(valueOf('vertAlign') ?? '');
  return {
    ff: valueOf('name') ?? PLAIN.ff ?? null,
    fs: Number(valueOf('sz') ?? PLAIN.fs),
    ...(isOn(font, 'b') ? { bl: 1 } : {}),
    ...(isOn(font, 'i') ? { it: 1 } : {}),
    ...(isOn(font, 'u') ? { ul: { s: 1 } } : {}),
    ...(isOn(font, 'strike') ? { st: { s: 1 } } : {}),
    // Black is what text has anyway.
    ...(rgb === undefined || rgb === '#000000' ? {} : { cl: { rgb } }),
    ...(raised === undefined ? {} : { va: raised }),
  };
}

function fillStyle(fill: Element | undefined, colours: Palette): IStyleData {
  const [pattern] = children(fill, 'patternFill');
  if (pattern?.getAttribute('patternType') !== 'solid') return {};
  const rgb = colourOf(children(pattern, 'fgColor')[0], colours);
  return rgb === undefined ? {} : { bg: { rgb } };
}

function borderStyle(border: Element | undefined, colours: Palette): IStyleData {
  const bd: IBorderData = {};
  for (const [key, names] of [
    ['t', ['top']],
    ['r', ['right', 'end']],
    ['b', ['bottom']],
    ['l', ['left', 'start']],
  ] as const) {
    const side = names.flatMap((name) => children(border, name))[0];
    const line = BORDER_LINES.get(side?.getAttribute('style') ?? '');
    if (side && line !== undefined) {
      bd[key] = { s: line, cl: { rgb: colourOf(children(side, 'color')[0], colours) ?? '#000000' } };
    }
  }
  return Object.keys(bd).length > 0 ? { bd } : {};
}

/** 0 to 90 turn the text up, 91 to 180 down by what is over 90, 255 stacks its letters (18.8.1). */
function rotation(degrees: number): IStyleData {
  if (degrees === 0) return {};
  if (degrees === 255) return { tr: { a: 0, v: 1 } };
  return { tr: { a: degrees <= 90 ? -degrees : degrees - 90 } };
}

function alignmentStyle(alignment: Element | undefined): IStyleData {
  if (!alignment) return {};
  const across = ACROSS.get(alignment.getAttribute('horizontal') ?? '');
  const down = DOWN.get(alignment.getAttribute('vertical') ?? '');
  const indent = INDENT * Number(alignment.getAttribute('indent') ?? 0);
  const side = alignment.getAttribute('horizontal') === 'right' ? 'r' : 'l';
  return {
    ...(across === undefined ? {} : { ht: across }),
    ...(down === undefined ? {} : { vt: down }),
    ...(['1', 'true'].includes(alignment.getAttribute('wrapText') ?? '') ? { tb: WRAPPED } : {}),
    ...(indent > 0 ? { pd: { ...PADDING, [side]: PADDING[side] + indent } } : {}),
    ...rotation(Number(alignment.getAttribute('textRotation') ?? 0)),
  };
}

/**
 * Reads what the cells of a file look like.
 * @param archive the file
 * @param workbook path of its workbook part
 * @returns the looks
 * @throws {BadFile} where they cannot be read
 */
export function readLooks(archive: Archive, workbook: string): Looks {
  const path = relationships(archive, workbook).find(({ kind }) => kind === 'styles')?.target;
  if (path === undefined || !archive.has(path))
    return { styles: [PLAIN], palette: { theme: [], indexed: INDEXED } };
  const document = parseXml(partText(archive, path), path);
  const colours = palette(archive, workbook, document);
  const list = (name: string, item: string): Element[] => children(elements(document, name)[0], item);
  const fonts = list('fonts', 'font').map((each) => fontStyle(each, colours));
  const fills = list('fills', 'fill').map((each) => fillStyle(each, colours));
  const borders = list('borders', 'border').map((each) => borderStyle(each, colours));
  const formats = new Map(
    list('numFmts', 'numFmt').map((each) => [
      Number(each.getAttribute('numFmtId')),
      each.getAttribute('formatCode') ?? '',
    ]),
  );
  const styles = list('cellXfs', 'xf').map((xf): IStyleData => {
    const number = (name: string): number => Number(xf.getAttribute(name) ?? 0);
    const pattern = formatPattern(number('numFmtId'), formats);
    return {
      ...(fonts[number('fontId')] ?? PLAIN),
      ...fills[number('fillId')],
      ...borders[number('borderId')],
      ...alignmentStyle(children(xf, 'alignment')[0]),
      ...(pattern === undefined ? {} : { n: { pattern } }),
    };
  });
  return { path, document, palette: colours, styles: styles.length > 0 ? styles : [PLAIN] };
}
