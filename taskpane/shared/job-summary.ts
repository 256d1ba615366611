import { resultUnit } from '../../functions/result-unit';
import { catalogue } from '../../functions/catalogue';
import type { FunctionEntry } from '../../functions/worksheet-function';
import type { System } from '../../src/quantity/systems';
import type { WallSource } from './wall-source';
import type { Block } from '../workbook/port';
import { formulaFor, quoted } from './formulas';

/** The single quantities that a summary lists, with what they are called there. */
const LINES: readonly (readonly [name: string, label: string, part?: string])[] = [
  ['WATER', 'Water'],
  ['CLEANER', 'Cleaner concentrate'],
  ['MASKING', 'Masking'],
  ['TAPE', 'Tape'],
  ['LABORHOURS', 'Labor-hours'],
  ['LABORHOURS', 'Area per labor-hour', 'rate'],
  ['CREWHOURS', 'Crew-hours'],
  ['RUNOFF', 'Runoff to collect'],
  ['NEUTRALIZER', 'Alkali to neutralize it'],
];
const PRICE_LINES: typeof LINES = [
  ['BIDPRICE', 'Price'],
  ['BIDPRICE', 'Price per area', 'rate'],
];

/**
 * A worksheet function by its name.
 * @param name for example `WATER`
 * @returns the function
 * @throws {Error} where there is none
 */
export function functionNamed(name: string): FunctionEntry {
  const found = catalogue.find((candidate) => candidate.name === name);
  if (!found) throw new Error(`There is no function ${name}.`);
  return found;
}

/**
 * The quantities of the whole job, one a row: label, formula, unit.
 * @param source where walls, factors and headings stand
 * @param system the units of the factors
 * @param priced whether there is a price
 * @returns the rows
 */
export function jobSummary(source: WallSource, system: System, priced = false): Block['rows'] {
  return [...LINES, ...(priced ? PRICE_LINES : [])].map(([name, label, part]) => {
    const called = functionNamed(name);
    const given: Readonly<Record<string, unknown>> = { factors: [['units', system]], part };
    const args = called.parameters.map((parameter) => given[parameter.name] ?? null);
    const formula = formulaFor(called, source, part === undefined ? {} : { part: quoted(part) });
    return [label, formula, resultUnit(name, args)];
  });
}
