import { useId, useState } from 'preact/hooks';
import { isPriced } from '../../src/estimate/price';
import { addedQuantities } from '../../src/estimate/quantities';
import { measured, type Change, type Difference } from '../../src/review/changes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { ChangesSince } from './changes-since';
import { differenceText } from './number-text';

// A longer list would hold the pane up while it is drawn.
const SHOWN_AT_ONCE = 25;

/**
 * What changed since a baseline: each change with what it did, and the whole difference.
 * @param props what is shown
 * @param props.since the changes
 * @param props.baseline name of the baseline
 * @returns the whole difference and the list
 */
export function ChangesList({
  since: { changes, whole, factors },
  baseline,
}: {
  since: ChangesSince;
  baseline: string;
}) {
  const id = useId();
  const [shown, show] = useState(SHOWN_AT_ONCE);
  if (changes.length === 0) return <p>Nothing has changed since {baseline}.</p>;
  return (
    <section class="changes" aria-labelledby={`${id}-title`}>
      <h4 id={`${id}-title`}>
        {changes.length === 1 ? 'One change' : `${String(changes.length)} changes`} since {baseline}
      </h4>
      <p>The whole difference:</p>
      <Differences of={whole} factors={factors} />
      <p>
        The changes are made one after another: walls removed, changed, added. Each has what it does at its
        turn, so that together they are the whole difference.
      </p>
      <ol>
        {changes.slice(0, shown).map((change) => (
          <ChangeItem key={`${change.type} ${change.wall}`} change={change} factors={factors} />
        ))}
      </ol>
      {changes.length > shown && (
        <button
          type="button"
          onClick={() => {
            show(shown + SHOWN_AT_ONCE);
          }}
        >
          Show {Math.min(SHOWN_AT_ONCE, changes.length - shown)} more
        </button>
      )}
    </section>
  );
}

function ChangeItem({
  change: { wall, type, what, classes, difference },
  factors,
}: {
  change: Change;
  factors: FactorsInForce;
}) {
  return (
    <li>
      <p>
        <strong>{wall}</strong>, {type}
      </p>
      <p>{what}</p>
      <p>Class: {classes}</p>
      <Differences of={difference} factors={factors} />
    </li>
  );
}

function Differences({ of, factors }: { of: Difference; factors: FactorsInForce }) {
  const shown = measured.filter((id) => id !== 'price' || isPriced(factors));
  return (
    <dl class="differences">
      {shown.map((id) => (
        <div key={id}>
          <dt>{addedQuantities[id].heading}</dt>
          <dd>{differenceText(of[id], addedQuantities[id].kind, factors.system)}</dd>
        </div>
      ))}
    </dl>
  );
}
