import { useState } from 'preact/hooks';
import { NOTES_SHEET } from '../shared/kept-text';
import { failureText } from '../shared/failure-text';
import { putOnNewSheet } from '../shared/sheet-out';
import type { WorkbookPort } from '../workbook/port';
import type { KeptProgress } from './use-progress';

const UNREAD_SHEET = 'Washdown steps, unread';
// A cell holds at most 32,767 characters.
const CHARACTERS_A_CELL = 30_000;

/**
 * Says where the progress is not kept or cannot be read, and what can be done about it.
 * @param props what is kept
 * @param props.kept the progress
 * @param props.port the workbook
 * @param props.say speaks a sentence
 * @returns a notice, or nothing
 */
export function ProgressNotices({
  kept: { state, keepOnSheet, startAnew },
  port,
  say,
}: {
  kept: KeptProgress;
  port: WorkbookPort;
  say: (sentence: string) => void;
}) {
  const [saved, setSaved] = useState('');
  const sayFailed = (undone: string) => (error: unknown) => {
    say(failureText(error, undone));
  };
  if (state.is === 'unreadable') {
    return (
      <section class="notice" aria-label="Progress that cannot be read">
        <p>
          {state.message} It is left as it is. Copy it to a new sheet, then start over; until then nothing can
          be ticked. {saved !== '' && `It is on the sheet ${saved}.`}
        </p>
        <button
          type="button"
          onClick={() => {
            putOnNewSheet(port, UNREAD_SHEET, inPieces(state.text)).then((sheet) => {
              setSaved(sheet);
              say(`The text that cannot be read is on the sheet ${sheet}.`);
            }, sayFailed('The text is not copied.'));
          }}
        >
          Copy it to a new sheet
        </button>{' '}
        {saved !== '' && (
          <button
            type="button"
            onClick={() => {
              startAnew().then(() => {
                say('The steps start over.');
              }, sayFailed('The steps do not start over.'));
            }}
          >
            Start over
          </button>
        )}
      </section>
    );
  }
  if (state.is === 'ready' && !state.kept) {
    return (
      <section class="notice" aria-label="Progress not saved">
        <p>
          This workbook does not save the progress: it is lost when the pane closes. A sheet “{NOTES_SHEET}”
          can hold it.
        </p>
        <button
          type="button"
          onClick={() => {
            keepOnSheet().then(() => {
              say(`The progress is saved on the sheet ${NOTES_SHEET}.`);
            }, sayFailed('The progress is not saved.'));
          }}
        >
          Save it on a sheet
        </button>
      </section>
    );
  }
  return null;
}

function inPieces(text: string): string[][] {
  const rows = [['Progress as it was saved']];
  for (let start = 0; start < text.length; start += CHARACTERS_A_CELL) {
    rows.push([text.slice(start, start + CHARACTERS_A_CELL)]);
  }
  return rows;
}
