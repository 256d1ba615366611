import { useId, useState } from 'preact/hooks';
import { maskOptions, type MaskOption } from '../../src/estimate/options';
import { isPriced } from '../../src/estimate/price';
import { className } from '../../src/rules/cleaner-classes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { PanelProps } from '../shared/panel-props';
import type { Job } from '../shared/use-job';
import { ApplyLine } from './apply-line';
import { ladderOutcome, laterInWords, rungCondition, rungMark, rungName } from './ladder-words';
import { costText, quantityText, ratesText } from './number-text';

const MARK_SIZE = 12;
const JOB = { money: 'Price of the job', laborHours: 'Labor-hours of the job' } as const;

/**
 * What each class of cleaner takes in a zone, with what must be masked for it.
 * @param props what it works on
 * @param props.job the estimate
 * @returns the choice of zone, the ladder as a picture and as a table, and what applies a line of it
 */
export function Ladder({ job: { zones, factors }, ...props }: PanelProps & { job: Job }) {
  const id = useId();
  const [chosen, choose] = useState('');
  const zone = zones.find(({ zone: { name } }) => name === chosen) ?? zones[0];
  if (zone === undefined) return <p>There is no wall in the table yet.</p>;
  const all = zones.map((each) => each.zone);
  const [options = []] = maskOptions([zone.zone], all, factors);
  return (
    <>
      <p>
        A zone is washed with one cleaner, and the unmasked material that tolerates least sets its class.
        Masking that wall allows a stronger one for the rest; masonry that was masked is washed afterwards,
        with its own. Every line leaves the same walls clean.
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
      <ApplyLine
        key={zone.zone.name}
        {...props}
        options={options}
        rows={zone.zone.rows}
        zone={zone.zone.name}
      />
    </>
  );
}

function Rungs({ options, factors }: { options: readonly MaskOption[]; factors: FactorsInForce }) {
  const priced = isPriced(factors);
  const hoursOf = ({ estimate }: MaskOption) => estimate?.totals.laborHours ?? NaN;
  const priceOf = ({ estimate }: MaskOption) => estimate?.totals.price ?? NaN;
  const mostHours = most(options.map(hoursOf));
  const mostPrice = most(options.map(priceOf));
  return (
    <ol class="rungs">
      {options.map((option) => {
        const offered = option.estimate !== undefined;
        const mark = rungMark(option, factors);
        return (
          <li key={String(option.class)} class={offered ? 'rung' : 'rung not-offered'}>
            <p class="rung-name">
              <strong>{rungName(option)}</strong> {mark !== undefined && <Mark word={mark} />}
            </p>
            {offered && (
              <Bar
                label="Labor-hours"
                value={hoursOf(option)}
                of={mostHours}
                text={costText(hoursOf(option), 'laborHours')}
              />
            )}
            {offered && priced && (
              <Bar
                label="Price"
                value={priceOf(option)}
                of={mostPrice}
                text={costText(priceOf(option), 'money')}
              />
            )}
            {option.estimate && priced && <p class="number">{ratesText(option.estimate.totals, factors)}</p>}
            {offered && (
              <p class="rung-job">
                <span>{JOB[priced ? 'money' : 'laborHours']}</span>{' '}
                <span class="number">{costText(option.job, priced ? 'money' : 'laborHours')}</span>
              </p>
            )}
            <p>
              {rungCondition(option)}
              {offered && option.reason !== undefined && ` ${option.reason}`}
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

function Mark({ word }: { word: string }) {
  return (
    <span class="mark">
      <svg width={MARK_SIZE} height={MARK_SIZE} viewBox="0 0 12 12" aria-hidden="true">
        <path d="M6 0 12 6 6 12 0 6Z" />
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
              <th scope="col">Rows masked</th>
              <th scope="col">Washed afterwards</th>
              <th scope="col">Class used</th>
              <th scope="col">Masking</th>
              <th scope="col">Water</th>
              <th scope="col">Labor-hours</th>
              {priced && <th scope="col">Price</th>}
              <th scope="col">{JOB[priced ? 'money' : 'laborHours']}</th>
              <th scope="col">Mark</th>
            </tr>
          </thead>
          <tbody>
            {options.map((option) => {
              const { estimate } = option;
              const totals = estimate?.totals;
              return (
                <tr key={String(option.class)}>
                  <th scope="row">{option.class ?? 'as marked'}</th>
                  <td>{option.class === undefined ? '' : className(option.class)}</td>
                  <td>{estimate ? everyWall(option) : option.reason}</td>
                  <td>{estimate ? laterInWords(estimate.laterClasses) || 'none' : ''}</td>
                  <td>{estimate?.classToUse ?? 'none'}</td>
                  <td>{quantityText(totals?.maskingArea ?? NaN, 'area', system)}</td>
                  <td>{quantityText(totals?.water ?? NaN, 'volume', system)}</td>
                  <td>{costText(totals?.laborHours ?? NaN, 'laborHours')}</td>
                  {priced && <td>{costText(totals?.price ?? NaN, 'money')}</td>}
                  <td>{costText(option.job, priced ? 'money' : 'laborHours')}</td>
                  <td>{rungMark(option, factors)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function everyWall({ masked }: MaskOption): string {
  return masked.map(({ wall }) => wall).join(', ') || 'none';
}

function most(values: readonly number[]): number {
  return values.reduce((greatest, value) => (value > greatest ? value : greatest), 0);
}
