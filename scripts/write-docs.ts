import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import prettier from 'prettier';
import { worksheetFunctions } from '../functions/catalogue';
import { columnMeanings } from '../src/walls/column-meanings';
import { columnIds, columns, type Column } from '../src/walls/columns';

const readme = join(dirname(dirname(fileURLToPath(import.meta.url))), 'README.md');

function functionTable(): string {
  const rows = worksheetFunctions.map(({ name, parameters, description, rule, example }) => {
    const args = parameters.map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name));
    return `| \`${name}(${args.join(', ')})\` | ${description} | ${rule} | \`${example}\` |`;
  });
  return ['| function | gives | rule | example |', '| --- | --- | --- | --- |', ...rows].join('\n');
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
    return `| ${column.name} | ${column.needed ? 'yes' : 'no'} | ${columnMeanings[id]} | ${accepted(column)} |`;
  });
  return ['| column | needed | meaning | accepted |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

function between(text: string, mark: string, content: string): string {
  const pattern = new RegExp(`(<!-- ${mark}:start -->)[\\s\\S]*(<!-- ${mark}:end -->)`);
  return text.replace(pattern, (_, start: string, end: string) => `${start}\n\n${content}\n\n${end}`);
}

/**
 * The README with its tables made anew from the lists in the code.
 * @returns its text
 */
export async function freshReadme(): Promise<string> {
  const text = between(readFileSync(readme, 'utf8'), 'functions', functionTable());
  const options = await prettier.resolveConfig(readme);
  return prettier.format(between(text, 'columns', columnTable()), { ...options, parser: 'markdown' });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(readme, await freshReadme());
