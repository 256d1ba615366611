import { useJob } from '../shared/use-job';
import type { WallSource } from '../shared/wall-source';
import { FreeNames } from '../shared/free-names';
import { dayPlanSheet, sendPage } from './send-page';
import type { SetUpProps } from './set-up-props';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';

/**
 * Adds sheets that can be printed: the page to send with the bid, the plan for the crew.
 * @param props what it works on
 * @returns the form
 */
export function SendPageForm({ port, source, say }: SetUpProps & { readonly source: WallSource }) {
  const state = useJob(port, source);
  const writing = useWriting(port, say);
  if (state.is !== 'ready') return null;
  const { system } = state.job.factors;
  const add = async () => {
    const [names, tables] = await Promise.all([FreeNames.of(port), port.tables()]);
    const sheet = names.sheet('Bid page');
    writing.offer({
      blocks: sendPage(source, sheet, system, tables),
      says: [`Sheet ${sheet}: the page to send. It follows the walls and the factors.`],
      place: { sheet, address: 'A1' },
    });
  };
  const addPlan = async () => {
    const sheet = (await FreeNames.of(port)).sheet('Day plan');
    writing.offer({
      blocks: [dayPlanSheet(source, sheet)],
      says: [`Sheet ${sheet}: what is done on each working day. It follows the walls and the factors.`],
      place: { sheet, address: 'A1' },
    });
  };
  const started = (work: Promise<void>) => {
    work.catch(() => {
      writing.refuse('The workbook cannot be read.');
    });
  };
  return (
    <section aria-labelledby="send-page">
      <h3 id="send-page">Pages to send</h3>
      <p>
        Scope, quantities, what is included and what is not, alternates, clarifications and the price; and a
        plan by working day for the crew.
      </p>
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            started(add());
          }}
        >
          Add the bid page
        </button>
        <button
          type="button"
          onClick={() => {
            started(addPlan());
          }}
        >
          Add the day plan
        </button>
      </p>
      <WritingNotice port={port} of={writing} say={say} />
    </section>
  );
}
