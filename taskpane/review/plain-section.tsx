import { useState } from 'preact/hooks';
import { failureText } from '../shared/failure-text';
import type { WorkbookPort } from '../workbook/port';
import { nameText, planPlain, type PlainPlan } from './plain-copy';
import { keepFormulas } from './run-review';

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'asking'; readonly plan: PlainPlan }
  | { readonly is: 'done'; readonly count: number; readonly left: readonly string[] };

function formulas(count: number): string {
  return `${String(count)} ${count === 1 ? 'formula' : 'formulas'}`;
}

/**
 * Makes this workbook one that people without the add-in can use: values in the place of formulas.
 * @param props what it works on
 * @param props.port the workbook
 * @param props.say speaks a sentence
 * @returns the section
 */
export function PlainSection({ port, say }: { port: WorkbookPort; say: (sentence: string) => void }) {
  const [state, setState] = useState<State>({ is: 'idle' });
  const look = async () => {
    const plan = await planPlain(port);
    const [first] = plan.unready;
    if (plan.places.length === 0) say('There is no Washdown formula in this workbook.');
    else if (first) {
      say(
        `${String(plan.unready.length)} of ${String(plan.places.length)} formulas show no value, such as ${first.sheet}!${first.address}. Recalculate the workbook first.`,
      );
    } else setState({ is: 'asking', plan });
  };
  const replace = async ({ places, names }: PlainPlan) => {
    await port.makePlain(places);
    // They are gone because the user wanted it so.
    await keepFormulas(port, { formulas: [], followers: [], gone: [] }).catch(() => false);
    setState({ is: 'done', count: places.length, left: names.map(nameText) });
    say(`${formulas(places.length)} replaced by values.`);
  };
  const fail = (error: unknown) => {
    say(failureText(error));
  };
  return (
    <section aria-labelledby="plain">
      <h3 id="plain">For people without the add-in</h3>
      <p>
        Without the add-in, a Washdown formula turns into #NAME? as soon as it is recalculated. Save a copy of
        this workbook, open the copy, and replace the formulas there.
      </p>
      {state.is !== 'asking' && (
        <p class="actions">
          <button
            type="button"
            onClick={() => {
              look().catch(fail);
            }}
          >
            Replace formulas by values
          </button>
        </p>
      )}
      {state.is === 'asking' && (
        <section class="notice" aria-label="Is this the copy?">
          <p>
            To be replaced by plain values: {formulas(state.plan.places.length)} on{' '}
            {[...new Set(state.plan.places.map(({ sheet }) => sheet))].join(', ')}. Formulas do not come back.
            Is this the copy?
          </p>
          <p class="actions">
            <button
              type="button"
              onClick={() => {
                setState({ is: 'idle' });
                say('Nothing was changed.');
              }}
            >
              Leave them
            </button>
            <button
              type="button"
              onClick={() => {
                replace(state.plan).catch(fail);
              }}
            >
              Replace them
            </button>
          </p>
        </section>
      )}
      {state.is === 'done' && (
        <div class="notice done" role="group" aria-label="Replaced">
          <p>{formulas(state.count)} replaced by values.</p>
          {state.left.length > 0 && (
            <ul>
              {state.left.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          )}
          <p>Validation and conditional formats were not checked: one that calls WASH. does nothing now.</p>
        </div>
      )}
    </section>
  );
}
