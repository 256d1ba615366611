import { useId, useState } from 'preact/hooks';
import { maskOptions, type MaskOption } from '../../src/estimate/options';
import { isPriced } from '../../src/estimate/price';
import { className } from '../../src/rules/cleaner-classes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { Job } from '../use-job';
import { ladderOutcome, rungCondition, rungMarks, rungName, type RungMark } from './ladder-words';
import { costText, quantityText } from './number-text';

const MARK_SIZE = 12;

/**
 * What each class of cleaner takes in a zone, with what must be masked for it.
 * @param props what it works on
 * @param props.job the estimate
 * @returns the choice of zone, the ladder as a picture, and as a table
 */
export function Ladder({ job: { zones, factors } }: { job: Job }) {
  const id = useId();
  const [chosen, choose] = useState('');
  const zone = zones.find(({ zone: { name } }) => name === chosen) ?? zones[0];
  if (zone === undefined) return <p>There is no wall in the table yet.</p>;
  const options = maskOptions(zone.zone, factors);
  return (
    <>
      <p>
        A zone is washed with one cleaner, and the most sensitive unmasked wall sets its class. Masking that
        wall allows a stronger one: more masking, less scrubbing.
      </p>
      <p class="field">
        <label for={`${id}-zone`}>Zone of the ladder</label>
        <select
          id={`${id}-zone`}
          value={String(zones.indexOf(zone))}
          onChange={(event) => {
            choose(zones[Number(event.currentTarget.value)]?.zone.name ?? '');
          }}
        >
          {zones.map(({ zone: { name } }, index) => (
            <option key={name} value={String(index)}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <figure class="ladder">
        <figcaption>
          <strong>{ladderOutcome(options, factors)}</strong>
        </figcaption>
        <Rungs options={options} factors={factors} />
        <LadderTable options={options} factors={factors} zone={zone.zone.name} />
      </figure>
    </>
  );
}

function Rungs({ options, factors }: { options: readonly MaskOption[]; factors: FactorsInForce }) {
  const hoursOf = ({ estimate }: MaskOption) => estimate?.totals.crewHours ?? NaN;
  const priceOf = ({ estimate }: MaskOption) => estimate?.totals.price ?? NaN;
  const mostHours = most(options.map(hoursOf));
  const mostPrice = most(options.map(priceOf));
  return (
    <ol class="rungs">
      {options.map((option) => {
        const feasible = option.estimate !== undefined;
        return (
          <li key={option.class} class={feasible ? 'rung' : 'rung not-feasible'}>
            <p class="rung-name">
              <strong>{rungName(option)}</strong>{' '}
              {rungMarks(option, factors).map((mark) => (
                <Mark key={mark.is} mark={mark} />
              ))}
            </p>
            {feasible && (
              <Bar
                label="Crew-hours"
                value={hoursOf(option)}
                of={mostHours}
                text={costText(hoursOf(option), 'crewHours')}
              />
            )}
            {feasible && isPriced(factors) && (
              <Bar
                label="Price"
                value={priceOf(option)}
                of={mostPrice}
                text={costText(priceOf(option), 'money')}
              />
            )}
            <p>
              {rungCondition(option, factors.system)}
              {feasible && option.reason !== undefined && ` ${option.reason}`}
            </p>
          </li>
        );
      })}
    </ol>
  );
}

function Bar({ label, value, of, text }: { label: string; value: number; of: number; text: string }) {
  const share = Number.isFinite(value) && of > 0 ? value / of : 0;
  return (
    <p class="rung-bar">
      <span>{label}</span>{' '}
      <svg width="100%" height={MARK_SIZE} aria-hidden="true">
        <rect width={`${String(share * 100)}%`} height={MARK_SIZE} />
      </svg>
      <span class="number">{text}</span>
    </p>
  );
}

function Mark({ mark: { is, word } }: { mark: RungMark }) {
  return (
    <span class="mark">
      <svg width={MARK_SIZE} height={MARK_SIZE} viewBox="0 0 12 12" aria-hidden="true">
        {is === 'cheapest' ? <path d="M6 0 12 6 6 12 0 6Z" /> : <circle cx="6" cy="6" r="4.5" class="ring" />}
      </svg>{' '}
      {word}
    </span>
  );
}

function LadderTable({
  options,
  factors,
  zone,
}: {
  options: readonly MaskOption[];
  factors: FactorsInForce;
  zone: string;
}) {
  const priced = isPriced(factors);
  const { system } = factors;
  return (
    <details>
      <summary>The ladder as a table</summary>
      <div class="scroll" role="region" aria-label="The ladder as a table" tabIndex={0}>
        <table>
          <caption>Mask or govern: {zone}</caption>
          <thead>
            <tr>
              <th scope="col">Class allowed</th>
              <th scope="col">Cleaner</th>
              <th scope="col">Rows to mask</th>
              <th scope="col">Left unwashed</th>
              <th scope="col">Class used</th>
              <th scope="col">Masking</th>
              <th scope="col">Water</th>
              <th scope="col">Crew-hours</th>
              {priced && <th scope="col">Price</th>}
              <th scope="col">Mark</th>
            </tr>
          </thead>
          <tbody>
            {options.map((option) => {
              const { estimate } = option;
              return (
                <tr key={option.class}>
                  <th scope="row">{option.class}</th>
                  <td>{className(option.class)}</td>
                  <td>{estimate ? everyWall(option) : option.reason}</td>
                  <td>{quantityText(estimate ? option.leftUnwashed : NaN, 'area', system)}</td>
                  <td>{estimate?.governing?.classToUse ?? 'none'}</td>
                  <td>{quantityText(estimate?.totals.maskingArea ?? NaN, 'area', system)}</td>
                  <td>{quantityText(estimate?.totals.water ?? NaN, 'volume', system)}</td>
                  <td>{costText(estimate?.totals.crewHours ?? NaN, 'crewHours')}</td>
                  {priced && <td>{costText(estimate?.totals.price ?? NaN, 'money')}</td>}
                  <td>
                    {rungMarks(option, factors)
                      .map(({ word }) => word)
                      .join(', ')}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function everyWall({ toMask }: MaskOption): string {
  return toMask.map(({ wall }) => wall).join(', ') || 'none';
}

function most(values: readonly number[]): number {
  return values.reduce((greatest, value) => (value > greatest ? value : greatest), 0);
}
