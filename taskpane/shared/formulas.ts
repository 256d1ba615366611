import type { WorksheetFunction } from '../../functions/worksheet-function';
import { referenceText, type WallSource } from './wall-source';
import type { Formula } from '../workbook/port';

/** What a formula asks, beside walls and factors: each a text of the formula, for example `"South"` or `$A5`. */
export interface Asked {
  readonly zone?: string;
  readonly part?: string;
  readonly quantity?: string;
  readonly wall?: string;
  /** The table of alternates. */
  readonly alternates?: string;
}

/**
 * A formula over the walls of this workbook.
 * @param called the worksheet function
 * @param source where walls, factors and headings stand
 * @param asked zone, part or quantity
 * @returns the formula, without empty arguments at its end
 */
export function formulaFor(
  called: Pick<WorksheetFunction, 'name' | 'parameters'>,
  source: WallSource,
  asked: Asked = {},
): Formula {
  const { walls, factors, headings } = source;
  const texts: Readonly<Record<string, string | undefined>> = {
    walls: referenceText(walls),
    factors: factors && referenceText(factors),
    headings: headings && referenceText(headings),
    ...asked,
  };
  const args = called.parameters.map(({ name }) => texts[name] ?? '');
  while (args.at(-1) === '') args.pop();
  return { formula: `=WASH.${called.name}(${args.join(',')})` };
}

/**
 * A text within a formula.
 * @param text any text
 * @returns the text in quotation marks
 */
export function quoted(text: string): string {
  return `"${text.replace(/"/g, '""')}"`;
}
