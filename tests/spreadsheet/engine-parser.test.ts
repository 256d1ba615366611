import { createRequire } from 'node:module';
import type * as Sheets from '@univerjs/preset-sheets-node-core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../src/spreadsheet/address';
import { moveFormula } from '../../src/spreadsheet/move-formula';
import { tokensOf } from '../../src/spreadsheet/tokens';

// Ours beside the parser of the spreadsheet that the workbench runs, over drawn formulas.

const { LexerTreeBuilder } = createRequire(import.meta.url)(
  '@univerjs/preset-sheets-node-core',
) as typeof Sheets;
const engine = new LexerTreeBuilder();
const REFERENCE = 4;

// The engine puts the corners of a block in order, so they are drawn in order, and stay so wherever they are moved.
const fixed = fc.constantFrom('', '$');
const span = (most: number, text: (place: number) => string) =>
  fc
    .tuple(fixed, fc.integer({ min: 1, max: most }), fc.nat(99))
    .map(([mark, from, more]): [string, string] => [mark + text(from), mark + text(from + more)]);
const columns = span(700, columnLetters);
const rows = span(9000, String);
const cell = fc.tuple(columns, rows).map(([[column], [row]]) => column + row);
const block = fc
  .tuple(columns, rows)
  .map(([[left, right], [top, bottom]]) => `${left}${top}:${right}${bottom}`);
const whole = fc.oneof(columns, rows).map(([from, to]) => `${from}:${to}`);
const sheet = fc.constantFrom('', '', 'Bid!', "'Bid 2'!", "'Mason''s walls'!", "'A1'!");
const reference = fc.tuple(sheet, fc.oneof(cell, block, whole));
// The engine loses a quote of two within a text as it moves a formula; our own examples have them.
const leaf = fc.oneof(
  reference.map((parts) => parts.join('')),
  fc.constantFrom('1', '2.5', '"A1 and B2"', '"say C3"', 'TRUE'),
);
const { formula } = fc.letrec<{ formula: string }>((tie) => ({
  formula: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    leaf,
    fc
      .tuple(tie('formula'), fc.constantFrom('+', '-', '*', '/', '&', '=', '<>', '<='), tie('formula'))
      .map(([left, sign, right]) => `${left}${sign}${right}`),
    fc
      .tuple(
        fc.constantFrom('SUM', 'LOG10', 'IF', 'WASH.WATER'),
        fc.array(tie('formula'), { minLength: 1, maxLength: 3 }),
      )
      .map(([name, of]) => `${name}(${of.join(',')})`),
    tie('formula').map((of) => `(${of})`),
  ),
}));

describe('our pieces of a formula and the parser of a spreadsheet', () => {
  it('find the same references', () => {
    fc.assert(
      fc.property(formula, (text) => {
        const theirs = (engine.sequenceNodesBuilder(`=${text}`) ?? []).flatMap((node) =>
          typeof node !== 'string' && (node.nodeType as number) === REFERENCE ? [node.token] : [],
        );
        const ours = tokensOf(text).flatMap((token) => (token.kind === 'reference' ? [token.text] : []));
        expect(ours).toEqual(theirs);
      }),
      { numRuns: 500 },
    );
  });

  it('move a formula to the same', () => {
    fc.assert(
      fc.property(formula, fc.nat(50), fc.nat(900), (text, across, down) => {
        const to = { row: 1 + down, column: 1 + across };
        expect(moveFormula(`=${text}`, { row: 1, column: 1 }, to)).toBe(
          engine.moveFormulaRefOffset(`=${text}`, across, down),
        );
      }),
      { numRuns: 500 },
    );
  });
});
