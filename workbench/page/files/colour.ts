import type { Element } from '@xmldom/xmldom';
import type { Nullable } from '@univerjs/presets';
import { converter, formatHex } from 'culori';

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

const toHsl = converter('hsl');

/** ECMA-376 Part 1, 18.8.19: a tint darkens below zero and lightens above. */
function tinted(colour: string, tint: number): string {
  const hsl = toHsl(colour);
  if (tint === 0 || !hsl) return colour;
  const l = tint < 0 ? hsl.l * (1 + tint) : hsl.l * (1 - tint) + tint;
  return formatHex({ ...hsl, l }).toUpperCase();
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

/**
 * A colour as the page has it, in one form.
 * @param colour a colour of CSS
 * @returns as `#RRGGBB`, without how opaque it is; undefined where it is none
 */
export function plainColour(colour: Nullable<string>): string | undefined {
  return colour ? formatHex(colour)?.toUpperCase() : undefined;
}
