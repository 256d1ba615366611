import { referenceParts } from '../../src/spreadsheet/reference';
import { tokensOf } from '../../src/spreadsheet/tokens';
import type { BookName } from '../xlsx/book';
import { BadReference } from './structured-references';

/** The defined names of a workbook, to look up by name and sheet. */
export type Names = ReadonlyMap<string, BookName>;

// Twice what a formula may have when it is typed; names within names can grow without end.
const LONGEST = 16_384;

function key(name: string, sheet = ''): string {
  return `${sheet}\n${name}`.toLowerCase();
}

/**
 * Puts defined names in order.
 * @param names the names
 * @returns the names by name and sheet; print areas and the like are no names to calculate with
 */
export function namesByKey(names: readonly BookName[]): Names {
  return new Map(
    names.filter(({ name }) => !/^_xlnm\./i.test(name)).map((each) => [key(each.name, each.sheet), each]),
  );
}

/**
 * Replaces the defined names of a formula by what they stand for: the engine knows one name once, not once a sheet.
 * @param formula without `=`
 * @param sheet the sheet of the formula, whose own names come first
 * @param names the defined names
 * @param prepared what else is done to the formula of a name
 * @returns the formula without names that the workbook defines
 * @throws {BadReference} where a name stands for itself, or names make the formula too long
 */
export function withoutNames(
  formula: string,
  sheet: string,
  names: Names,
  prepared: (formula: string, sheet: string) => string,
): string {
  if (names.size === 0) return formula;
  const follow = (text: string, own: string, within: readonly string[]): string => {
    const done = tokensOf(text)
      .map((token) => {
        if (token.kind !== 'name' && token.kind !== 'call') return token.text;
        const { sheet: named = own, rest: word } = referenceParts(token.text);
        const name = names.get(key(word, named)) ?? names.get(key(word));
        if (!name) return token.text;
        const id = key(name.name, name.sheet);
        if (within.includes(id)) throw new BadReference(`The name ${name.name} refers to itself.`);
        const meaning = follow(prepared(name.formula.replace(/^=/, ''), named), named, [...within, id]);
        const pieces = tokensOf(meaning).filter(({ kind }) => kind !== 'space');
        return pieces.length === 1 ? meaning : `(${meaning})`;
      })
      .join('');
    if (done.length > LONGEST) {
      throw new BadReference(`With what its names stand for, the formula is too long to be worked out here.`);
    }
    return done;
  };
  return follow(formula, sheet, []);
}
