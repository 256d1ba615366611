import type { Element } from '@xmldom/xmldom';
import type { Nullable } from '@univerjs/presets';

/** Where a colour of the file may come from other than itself. */
export interface Palette {
  /** Colours of the theme in the order in which cells count them, as `#RRGGBB`. */
  readonly theme: readonly string[];
  readonly indexed: readonly string[];
}

// ECMA-376 Part 1, 18.8.27: the first eight twice, then these.
const FIRST_EIGHT = '000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF';
const REST =
  '800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF ' +
  '000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 ' +
  '3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333';

/** The colours that a file means by number where it brings no list of its own. */
export const INDEXED: readonly string[] = [FIRST_EIGHT, FIRST_EIGHT, REST]
  .join(' ')
  .split(' ')
  .map((each) => `#${each}`);

interface Hsl {
  readonly hue: number;
  readonly saturation: number;
  readonly lightness: number;
}

const WHITE = 255;

function channels(colour: string): [number, number, number] {
  const at = (start: number): number => parseInt(colour.slice(start, start + 2), 16);
  return [at(1), at(3), at(5)];
}

/**
 * A colour from its parts.
 * @param parts red, green and blue from 0 to 255
 * @returns as `#RRGGBB`
 */
export function fromChannels(parts: readonly number[]): string {
  return `#${parts.map((part) => Math.round(part).toString(16).padStart(2, '0')).join('')}`.toUpperCase();
}

function toHsl(colour: string): Hsl {
  const [r, g, b] = channels(colour).map((part) => part / WHITE) as [number, number, number];
  const most = Math.max(r, g, b);
  const least = Math.min(r, g, b);
  const lightness = (most + least) / 2;
  const range = most - least;
  if (range === 0) return { hue: 0, saturation: 0, lightness };
  const saturation = range / (1 - Math.abs(2 * lightness - 1));
  const sixth =
    most === r ? ((g - b) / range + 6) % 6 : most === g ? (b - r) / range + 2 : (r - g) / range + 4;
  return { hue: sixth / 6, saturation, lightness };
}

function fromHsl({ hue, saturation, lightness }: Hsl): string {
  const part = (turn: number): number => {
    const place = (turn + hue * 12) % 12;
    const reach = saturation * Math.min(lightness, 1 - lightness);
    return WHITE * (lightness - reach * Math.max(-1, Math.min(place - 3, 9 - place, 1)));
  };
  return fromChannels([part(0), part(8), part(4)]);
}

/** ECMA-376 Part 1, 18.8.19: a tint darkens below zero and lightens above. */
function tinted(colour: string, tint: number): string {
  if (tint === 0) return colour;
  const hsl = toHsl(colour);
  const lightness = tint < 0 ? hsl.lightness * (1 + tint) : hsl.lightness * (1 - tint) + tint;
  return fromHsl({ ...hsl, lightness });
}

/**
 * A colour element of the file.
 * @param element for example `<color theme="4" tint="0.4"/>`
 * @param palette the file's theme and numbered colours
 * @returns as `#RRGGBB`; undefined where it is the automatic one
 */
export function colourOf(element: Element | undefined, palette: Palette): string | undefined {
  if (!element) return undefined;
  const rgb = element.getAttribute('rgb');
  const theme = element.getAttribute('theme');
  const indexed = element.getAttribute('indexed');
  const base = rgb
    ? `#${rgb.slice(-6)}`.toUpperCase()
    : theme
      ? palette.theme[Number(theme)]
      : indexed
        ? palette.indexed[Number(indexed)]
        : undefined;
  return base === undefined ? undefined : tinted(base, Number(element.getAttribute('tint') ?? 0));
}

const SHORT = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i;
const FUNCTIONAL = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/i;

/**
 * A colour as the page has it, in one form.
 * @param colour `#rgb`, `#rrggbb` or `rgb(r, g, b)`
 * @returns as `#RRGGBB`; undefined where it is none of these
 */
export function plainColour(colour: Nullable<string>): string | undefined {
  if (!colour) return undefined;
  if (/^#[0-9a-f]{6}/i.test(colour)) return colour.slice(0, 7).toUpperCase();
  const parts = FUNCTIONAL.exec(colour);
  if (parts) return fromChannels(parts.slice(1, 4).map(Number));
  const short = SHORT.exec(colour);
  return short
    ? `#${short
        .slice(1, 4)
        .map((digit) => digit + digit)
        .join('')}`.toUpperCase()
    : undefined;
}
