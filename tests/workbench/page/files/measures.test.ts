import { parseXml } from '../../../../workbench/xlsx/xml';
import { describe, expect, it } from 'vitest';
import { colourOf, INDEXED, plainColour } from '../../../../workbench/page/files/colour';
import {
  heightInPixels,
  heightInPoints,
  widthInCharacters,
  widthInPixels,
} from '../../../../workbench/page/files/measure';
import { showsDate } from '../../../../workbench/xlsx/number-formats';

function colour(attributes: string): string | undefined {
  const element = parseXml(`<color ${attributes}/>`, 'test').documentElement ?? undefined;
  return colourOf(element, {
    theme: ['#FFFFFF', '#000000', '#EEECE1', '#1F497D', '#4F81BD'],
    indexed: INDEXED,
  });
}

function channels(text: string | undefined): number[] {
  return [1, 3, 5].map((at) => parseInt(text?.slice(at, at + 2) ?? '', 16));
}

describe('the width of a column', () => {
  it('is that of the example in the standard', () => {
    // ECMA-376 Part 1, 18.3.1.13: eight characters of 7 pixels and 5 pixels of room are 8.7109375, or 61 pixels.
    expect(widthInPixels(8.7109375)).toBe(61);
    expect(widthInCharacters(61)).toBe(8.7109375);
    expect(widthInPixels(widthInCharacters(61))).toBe(61);
  });

  it('comes back in pixels from a file', () => {
    for (let pixels = 0; pixels <= 500; pixels += 1) {
      expect(widthInPixels(widthInCharacters(pixels))).toBe(pixels);
    }
  });
});

describe('the height of a row', () => {
  it('is in points of 1/72 inch, and on the page in pixels of 1/96 inch', () => {
    expect(heightInPixels(15)).toBe(20);
    expect(heightInPoints(40)).toBe(30);
  });
});

describe('a colour', () => {
  it('is its own, one of the theme or one by number', () => {
    expect(colour('rgb="FF2F5D73"')).toBe('#2F5D73');
    expect(colour('theme="4"')).toBe('#4F81BD');
    // ECMA-376 Part 1, 18.8.27.
    expect([colour('indexed="10"'), colour('indexed="22"'), colour('indexed="63"')]).toEqual([
      '#FF0000',
      '#C0C0C0',
      '#333333',
    ]);
    expect(colour('auto="1"')).toBeUndefined();
  });

  it('is lighter or darker by its tint', () => {
    // From memory: what spreadsheets show for the blue accent 60% lighter and 25% darker; a step of rounding allowed.
    for (const [tint, expected] of [
      ['0.59999389629810485', [0xb8, 0xcc, 0xe4]],
      ['-0.249977111117893', [0x36, 0x60, 0x92]],
    ] as const) {
      for (const [index, part] of channels(colour(`theme="4" tint="${tint}"`)).entries()) {
        expect(Math.abs(part - (expected[index] ?? NaN))).toBeLessThanOrEqual(2);
      }
    }
    expect(colour('theme="1" tint="0.5"')).toBe('#808080');
    expect(colour('theme="0" tint="-0.5"')).toBe('#808080');
  });

  it('is in one form, however the page says it', () => {
    expect(['#abc', '#aabbcc', 'rgb(170, 187, 204)', 'rgba(170,187,204,0.5)'].map(plainColour)).toEqual(
      Array(4).fill('#AABBCC'),
    );
    expect(plainColour('')).toBeUndefined();
  });
});

describe('a number format', () => {
  it('shows a day or it does not', () => {
    for (const pattern of ['yyyy-mm-dd', 'd-mmm', 'mmm', '[$-409]d/m']) expect(showsDate(pattern)).toBe(true);
    for (const pattern of ['0.00', 'h:mm', '[Red]0', '0 "days"', '0\\d', '[h]:mm']) {
      expect(showsDate(pattern)).toBe(false);
    }
  });
});
