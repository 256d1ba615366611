import type { Element } from '@xmldom/xmldom';
import type { IBorderStyleData, IStyleData, Nullable } from '@univerjs/presets';
import { elements } from '../../xlsx/xml';
import { plainColour } from './colour';
import { builtInFormat, FIRST_OWN_FORMAT } from '../../xlsx/number-formats';
import { makeElement, orderedChild, removeElement } from '../../xlsx/package-parts';
import { children } from './read-looks';
import { ACROSS, BORDER_LINES, DOWN, INDENT, PADDING, RAISED, wordOf, WRAPPED } from './style-words';

const ORDER = [
  'numFmts',
  'fonts',
  'fills',
  'borders',
  'cellStyleXfs',
  'cellXfs',
  'cellStyles',
  'dxfs',
  'tableStyles',
  'colors',
  'extLst',
];
const SIDES = [
  ['left', 'l'],
  ['right', 'r'],
  ['top', 't'],
  ['bottom', 'b'],
] as const;

/** What a look consists of in a file, each as a text to compare by. */
interface Facets {
  readonly font: string;
  readonly fill: string;
  readonly border: string;
  readonly format: string;
  readonly alignment: string;
}

/** The attributes with which a cell format points to what it consists of. */
const POINTERS = { font: 'fontId', fill: 'fillId', border: 'borderId', format: 'numFmtId' } as const;

function fontAttributes(style: IStyleData): Readonly<Record<string, string | number | undefined>> {
  return {
    b: style.bl ? 1 : undefined,
    i: style.it ? 1 : undefined,
    strike: style.st?.s ? 1 : undefined,
    u: style.ul?.s ? 1 : undefined,
    vertAlign: wordOf(RAISED, style.va),
    sz: style.fs,
    color: plainColour(style.cl?.rgb),
    name: style.ff ?? undefined,
  };
}

function sideAttributes(side: Nullable<IBorderStyleData>): { style?: string; colour?: string } {
  const line = side ? wordOf(BORDER_LINES, side.s) : undefined;
  return line === undefined ? {} : { style: line, colour: plainColour(side?.cl.rgb) ?? '#000000' };
}

function indentOf(style: IStyleData): number | undefined {
  const extra = Math.max((style.pd?.l ?? 0) - PADDING.l, (style.pd?.r ?? 0) - PADDING.r);
  const steps = Math.round(extra / INDENT);
  return steps > 0 ? steps : undefined;
}

function rotationOf({ tr }: IStyleData): number | undefined {
  if (!tr) return undefined;
  if (tr.v) return 255;
  return tr.a === 0 ? undefined : tr.a < 0 ? -tr.a : 90 + tr.a;
}

function alignmentAttributes(style: IStyleData): Readonly<Record<string, string | number | undefined>> {
  return {
    // The page has a second word for text set to both edges.
    horizontal: style.ht === 5 ? 'justify' : wordOf(ACROSS, style.ht),
    vertical: wordOf(DOWN, style.vt),
    textRotation: rotationOf(style),
    wrapText: style.tb === WRAPPED ? 1 : undefined,
    indent: indentOf(style),
  };
}

function facetsOf(style: IStyleData): Facets {
  const color = plainColour(style.cl?.rgb);
  return {
    font: JSON.stringify({ ...fontAttributes(style), color: color === '#000000' ? undefined : color }),
    fill: plainColour(style.bg?.rgb) ?? '',
    border: JSON.stringify(SIDES.map(([, key]) => sideAttributes(style.bd?.[key]))),
    format: style.n?.pattern.toLowerCase() === 'general' ? '' : (style.n?.pattern ?? ''),
    alignment: JSON.stringify(alignmentAttributes(style)),
  };
}

function argb(colour: string): string {
  return `FF${colour.slice(1)}`;
}

/** Adds to a file the looks that its cells are to have. */
export class LooksWriter {
  readonly #root: Element;
  readonly #styles: readonly IStyleData[];
  readonly #facets: Facets[];
  readonly #formats: Element[];
  readonly #ids = new Map<string, number>();
  readonly #made = new Map<string, number>();

