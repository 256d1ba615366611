import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { libraryUs } from '../../workbench/demo/library-us';
import { makeWorkbook } from '../../workbench/demo/make-workbook';
import { workshopSi } from '../../workbench/demo/workshop-si';
import { loadBundle } from '../../workbench/engine/load-bundle';
import { estimateBook } from '../../workbench/estimate/estimate-book';
import { plainCopy } from '../../workbench/estimate/plain-copy';
import { openWorkbook } from '../../workbench/page/files/open-workbook';
import { saveWorkbook } from '../../workbench/page/files/save-workbook';
import { openArchive, partBytes, partText, type Archive } from '../../workbench/xlsx/archive';
import { throughSpreadsheet } from './page/files/through-spreadsheet';
import { brokenRules } from './written-parts';

// Proven by our own check of the format's rules, whose source stands beside them (written-parts.ts).

const bundle = loadBundle(join(import.meta.dirname, '..', '..', 'dist'));
const demo = (job: typeof libraryUs): Promise<Uint8Array> => makeWorkbook(job, bundle);
let us: Uint8Array;
let parts: Archive;
beforeAll(async () => {
  us = await demo(libraryUs);
  parts = openArchive(us);
});

describe('a file that we write keeps the rules of the format', () => {
  it('the demo, in both systems', async () => {
    expect(brokenRules(parts)).toEqual([]);
    expect(brokenRules(openArchive(await demo(workshopSi)))).toEqual([]);
  });

  it('an estimate of it', async () => {
    const { archive } = await estimateBook(openArchive(us), bundle, false);
    expect(brokenRules(archive)).toEqual([]);
  });

  it('its copy with plain values', async () => {
    const estimate = await estimateBook(openArchive(us), bundle, true);
    expect(brokenRules(plainCopy(estimate).archive)).toEqual([]);
  });

  it('what the page saves into it, and what it saves as a file of its own', async () => {
    const shown = throughSpreadsheet(await openWorkbook(us));
    expect(brokenRules(openArchive((await saveWorkbook(shown, us)).bytes))).toEqual([]);
    expect(brokenRules(openArchive((await saveWorkbook(shown)).bytes))).toEqual([]);
  });
});

describe('the check finds', () => {
  const SHEET = 'xl/worksheets/sheet2.xml';
  const changed = (path: string, from: RegExp, to: string): Archive => {
    const text = partText(parts, path);
    expect(text).toMatch(from);
    return new Map(parts).set(path, partBytes(text.replace(from, to)));
  };

  it.each([
    [
      'an order',
      'xl/workbook.xml',
      /(<sheets>.*<\/sheets>)(<calcPr[^>]*>)/s,
      '$2$1',
      'sheets is out of place',
    ],
    ['an attribute', 'xl/tables/table1.xml', / displayName="[^"]*"/, '', 'a table has no displayName'],
    ['a style', SHEET, /<c r="A1" s="\d+"/, '<c r="A1" s="9999"', 'A1 has a style that is not there'],
    ['a text', SHEET, /(<c r="A1"[^>]* t="s"[^>]*><v>)\d+/, '$199999', 'A1 has a text that is not there'],
    ['a place', SHEET, /<c r="B1"/, '<c r="A1"', 'A1 is out of place'],
    ['a relationship', SHEET, /<tablePart r:id="rId1"/, '<tablePart r:id="rId77"', 'no relationship rId77'],
    [
      'a column',
      'xl/tables/table1.xml',
      /<tableColumn [^>]*\/>/,
      '',
      'Walls has a column too many or too few',
    ],
  ])('%s that is wrong', (_, path, from, to, sentence) => {
    expect(brokenRules(changed(path, from, to)).join('\n')).toContain(sentence);
  });

  it('a part that is missing', () => {
    const archive = new Map(parts);
    archive.delete('xl/styles.xml');
    expect(brokenRules(archive).join('\n')).toContain('leads to xl/styles.xml');
  });
});
