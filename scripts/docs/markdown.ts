import { join } from 'node:path';
import prettier from 'prettier';
import { DIGITS, tidy } from '../../src/quantity/shown-number';

/** The folder of the project. */
export const root = join(import.meta.dirname, '..', '..');

/**
 * A table.
 * @param headings names of the columns
 * @param rows cells; a `|` in one is no border
 * @returns its lines
 */
export function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(headings), line(headings.map(() => '---')), ...rows.map(line)].join('\n');
}

/**
 * A page as `npm run format` would leave it.
 * @param file its path within the project
 * @param blocks paragraphs, tables and headings
 * @returns its text
 */
export async function page(file: string, blocks: readonly string[]): Promise<string> {
  const options = await prettier.resolveConfig(join(root, file));
  return prettier.format(blocks.filter(Boolean).join('\n\n'), { ...options, parser: 'markdown' });
}

/**
 * A number as a reader wants it.
 * @param value the number
 * @returns six digits at most
 */
export function digits(value: number): string {
  return String(tidy(value, DIGITS.typed));
}
