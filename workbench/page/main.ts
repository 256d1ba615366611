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
import { SheetOrPane } from './sheet-or-pane';
import { switchByKey } from './switch-by-key';
import { createSpreadsheet } from './spreadsheet';
import { UniverWorkbook } from './univer-workbook';
import { UnsavedChanges } from './unsaved-changes';
import { Reasons } from './worksheet-functions';

const BUILD = 'pane';

function element(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (!found) throw new Error(`The page has no element ${id}.`);
  return found;
}

/** A name beside that of a file, so that the one does not take the place of the other. */
function copyOf(name: string): string {
  return name.replace(/(\.[^.]*)?$/, ' copy$1');
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
  const changes = new UnsavedChanges(univer);
  const demo = element('demo') as HTMLSelectElement;
  const file = element('file') as HTMLInputElement;
  const sheetOrPane = new SheetOrPane(element('turn'), document.body);
  let book: PageBook | undefined;
  let port: WorkbookPort | undefined;
  let fileName = '';

  async function show(contents: ShownWorkbook, name: string, original?: Uint8Array): Promise<void> {
    const workbook = await showWorkbook(spreadsheet, cells, contents, book?.workbook);
    // The spreadsheet is whole once it has had a workbook.
    if (!book) showReasons(spreadsheet, reasons, element('reason'));
    await calculation.settled();
    const parts = new Map(Object.entries(contents.parts) as [PartName, string][]);
    book = { workbook, parts, keptNames: contents.keptNames ?? [], ...(original ? { original } : {}) };
    fileName = name;
    port = new UniverWorkbook(api, cells, calculation, book, () => {
      sheetOrPane.show('sheet');
    });
    globalThis.washdownWorkbook = port;
    changes.saved();
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
    // What is left out is said before, and the file that has it keeps its name.
    const name = lost.length === 0 ? fileName : copyOf(fileName);
    const question = `The saved workbook will be a copy without ${lost.join(', ')}. Keep ${fileName}, which has them. Save ${name}?`;
    if (lost.length > 0 && !confirm(question)) {
      say('Nothing was saved.');
      return;
    }
    const link = document.createElement('a');
    link.href = URL.createObjectURL(new Blob([bytes as BlobPart]));
    link.download = name;
    link.click();
    URL.revokeObjectURL(link.href);
    changes.saved();
    say(lost.length === 0 ? `Saved ${name}.` : `Saved ${name}, without ${lost.join(', ')}.`);
  }

  /** Asks before work is dropped that was not saved. */
  function mayLeave(): boolean {
    return !changes.unsaved || confirm(`${fileName} has unsaved changes. Discard them?`);
  }

  function doing(work: () => Promise<void>): () => void {
    return () => {
      work().catch((error: unknown) => {
        say(error instanceof Error ? error.message : String(error));
      });
    };
  }

  window.addEventListener('beforeunload', (event) => {
    if (changes.unsaved) event.preventDefault();
  });
  element('empty').onclick = doing(async () => {
    if (!mayLeave()) return;
    await show(EMPTY, 'workbook.xlsx');
    say('New workbook.');
  });
  element('save').onclick = doing(save);
  element('open').onclick = () => {
    file.click();
  };
  file.onchange = doing(async () => {
    const [chosen] = file.files ?? [];
    if (chosen && mayLeave()) await open(new Uint8Array(await chosen.arrayBuffer()), chosen.name);
    file.value = '';
  });
  demo.onchange = doing(async () => {
    if (mayLeave()) await openDemo();
  });
  switchByKey(element('pane') as HTMLIFrameElement, (shown) => {
    sheetOrPane.show(shown);
  });
  await openDemo();
}

start().catch((error: unknown) => {
  say(error instanceof Error ? error.message : String(error));
});
