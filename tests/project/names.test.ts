import * as formulajs from '@formulajs/formulajs';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../functions/worksheet-functions';

const names = worksheetFunctions.map(({ name }) => name);
const SHIPPED = [
  'CLASS',
  'GOVERNING',
  'GOVERNOR',
  'WATER',
  'MASKING',
  'TAPE',
  'CREWHOURS',
  'CLEANER',
  'SCHEDULE',
  'WALLROWS',
  'TRACE',
  'CHECKS',
  'FACTORS',
  'MATERIALS',
  'SOURCES',
  'RUNOFF',
  'NEUTRALIZER',
  'BIDPRICE',
  'PATCH',
  'NOZZLE',
  'DRYING',
  'OPTIONS',
  'CHANGES',
  'ALTERNATES',
  'PROGRESS',
  'RATES',
  'BIDPAGE',
  'DAYPLAN',
];
const LOCALES = 'node_modules/@univerjs/sheets-formula-ui/lib/locale';

/** Built-in names as the packages list them. Their locales translate what is said of a function, not its name. */
function builtInNames(): Set<string> {
  const known = new Set(Object.keys(formulajs).map((name) => name.toUpperCase()));
  for (const folder of [LOCALES, 'node_modules/@univerjs/sheets-formula/lib/locale']) {
    if (!existsSync(folder)) continue;
    for (const file of readdirSync(folder).filter((name) => name.endsWith('.js'))) {
      const text = readFileSync(join(folder, file), 'utf8');
      for (const [, name] of text.matchAll(/["']?([A-Z][A-Z0-9._]{2,})["']?\s*:\s*\{/g))
        if (name) known.add(name);
    }
  }
  return known;
}

describe('names of the worksheet functions', () => {
  it('are pinned: a shipped id never changes', () => {
    expect(names).toEqual(expect.arrayContaining(SHIPPED));
  });

  it('follow the rules of the host: a letter first, 3 characters or more, no cell address, each once', () => {
    for (const name of names) {
      expect(name).toMatch(/^[A-Z][A-Z0-9._]{2,}$/);
      expect(name).not.toMatch(/^[A-Z]{1,3}[0-9]+$/);
    }
    expect(new Set(names).size).toBe(names.length);
  });

  it('are no built-in function', () => {
    const known = builtInNames();
    expect(known.has('SUMPRODUCT') && known.has('VLOOKUP')).toBe(true);
    expect(names.filter((name) => known.has(name))).toEqual([]);
  });
});
