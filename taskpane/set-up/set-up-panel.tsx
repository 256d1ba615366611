import { useState } from 'preact/hooks';
import { RULES_VERSION } from '../../src/rules/version';
import { ChosenWalls } from './chosen-walls';
import { InsertForm } from './insert-form';
import { NewEstimateForm } from './new-estimate-form';
import { SendPageForm } from './send-page-form';
import type { SetUpProps } from './set-up-props';
import { UseTableForm } from './use-table-form';

/**
 * Puts tables and formulas into the workbook, or points at walls that are there.
 * @param props what it works on
 * @returns the panel
 */
export function SetUpPanel(props: SetUpProps) {
  const { source } = props;
  // What was written is reported inside, so it stays open after walls have been chosen.
  const [open] = useState(source === undefined);
  return (
    <article class="set-up">
      <h2>Set up</h2>
      {source ? (
        <>
          <ChosenWalls {...props} source={source} />
          <InsertForm {...props} source={source} />
          <SendPageForm {...props} source={source} />
        </>
      ) : (
        <p>Washdown reads the walls of this workbook from a table. Start one, or point at yours.</p>
      )}
      <details open={open}>
        <summary>Choose the walls</summary>
        <NewEstimateForm {...props} />
        <UseTableForm {...props} />
      </details>
      <p class="rules">Rules {RULES_VERSION}</p>
    </article>
  );
}
