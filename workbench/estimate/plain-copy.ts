import { readableFormula } from '../engine/washdown-names';
import { removeRelationships, reachable, sweep, type Parts } from '../xlsx/package-parts';
import { cellAddress } from '../xlsx/address';
import { partText, type Archive } from '../xlsx/archive';
import { relationships, workbookPart } from '../xlsx/parts';
import { readBook } from '../xlsx/read-book';
import { decodeXml } from '../xlsx/xml';
import { writeValues } from '../xlsx/write-values';
import type { Estimate } from './estimate-book';
import { Ours } from './ours';

/** A copy of a workbook for people without the add-in. */
export interface PlainCopy {
  readonly archive: Archive;
  /** How many formulas became their values. */
  readonly replaced: number;
  /** What in the copy still asks for the add-in, or has no value: a sentence each. */
  readonly says: readonly string[];
}

const RULE =
  /<(?:[\w.-]+:)?(formula1|formula2|formula|f)(?:\s[^>]*)?>([\s\S]*?)<\/(?:[\w.-]+:)?(?:formula1|formula2|formula|f)>/g;

/** Validation and conditional formats stand behind the cells of a sheet. */
function rulesOf(xml: string, sheet: string, ours: Ours): string[] {
  const behind = xml.slice(xml.lastIndexOf('</sheetData>') + 1);
  return [...behind.matchAll(RULE)].flatMap(([, kind = '', text = '']) => {
    const formula = decodeXml(text);
    if (!ours.uses(formula)) return [];
    const what = kind === 'formula' ? 'a conditional format' : kind === 'f' ? 'a rule' : 'a validation';
    return [
      `Sheet ${sheet}: ${what} calls ${readableFormula(formula)}, and does nothing without the add-in.`,
    ];
  });
}

/**
 * A copy in which every formula that needs the add-in is replaced by its value.
 * @param estimate the workbook with its values
 * @returns the copy, and what in it still needs the add-in
 */
export function plainCopy(estimate: Estimate): PlainCopy {
  const { archive, needing } = estimate;
  const book = readBook(archive);
  const ours = new Ours(book.names);
  const at = (sheet: string, row: number, column: number) =>
    book.sheets.find(({ name }) => name === sheet)?.cells.get(cellAddress(row, column));
  const valued = needing.map((each) => ({
    ...each,
    result: each.supported ? each.result : (at(each.sheet, each.row, each.column)?.value ?? null),
  }));
  const parts: Parts = new Map(
    writeValues(
      archive,
      book,
      valued.map(({ sheet, row, column, result }) => ({
        sheet,
        row,
        column,
        value: result,
        formula: undefined,
        spills: false,
      })),
    ),
  );
  dropOrderOfCalculation(parts);
  return {
    archive: parts,
    replaced: needing.length,
    says: [
      ...valued
        .filter(({ result }) => result === null)
        .map(
          ({ sheet, row, column }) => `${sheet}!${cellAddress(row, column)} has no value yet and is blank.`,
        ),
      ...ours.names.map(
        ({ name, formula }) =>
          `The name ${name} stands for ${readableFormula(formula)}, which needs the add-in.`,
      ),
      ...book.sheets.flatMap(({ name, part }) => rulesOf(partText(archive, part), name, ours)),
    ],
  };
}

/** It lists the cells with formulas; a spreadsheet takes one that names others for damaged, and makes it anew. */
function dropOrderOfCalculation(parts: Parts): void {
  const workbook = workbookPart(parts);
  const before = reachable(parts);
  const chains = relationships(parts, workbook).filter(({ kind }) => kind === 'calcChain');
  removeRelationships(parts, workbook, new Set(chains.map(({ id }) => id)));
  sweep(parts, before);
}