  /**
   * Starts from what the file has.
   * @param root the root of its part of looks
   * @param styles what each of its cell formats looks like
   */
  constructor(root: Element, styles: readonly IStyleData[]) {
    this.#root = root;
    this.#styles = styles;
    this.#facets = styles.map(facetsOf);
    this.#formats = children(elements(root, 'cellXfs')[0], 'xf');
    for (const [number, facets] of this.#facets.entries()) {
      for (const [part, pointer] of Object.entries(POINTERS)) {
        const key = `${part} ${facets[part as keyof typeof POINTERS]}`;
        const id = Number(this.#formats[number]?.getAttribute(pointer) ?? 0);
        if (!this.#ids.has(key)) this.#ids.set(key, id);
      }
      const whole = JSON.stringify(facets);
      if (!this.#made.has(whole)) this.#made.set(whole, number);
    }
  }

  /** What a cell looks like where nothing is said. */
  get plain(): IStyleData {
    return this.#styles[0] ?? {};
  }

  /**
   * What a cell format of the file looks like.
   * @param number the format
   * @returns the look, undefined where the file has no such format
   */
  style(number: number): IStyleData | undefined {
    return this.#styles[number];
  }

  /**
   * The cell format for a look; made where the file has none.
   * @param style the whole look
   * @param base the format that the cell had before: what has not changed stays as it was
   * @returns the number of the format
   */
  format(style: IStyleData, base: number): number {
    const facets = facetsOf(style);
    const whole = JSON.stringify(facets);
    const before = this.#facets[base];
    if (before && JSON.stringify(before) === whole) return base;
    const known = this.#made.get(whole);
    if (known !== undefined) return known;
    const made = this.#add(style, facets, before ? base : 0);
    this.#made.set(whole, made);
    this.#facets[made] = facets;
    return made;
  }

  #add(style: IStyleData, facets: Facets, base: number): number {
    const before = this.#facets[base];
    const from = this.#formats[base];
    const xf = (from?.cloneNode(true) ?? makeElement(this.#root, 'xf', { xfId: 0 })) as Element;
    const makers = {
      font: () => this.#font(style),
      fill: () => this.#fill(facets.fill),
      border: () => this.#border(style),
      format: () => this.#numberFormat(facets.format),
    };
    const applies = { font: 'Font', fill: 'Fill', border: 'Border', format: 'NumberFormat' };
    for (const part of Object.keys(makers) as (keyof typeof makers)[]) {
      if (before?.[part] === facets[part]) continue;
      const key = `${part} ${facets[part]}`;
      const id = this.#ids.get(key) ?? makers[part]();
      this.#ids.set(key, id);
      xf.setAttribute(POINTERS[part], String(id));
      xf.setAttribute(`apply${applies[part]}`, '1');
    }
    if (before?.alignment !== facets.alignment) this.#align(xf, style);
    return this.#append('cellXfs', xf, this.#formats);
  }

  #append(list: string, item: Element, known?: Element[]): number {
    const parent = orderedChild(this.#root, list, ORDER);
    parent.appendChild(item);
    known?.push(item);
    const count = children(parent, item.localName ?? '').length;
    parent.setAttribute('count', String(count));
    return count - 1;
  }

  #font(style: IStyleData): number {
    const font = makeElement(this.#root, 'font');
    for (const [name, value] of Object.entries(fontAttributes(style))) {
      if (value === undefined) continue;
      const on = name === 'b' || name === 'i' || name === 'strike' || name === 'u';
      const attributes = on ? {} : name === 'color' ? { rgb: argb(String(value)) } : { val: value };
      font.appendChild(makeElement(font, name, attributes));
    }
    return this.#append('fonts', font);
  }

  #fill(colour: string): number {
    if (!colour) return 0;
    const fill = makeElement(this.#root, 'fill');
    const pattern = makeElement(fill, 'patternFill', { patternType: 'solid' });
    pattern.appendChild(makeElement(fill, 'fgColor', { rgb: argb(colour) }));
    pattern.appendChild(makeElement(fill, 'bgColor', { indexed: 64 }));
    fill.appendChild(pattern);
    return this.#append('fills', fill);
  }

  #border(style: IStyleData): number {
    const border = makeElement(this.#root, 'border');
    for (const [name, key] of SIDES) {
      const { style: line, colour } = sideAttributes(style.bd?.[key]);
      const side = makeElement(border, name, { style: line });
      if (colour !== undefined) side.appendChild(makeElement(border, 'color', { rgb: argb(colour) }));
      border.appendChild(side);
    }
    border.appendChild(makeElement(border, 'diagonal'));
    return this.#append('borders', border);
  }

  #numberFormat(pattern: string): number {
    if (!pattern) return 0;
    const builtIn = builtInFormat(pattern);
    if (builtIn !== undefined) return builtIn;
    const own = elements(this.#root, 'numFmt').map((each) => Number(each.getAttribute('numFmtId')));
    const id = Math.max(FIRST_OWN_FORMAT - 1, ...own) + 1;
    this.#append('numFmts', makeElement(this.#root, 'numFmt', { numFmtId: id, formatCode: pattern }));
    return id;
  }

  #align(xf: Element, style: IStyleData): void {
    const [found] = children(xf, 'alignment');
    const alignment = found ?? makeElement(xf, 'alignment');
    for (const [name, value] of Object.entries(alignmentAttributes(style))) {
      if (value === undefined) alignment.removeAttribute(name);
      else alignment.setAttribute(name, String(value));
    }
    if (alignment.attributes.length === 0) removeElement(found);
    else if (!found) xf.insertBefore(alignment, xf.firstChild);
    xf.setAttribute('applyAlignment', '1');
  }
}
