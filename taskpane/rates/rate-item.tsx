import { isFromEntries, rowsInWords } from '../../src/actuals/finding-words';
import { noteOf } from '../../src/actuals/note';
import type { ObservedRate } from '../../src/actuals/rates';
import { DIGITS, shownNumber, tidy } from '../../src/quantity/shown-number';
import { withUnit } from '../../src/quantity/shown-unit';
import { show, unitOf } from '../../src/quantity/systems';
import { factorRow } from '../../src/rules/factor-row';
import type { FactorId } from '../../src/rules/factors';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { amount } from '../../src/site/amount';
import type { FactorChange } from './seen-factors';

const PERCENT = 100;

/**
 * What a rate from recorded work changes in the factor table.
 * @param rate the rate
 * @param factors the factors in force
 * @returns its blended value as it is shown, and its note
 */
export function changeOf(rate: ObservedRate, factors: FactorsInForce): FactorChange {
  const { id } = rate.factor;
  // What is shown is what is written.
  const value = tidy(show(rate.blended, factorRow(id).kind, factors.system), DIGITS.sentence);
  return { id, value, note: noteOf(rate.observations) };
}

/**
 * A value of a factor with its unit.
 * @param id the factor
 * @param value as the display system has it
 * @param factors the factors in force, for their display system
 * @returns for example `50.43 ft²/labor-h`
 */
export function factorText(id: FactorId, value: number, factors: FactorsInForce): string {
  return withUnit(String(tidy(value, DIGITS.sentence)), unitOf(factorRow(id).kind, factors.system));
}

/**
 * One rate that recorded work shows, with a box to choose it.
 * @param props the rate
 * @param props.rate what the entries show
 * @param props.factors the factors in force
 * @param props.chosen whether it is chosen
 * @param props.choose chooses it or not
 * @returns the list item
 */
export function RateItem({
  rate,
  factors,
  chosen,
  choose,
}: {
  rate: ObservedRate;
  factors: FactorsInForce;
  chosen: boolean;
  choose: (chosen: boolean) => void;
}) {
  const { factor, observations, outliers, weight } = rate;
  const { id } = factor;
  const { system } = factors;
  const kind = factorRow(id).kind;
  const text = (value: number) => factorText(id, show(value, kind, system), factors);
  const sum = (of: 'area' | 'hours') => observations.reduce((total, each) => total + each[of], 0);
  const count = observations.length;
  const facts: readonly (readonly [string, string])[] = [
    [
      count === 1 ? '1 entry' : `${String(count)} entries`,
      `${amount(sum('area'), 'area', system)} in ${amount(sum('hours'), 'laborHours', system)}`,
    ],
    [factors.overridden(id) ? 'Stated value' : 'Starting value', text(rate.inForce)],
    ['From the entries alone', text(rate.plain)],
    ['Blended', text(rate.blended)],
    ['Its 80% range', `${shownNumber(rate.low, kind, system, DIGITS.sentence)} to ${text(rate.high)}`],
    ['Weight of the entries', `${String(Math.round(weight * PERCENT))}%`],
  ];
  return (
    <li class="rate">
      <label>
        <input
          type="checkbox"
          checked={chosen}
          onChange={(event) => {
            choose(event.currentTarget.checked);
          }}
        />{' '}
        <strong>{id}</strong>
      </label>
      <p>{factorRow(id).meaning}</p>
      <dl>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {outliers.length > 0 && (
        <p class="finding">Far from the others, counted anyway: {rowsInWords(outliers)} of Actuals.</p>
      )}
      {isFromEntries(factors.note(id)) && (
        <p class="finding">
          The value in force is itself {factors.note(id)}: where these are the same entries, using the blend
          would count them twice.
        </p>
      )}
    </li>
  );
}
