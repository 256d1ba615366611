import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { WorkbookPort } from '../../taskpane/workbook/port';
import { openArchive, packArchive, partBytes, partText } from '../../workbench/xlsx/archive';
import { readBook } from '../../workbench/xlsx/read-book';
import { readFileSync } from 'node:fs';
import { rawArchive, WALLS } from '../workbench/raw-workbook';
import { launchChromium } from './chromium';
import { serveWorkbench } from './serve-workbench';

// Workbooks of others on the page as `npm start` serves it, in a real browser.

let command: ChildProcess;
let address: string;
let browser: Browser;
let page: Page;
const folder = mkdtempSync(join(tmpdir(), 'washdown-files-'));

beforeAll(async () => {
  ({ command, address } = await serveWorkbench(
    ['scripts/run-built.mjs', 'workbench/serve/main.ts', '--no-open', '--port', '0'],
    { detached: true },
  ));
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
  if (command.pid !== undefined) process.kill(-command.pid);
  rmSync(folder, { recursive: true });
});
beforeEach(async () => {
  page = await browser.newPage({ acceptDownloads: true });
  await page.goto(address);
  await said('Opened demo-bid-us.xlsx.');
});
afterEach(() => page.close());

const said = (text: string) => page.locator('#said').getByText(text).waitFor();

type Host = typeof globalThis & { washdownWorkbook: WorkbookPort };

function values(sheet: string, range: string) {
  return page.evaluate((place) => (globalThis as Host).washdownWorkbook.readRange(place), {
    sheet,
    address: range,
  });
}

async function open(name: string, bytes: Uint8Array): Promise<void> {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  await page.locator('#file').setInputFiles(path);
}

async function saved(): Promise<{ name: string; bytes: Uint8Array }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save .xlsx' }).click();
  const file = await download;
  const path = join(folder, 'saved');
  await file.saveAs(path);
  return { name: file.suggestedFilename(), bytes: readFileSync(path) };
}

const NAMES =
  '<definedNames><definedName name="Rate">5</definedName><definedName name="Rate" localSheetId="1">7</definedName></definedNames>';
const FOREIGN = {
  name: 'Bid',
  rows:
    '<row r="1"><c r="A1"><f>GETPIVOTDATA("Sum",X1)</f><v>11</v></c><c r="B1" t="str"><f>CELL("filename",A1)</f><v>bid</v></c>' +
    '<c r="C1"><f>\'[1]Prices\'!A1</f><v>6</v></c><c r="D1"><f>SUBTOTAL(109,Walls[Area])</f><v>180</v></c>' +
    '<c r="E1"><f>L:L*2</f><v>40</v></c><c r="F1"><f>Rate+0</f><v>7</v></c><c r="L1"><v>20</v></c></row>' +
    '<row r="2"><c r="A2" s="1"><v>85</v></c><c r="B2"><f>LEFT(A2,9)</f><v>85</v></c><c r="C2"><f>E1+1</f><v>41</v></c></row>',
};

describe('a workbook of others on the page', () => {
  it('keeps the good values of what the page cannot work out, and a name in two scopes', async () => {
    const parts = new Map(rawArchive([WALLS, FOREIGN], NAMES));
    const before = readBook(parts);
    await open('foreign.xlsx', packArchive(parts));
    await said('Opened foreign.xlsx.');
    expect(await values('Bid', 'A1:F1')).toEqual([[11, 'bid', 6, 180, 40, 7]]);
    expect(await values('Bid', 'C2')).toEqual([[41]]);
    const after = readBook(openArchive((await saved()).bytes));
    const [was, is] = [before, after].map(({ sheets }) => sheets.find(({ name }) => name === 'Bid')?.cells);
    for (const [at, { value, formula }] of was ?? []) {
      expect([at, is?.get(at)?.value, is?.get(at)?.formula]).toEqual([
        at,
        at === 'B2' ? '85' : value,
        formula,
      ]);
    }
    expect(after.names).toEqual(expect.arrayContaining([...before.names]));
  });

  it('stays where another cannot be opened', async () => {
    await open('broken.xlsx', Buffer.from('no workbook'));
    await said('The file is not a workbook');
    expect(await values('Bid', 'A1')).not.toEqual([['']]);
    expect((await saved()).name).toBe('demo-bid-us.xlsx');
  });

  it('says before saving what the copy will be without, and gives it another name', async () => {
    const parts = new Map(rawArchive([WALLS]));
    const links = '_rels/.rels';
    const link =
      '<Relationship Id="rId2" Type="http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin" Target="_xmlsignatures/origin.sigs"/>';
    parts.set(
      links,
      partBytes(partText(parts, links).replace('</Relationships>', `${link}</Relationships>`)),
    );
    parts.set('_xmlsignatures/origin.sigs', new Uint8Array());
    await open('signed.xlsx', packArchive(parts));
    await said('Opened signed.xlsx. Not shown: digital signatures.');
    let question = '';
    page.once('dialog', (dialog) => {
      question = dialog.message();
      void dialog.dismiss();
    });
    await page.getByRole('button', { name: 'Save .xlsx' }).click();
    await said('Nothing was saved.');
    expect(question).toContain('a copy without digital signatures');
    page.once('dialog', (dialog) => void dialog.accept());
    expect((await saved()).name).toBe('signed copy.xlsx');
  });

  it('can be saved where its looks are missing', async () => {
    const parts = new Map(rawArchive([WALLS]));
    const links = 'xl/_rels/workbook.xml.rels';
    const link =
      '<Relationship Id="rId91" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/>';
    parts.set(
      links,
      partBytes(partText(parts, links).replace('</Relationships>', `${link}</Relationships>`)),
    );
    await open('plain.xlsx', packArchive(parts));
    await said('Opened plain.xlsx.');
    expect(openArchive((await saved()).bytes).has('xl/styles1.xml')).toBe(true);
  });

  it('is not dropped without a question once it has changed', async () => {
    const questions: string[] = [];
    page.on('dialog', (dialog) => {
      questions.push(dialog.message());
      void dialog.dismiss();
    });
    await page.getByRole('button', { name: 'New workbook' }).click();
    await said('New workbook.');
    expect(questions).toEqual([]);
    await page.evaluate(() =>
      (globalThis as Host).washdownWorkbook.write([{ sheet: 'Sheet1', address: 'A1', rows: [['mine']] }]),
    );
    await page.getByLabel('Demo').selectOption('demo-bid-metric.xlsx');
    await expect.poll(() => questions).toEqual([expect.stringContaining('unsaved changes')]);
    expect(await values('Sheet1', 'A1')).toEqual([['mine']]);
  });
});
