import { isOpenEnded, referencedArea, referenceParts } from '../../src/spreadsheet/reference';
import { tokensOf } from '../../src/spreadsheet/tokens';
import { fromZero, type Area } from '../xlsx/address';

/** Cells that a formula reads. */
export interface Read {
  /** Name of the sheet in small letters. */
  readonly sheet: string;
  readonly area: Area;
  /** Whole columns or rows, which end where the engine's sheet does; any other range has all of its cells there. */
  readonly open: boolean;
}

/** What a formula reads, as far as its text says. */
export interface FormulaReads {
  readonly reads: readonly Read[];
  /** Whether it also reads cells that stand nowhere in its text. */
  readonly anywhere: boolean;
}

const READS_ANYWHERE = /^(?:INDIRECT|OFFSET)$/i;

/**
 * What a formula reads.
 * @param formula without `=`, in the engine's terms
 * @param sheet the sheet of the formula
 * @returns the cells that it names
 */
export function readsOf(formula: string, sheet: string): FormulaReads {
  const reads: Read[] = [];
  let anywhere = false;
  for (const { kind, text } of tokensOf(formula)) {
    // A range from or to what a function gives ends somewhere else.
    if ((kind === 'call' && READS_ANYWHERE.test(text)) || (kind === 'sign' && text === ':')) anywhere = true;
    if (kind !== 'reference') continue;
    const { sheet: named = sheet, rest: address } = referenceParts(text);
    const area = referencedArea(address);
    if (area) reads.push({ sheet: named.toLowerCase(), area: fromZero(area), open: isOpenEnded(address) });
  }
  return { reads, anywhere };
}
