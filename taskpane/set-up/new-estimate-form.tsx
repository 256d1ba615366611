import { useState } from 'preact/hooks';
import type { System } from '../../src/quantity/systems';
import { FreeNames } from '../shared/free-names';
import type { SetUpProps } from './set-up-props';
import { UnitsChoice } from './units-choice';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';

/**
 * Puts a new wall table, a table of factors and their formulas into the workbook, on sheets of their own.
 * @param props what it works on
 * @returns the form
 */
export function NewEstimateForm({ port, say, choose }: SetUpProps) {
  const [system, setSystem] = useState<System>('US');
  const writing = useWriting(port, say);
  const start = async () => {
    // The sheets to write are known once they are wanted.
    const { newEstimate } = await import(/* webpackChunkName: "plans" */ './new-estimate');
    const { blocks, source, says } = newEstimate(system, await FreeNames.of(port));
    const [walls] = blocks;
    if (!walls) return;
    writing.offer({
      blocks,
      says,
      place: { sheet: walls.sheet, address: 'A2' },
      then: () => {
        choose(source);
      },
    });
  };
  return (
    <section aria-labelledby="new-estimate">
      <h3 id="new-estimate">Start with an empty estimate</h3>
      <p>Adds four sheets: walls, factors, estimate and checks. Nothing that is here is changed.</p>
      <UnitsChoice system={system} choose={setSystem} />
      <p class="actions">
        <button
          type="button"
          class="main"
          onClick={() => {
            start().catch(() => {
              writing.refuse('The workbook cannot be read.');
            });
          }}
        >
          Add the sheets
        </button>
      </p>
      <WritingNotice port={port} of={writing} say={say} />
    </section>
  );
}
