import { resultUnit } from '../../functions/result-unit';
import { catalogue } from '../../functions/catalogue';
import type { FunctionEntry } from '../../functions/worksheet-function';
import type { System } from '../../src/quantity/systems';
import type { WallSource } from '../wall-source';
import type { Block } from '../workbook/port';
import { formulaFor } from './formulas';

/** The single quantities that a summary lists, with what they are called there. */
const LINES: readonly (readonly [name: string, label: string])[] = [
  ['WATER', 'Water'],
  ['CLEANER', 'Cleaner concentrate'],
  ['MASKING', 'Masking'],
  ['TAPE', 'Tape'],
  ['LABORHOURS', 'Labor-hours'],
  ['CREWHOURS', 'Crew-hours'],
  ['RUNOFF', 'Runoff to collect'],
  ['NEUTRALIZER', 'Alkali to neutralize it'],
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
 * @returns the rows
 */
export function jobSummary(source: WallSource, system: System): Block['rows'] {
  return LINES.map(([name, label]) => {
    const called = functionNamed(name);
    const factors = [['units', system]];
    const args = called.parameters.map((parameter) => (parameter.name === 'factors' ? factors : null));
    return [label, formulaFor(called, source), resultUnit(name, args)];
  });
}
