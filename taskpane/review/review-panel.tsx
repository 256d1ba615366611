import { useEffect, useRef, useState } from 'preact/hooks';
import { reviewRows } from '../../src/review/audit/review-sheet';
import { keepOnSheet, NOTES_SHEET } from '../shared/kept-text';
import { PlainSection } from './plain-section';
import { failureText } from '../shared/failure-text';
import { putOnNewSheet } from '../shared/sheet-out';
import { timeText } from '../shared/time-text';
import type { WallSource } from '../shared/wall-source';
import type { WorkbookPort } from '../workbook/port';
import { FindingsList } from './findings-list';
import { formulasText, keepFormulas, runReview, type Review, type ReviewProgress } from './run-review';
import { browserTurns } from '../shared/slices';
import { messageOf } from '../workbook/message-of';

/** What the shell gives to Review. */
export interface ReviewProps {
  readonly port: WorkbookPort;
  readonly source: WallSource | undefined;
  readonly say: (sentence: string) => void;
}

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'running'; readonly progress: ReviewProgress; readonly stop: () => void }
  | { readonly is: 'done'; readonly review: Review; readonly at: string; readonly byHand: boolean };

const SHEET = 'Washdown review';
// Widths in characters: kind, sheet, cell, what, what to do, formula.
const WIDTHS = [20, 14, 10, 50, 40, 50, 10, 40];

/**
 * Checks the Washdown formulas of the workbook.
 * @param props what it works on
 * @returns the panel
 */
export function ReviewPanel({ port, source, say }: ReviewProps) {
  const [state, setState] = useState<State>({ is: 'idle' });
  const stopped = useRef<AbortController>(undefined);
  useEffect(() => () => stopped.current?.abort(), []);
  const run = async () => {
    const controller = new AbortController();
    stopped.current = controller;
    const progress = (now: ReviewProgress) => {
      setState({
        is: 'running',
        progress: now,
        stop: () => {
          controller.abort();
        },
      });
    };
    progress({ doing: 'Reading the cells', done: 0, total: 0 });
    say('The review is running.');
    const review = await runReview({
      port,
      source,
      turns: browserTurns,
      signal: controller.signal,
      progress,
    });
    if (!review) {
      setState({ is: 'idle' });
      say('The review was stopped.');
      return;
    }
    const byHand = await port.calculatesByHand().catch(() => false);
    setState({ is: 'done', review, at: timeText(new Date()), byHand });
    say(summaryOf(review));
  };
  return (
    <article class="review">
      <h2>Review</h2>
      <p>
        Recalculates and checks every Washdown formula of this workbook, and lists what a reviewer should look
        at. No cell is changed; where a formula differs, the workbook is recalculated.
      </p>
      <p class="actions">
        {/* One button throughout, so that the focus stays where it is. */}
        <button
          type="button"
          class="main"
          onClick={() => {
            if (state.is === 'running') {
              state.stop();
              return;
            }
            run().catch((error: unknown) => {
              setState({ is: 'idle' });
              say(`The review ended early. ${messageOf(error, '')}`);
            });
          }}
        >
          {state.is === 'running' ? 'Stop' : state.is === 'done' ? 'Review again' : 'Review the workbook'}
        </button>
      </p>
      {state.is === 'running' && <Running progress={state.progress} />}
      {state.is === 'done' && <Outcome {...state} port={port} say={say} />}
      <PlainSection port={port} say={say} />
    </article>
  );
}

function Running({ progress: { doing, done, total } }: { progress: ReviewProgress }) {
  return (
    <label>
      {doing}
      {total > 0 && `: ${String(done)} of ${String(total)}`}
      <progress {...(total > 0 ? { value: done, max: total } : {})} />
    </label>
  );
}

function Outcome({
  review,
  at,
  byHand,
  port,
  say,
}: Pick<ReviewProps, 'port' | 'say'> & { review: Review; at: string; byHand: boolean }) {
  const [remembered, setRemembered] = useState(review.remembered);
  const [accepted, setAccepted] = useState(false);
  const { findings, formulas, followers, gone } = review;
  const fail = (undone: string) => (error: unknown) => {
    say(failureText(error, undone));
  };
  const writeSheet = async () => {
    const rows = reviewRows(findings, { formulas: formulas.length, agree: review.agree }, at);
    const sheet = await putOnNewSheet(port, SHEET, rows, WIDTHS);
    say(`The review is on the sheet ${sheet}.`);
  };
  return (
    <>
      <p class="outcome">
        <strong>{summaryOf(review)}</strong> {at}
      </p>
      {byHand && (
        <p class="notice">
          This workbook is set to manual calculation: its cells may be out of date until F9 is pressed.
        </p>
      )}
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            writeSheet().catch(fail('There is no copy of the review.'));
          }}
        >
          Copy to a new sheet
        </button>
      </p>
      <FindingsList findings={findings} port={port} say={say} />
      {gone.length > 0 && !accepted && (
        <section class="notice" aria-label="Formulas that are gone">
          <p>
            {gone.length === 1 ? 'One cell' : `${String(gone.length)} cells`} held a formula when it was
            written or last reviewed. This is listed until the formula is back, or until you accept the cells
            as they are.
          </p>
          <button
            type="button"
            onClick={() => {
              keepFormulas(port, { formulas, followers, gone: [] }).then(() => {
                setAccepted(true);
                say('Accepted: the next review does not list these cells.');
              }, fail('The cells are not accepted.'));
            }}
          >
            Accept the cells as they are
          </button>
        </section>
      )}
      {!remembered && (
        <section class="notice" aria-label="Not saved">
          <p>
            This workbook does not save which cells held formulas, so the next review cannot tell what was
            typed over. A sheet “{NOTES_SHEET}” can hold it.
          </p>
          <button
            type="button"
            onClick={() => {
              keepOnSheet(port, 'formulas', formulasText(review)).then(() => {
                setRemembered(true);
                say(`Saved on the sheet ${NOTES_SHEET}.`);
              }, fail('The formulas are not saved.'));
            }}
          >
            Add the sheet
          </button>
        </section>
      )}
    </>
  );
}

function summaryOf({ formulas, agree, findings }: Review): string {
  if (formulas.length === 0 && findings.length === 0) return 'There is no Washdown formula in this workbook.';
  const show = formulas.length === 1 ? 'formula shows what it should' : 'formulas show what they should';
  const things = findings.length === 1 ? 'thing' : 'things';
  return `${String(agree)} of ${String(formulas.length)} ${show}; ${String(findings.length)} ${things} to look at.`;
}
