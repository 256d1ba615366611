import { useId, useState } from 'preact/hooks';
import { isPriced } from '../../src/estimate/price';
import { addedQuantities } from '../../src/estimate/quantities';
import { measured, type Change, type Difference } from '../../src/review/changes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { SHOWN_AT_ONCE, ShowMore } from '../shared/show-more';
import type { ChangesSince } from './changes-since';
import { differenceText, quantityText } from './number-text';

/**
 * What changed since a baseline: each change with what it did, and the whole difference.
 * @param props what is shown
 * @param props.since the changes
 * @param props.baseline name of the baseline
 * @returns the whole difference and the list
 */
export function ChangesList({
  since: { changes, whole, exact, factors },
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
      <p>Total change:</p>
      <Differences of={whole} factors={factors} />
      <p>
        Each number is what a change does on average, over every order in which the changes can be made.
        Together they make the total change.
        {!exact &&
          ' There are too many orders to try them all: the numbers are averages over 100 of them, give or take the standard error.'}
      </p>
      <ol>
        {changes.slice(0, shown).map((change) => (
          <ChangeItem key={`${change.wall} ${change.what}`} change={change} exact={exact} factors={factors} />
        ))}
      </ol>
      <ShowMore count={changes.length} shown={shown} show={show} />
    </section>
  );
}

function ChangeItem({
  change: { wall, type, what, classes, difference, error },
  exact,
  factors,
}: {
  change: Change;
  exact: boolean;
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
      {!exact && <p>Standard error: {errorText(error, factors)}</p>}
    </li>
  );
}

/** What the number that is read first is uncertain by. */
function errorText(error: Difference, factors: FactorsInForce): string {
  const id = isPriced(factors) ? 'price' : 'laborHours';
  return quantityText(error[id], addedQuantities[id].kind, factors.system);
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
