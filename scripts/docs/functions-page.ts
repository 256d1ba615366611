import { worksheetFunctions } from '../../functions/worksheet-functions';
import type { FunctionName } from '../../functions/runs';
import { traceNames } from '../../functions/trace-names';
import { isCellError, type CellValue, type WorksheetFunction } from '../../functions/worksheet-function';
import { kinds } from '../../src/quantity/systems';
import { errorsOf, errorsOfWalls, type FunctionError } from './function-errors';
import { exampleArguments, examplePrices } from './example-job';
import { page, table } from './markdown';
import { callOf } from './readme';
import { whatIfs } from './what-if';

const SHARED = ['walls', 'zone', 'factors', 'headings'];

function argumentTable(parameters: WorksheetFunction['parameters']): string {
  return table(
    ['argument', 'needed', 'meaning'],
    parameters.map(({ name, optional, description }) => [
      `\`${name}\``,
      optional ? 'no' : 'yes',
      description,
    ]),
  );
}

function errorLines(errors: readonly FunctionError[]): string[] {
  return errors.map(({ error, where }) => `- \`${error}\`: ${where}`);
}

/** What the columns of a spill are called; or its lines, where each has a name and a unit of its own; or its parts. */
function spilled({ name, run, parameters }: WorksheetFunction, factors: unknown): string[] {
  const rows = run(exampleArguments(parameters, { factors })) as CellValue[][];
  if (name === 'BIDPAGE') return rows.map(([part]) => text(part)).filter((part) => part !== '');
  return typeof rows[0]?.[1] === 'number'
    ? rows.map(([label, , unit]) => `${text(label)} (${text(unit)})`)
    : (rows[0] ?? []).map(text);
}

function text(cell: CellValue | undefined): string {
  return cell === undefined || isCellError(cell) ? '' : String(cell);
}

function givesOf(entry: WorksheetFunction): string {
  if (entry.result === 'scalar') {
    if (entry.unit === 'text') return 'One text.';
    if (entry.unit === 'class') return 'One number, a class from 0 to 3.';
    const { US, SI } = kinds[entry.unit];
    if (entry.unit === 'money') return 'One number, in the money of your prices.';
    return US === SI ? `One number: ${US}.` : `One number: ${US}, or ${SI} in SI units.`;
  }
  const priced = spilled(entry, examplePrices);
  const plain = spilled(entry, null);
  const more = priced.filter((heading) => !plain.includes(heading));
  const besides = more.length > 0 ? ` With a price of labor also: ${more.join(', ')}.` : '';
  return `A spill: ${plain.join(', ')}.${besides}`;
}

function section(entry: WorksheetFunction): string[] {
  const { name, description, parameters, rule, example } = entry;
  const own = parameters.filter((parameter) => !SHARED.includes(parameter.name));
  const errors = errorsOf[name as FunctionName];
  const ofWalls = parameters.some((parameter) => parameter.name === 'walls');
  return [
    `## ${name}`,
    description,
    ['```', `=WASH.${callOf(entry)}`, example, '```'].join('\n'),
    own.length > 0 ? argumentTable(own) : '',
    name === 'TRACE' ? `Quantities: ${traceNames.join(', ')}.` : '',
    `**Gives.** ${givesOf(entry)}`,
    `**Rule.** ${rule[0]?.toUpperCase() ?? ''}${rule.slice(1)}.`,
    errors.length > 0 || ofWalls ? '**Errors.**' : '',
    [...(ofWalls ? ['- [those of the walls](#what-many-of-them-share)'] : []), ...errorLines(errors)].join(
      '\n',
    ),
  ];
}

/**
 * The page of the worksheet functions.
 * @returns its text
 */
export function freshFunctionsPage(): Promise<string> {
  const shared = SHARED.flatMap((name) => {
    const found = worksheetFunctions
      .flatMap(({ parameters }) => parameters)
      .find((each) => each.name === name);
    return found ? [found] : [];
  });
  return page('docs/functions.md', [
    '# The worksheet functions',
    'Made by `npm run docs` from `functions/catalogue.ts` and by calling the functions.',
    'Each is an ordinary formula, typed with `WASH.` before its name. None writes into another cell, remembers anything or depends on the time of day.',
    worksheetFunctions.map(({ name }) => `[${name}](#${name.toLowerCase()})`).join(' · '),
    '## What many of them share',
    argumentTable(shared),
    'Numbers are in US units (ft, ft2, US gal, lb, psi, degrees F) unless the factors have a row `units` with `SI` (m, m2, L, kg, kPa, degrees C). The other factors are on the page [how the numbers are made](how-the-numbers-are-made.md).',
    'An error is a cell error, never text in place of a number. Its message says what was seen and what is accepted. Every function with the argument `walls` gives',
    errorLines(errorsOfWalls).join('\n'),
    '### A what-if in one cell',
    'Put an ordinary `IF` over a whole range inside a Washdown formula, and it works with some cells replaced. The sheet stays as it is. To compare several choices side by side, use [ALTERNATES](#alternates).',
    table(
      ['question', 'formula'],
      whatIfs.map(({ ask, formula }) => [ask, `\`${formula}\``]),
    ),
    ...worksheetFunctions.flatMap(section),
  ]);
}
