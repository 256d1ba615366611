import { useJob } from '../use-job';
import type { WallSource } from '../wall-source';
import { FreeNames } from './free-names';
import { sendPage } from './send-page';
import type { SetUpProps } from './set-up-props';
import { useWriting } from './use-writing';
import { WritingNotice } from './writing-notice';

/**
 * Adds a sheet that can be printed and sent with the bid.
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
      blocks: [sendPage(source, sheet, system, tables)],
      says: [`Sheet ${sheet}: the page to send. It follows the walls and the factors.`],
      place: { sheet, address: 'A1' },
    });
  };
  return (
    <section aria-labelledby="send-page">
      <h3 id="send-page">A page to send</h3>
      <p>Scope, quantities, what is included and what is not, alternates, clarifications and the price.</p>
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            add().catch(() => {
              writing.refuse('The workbook cannot be read.');
            });
          }}
        >
          Add the bid page
        </button>
      </p>
      <WritingNotice port={port} of={writing} say={say} />
    </section>
  );
}
