import { useState } from 'preact/hooks';
import { RULES_VERSION } from '../../src/rules/version';
import type { WallSource } from '../shared/wall-source';
import { whenShown } from '../shared/when-shown';
import { ChosenWalls } from './chosen-walls';
import { NewEstimateForm } from './new-estimate-form';
import type { SetUpProps } from './set-up-props';
import { UseTableForm } from './use-table-form';

type WithWalls = SetUpProps & { readonly source: WallSource };

// What needs walls is not waited for when the pane opens.
const InsertForm = whenShown<WithWalls>(() =>
  import(/* webpackChunkName: "insert" */ './insert-form').then((module) => module.InsertForm),
);
const SendPageForm = whenShown<WithWalls>(() =>
  import(/* webpackChunkName: "insert" */ './send-page-form').then((module) => module.SendPageForm),
);
const FactorForm = whenShown<WithWalls>(() =>
  import(/* webpackChunkName: "factors" */ './factors/factor-form').then((module) => module.FactorForm),
);

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
          <Factors {...props} source={source} />
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

function Factors(props: WithWalls) {
  const [shown, setShown] = useState(false);
  return (
    <details
      onToggle={(event) => {
        setShown(event.currentTarget.open);
      }}
    >
      <summary>Factors</summary>
      {shown && <FactorForm {...props} />}
    </details>
  );
}
