import type { PartName, WorkbookPort } from '../../taskpane/workbook/port';
import { Calculation } from './calculation';
import { Cells } from './cells';
import { openWorkbook } from './files/open-workbook';
import { saveWorkbook } from './files/save-workbook';
import type { ShownWorkbook } from './files/shown-workbook';
import { loadFunctions } from './load-functions';
import type { PageBook } from './page-book';
import { showReasons } from './reason-line';
import { EMPTY, shownContents, showWorkbook } from './show-workbook';
import { createSpreadsheet } from './spreadsheet';
import { UniverWorkbook } from './univer-workbook';
import { Reasons } from './worksheet-functions';

const BUILD = 'pane';

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no element ${id}.`);
  return found;
}

function say(sentence: string): void {
  element('said').textContent = sentence;
}

async function start(): Promise<void> {
  const reasons = new Reasons();
  const bundle = await loadFunctions(BUILD);
  const filling = new Set(
    [...bundle].filter(([, { metadata }]) => metadata.result?.dimensionality === 'matrix').map(([id]) => id),
  );
  const spreadsheet = createSpreadsheet('spreadsheet', bundle, reasons);
  const { univer, api } = spreadsheet;
  const cells = new Cells(univer);
  const calculation = new Calculation(univer);
  const demo = element('demo') as HTMLSelectElement;
  const file = element('file') as HTMLInputElement;
  let book: PageBook | undefined;
  let port: WorkbookPort | undefined;
  let fileName = '';

  async function show(contents: ShownWorkbook, name: string, original?: Uint8Array): Promise<void> {
    const workbook = await showWorkbook(spreadsheet, cells, contents, book?.workbook);
    // The spreadsheet is whole once it has had a workbook.
    if (!book) showReasons(spreadsheet, reasons, element('reason'));
    await calculation.settled();
    const parts = new Map(Object.entries(contents.parts) as [PartName, string][]);
    book = { workbook, parts, ...(original ? { original } : {}) };
    fileName = name;
    port = new UniverWorkbook(api, cells, calculation, book);
    globalThis.washdownWorkbook = port;
    (element('pane') as HTMLIFrameElement).src = `${BUILD}/taskpane.html`;
  }

  async function open(bytes: Uint8Array, name: string): Promise<void> {
    const opened = await openWorkbook(bytes);
    await show(opened, name, bytes);
    const { notShown } = opened;
    say(notShown.length === 0 ? `Opened ${name}.` : `Opened ${name}. Not shown: ${notShown.join(', ')}.`);
  }

  async function openDemo(): Promise<void> {
    const answer = await fetch(demo.value);
    if (!answer.ok) throw new Error(`${demo.value} is not there. Make it first: npm run demo`);
    await open(new Uint8Array(await answer.arrayBuffer()), demo.value);
  }

  async function save(): Promise<void> {
    if (!book || !port) return;
    await calculation.settled();
    const contents = shownContents(cells, book, await port.names());
    const { bytes, lost } = await saveWorkbook(contents, book.original, filling);
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([bytes as BlobPart]));
    link.download = fileName;
    link.click();
    URL.revokeObjectURL(link.href);
    say(lost.length === 0 ? `Saved ${fileName}.` : `Saved ${fileName}, without ${lost.join(', ')}.`);
  }

  function doing(work: () => Promise<void>): () => void {
    return () => {
      work().catch((error: unknown) => {
        say(error instanceof Error ? error.message : String(error));
      });
    };
  }

  element('empty').onclick = doing(() =>
    show(EMPTY, 'workbook.xlsx').then(() => {
      say('A new workbook.');
    }),
  );
  element('save').onclick = doing(save);
  element('open').onclick = () => {
    file.click();
  };
  file.onchange = doing(async () => {
    const [chosen] = file.files ?? [];
    if (chosen) await open(new Uint8Array(await chosen.arrayBuffer()), chosen.name);
    file.value = '';
  });
  demo.onchange = doing(openDemo);
  await openDemo();
}

start().catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
});
