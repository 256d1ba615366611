import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { worksheetFunctions } from '../../functions/worksheet-functions';
import type { WorksheetFunction } from '../../functions/worksheet-function';
import { columnWords } from '../../src/walls/column-words';
import { columnIds, columns, type Column } from '../../src/walls/columns';
import { page, root, table } from './markdown';

/**
 * How a function is called.
 * @param entry the function
 * @returns for example `TAPE(walls, [zone], [factors], [headings])`
 */
export function callOf({ name, parameters }: WorksheetFunction): string {
  const args = parameters.map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name));
  return `${name}(${args.join(', ')})`;
}

function functionTable(): string {
  const rows = worksheetFunctions.map((entry) => [
    `[${entry.name}](docs/functions.md#${entry.name.toLowerCase()})`,
    entry.description,
    `\`${entry.example}\``,
  ]);
  return table(['function', 'gives', 'example'], rows);
}

function accepted(column: Column): string {
  const { reading } = column;
  if (reading.as === 'choice') return reading.choices.join(', ');
  if (reading.as === 'material') return 'a name or code of `WASH.MATERIALS()`';
  return reading.as === 'number' ? `a ${reading.whole === true ? 'whole ' : ''}number, 0 or more` : 'text';
}

function columnTable(): string {
  const rows = columnIds.map((id) => {
    const column: Column = columns[id];
    return [column.name, column.needed ? 'yes' : 'no', columnWords[id].means, accepted(column)];
  });
  return table(['column', 'needed', 'meaning', 'accepted'], rows);
}

function between(text: string, mark: string, content: string): string {
  const pattern = new RegExp(`(<!-- ${mark}:start -->)[\\s\\S]*(<!-- ${mark}:end -->)`);
  return text.replace(pattern, (_, start: string, end: string) => `${start}\n\n${content}\n\n${end}`);
}

/**
 * The README with its tables made anew from the lists in the code.
 * @returns its text
 */
export function freshReadme(): Promise<string> {
  const file = 'README.md';
  const text = between(readFileSync(join(root, file), 'utf8'), 'functions', functionTable());
  return page(file, [between(text, 'columns', columnTable())]);
}
