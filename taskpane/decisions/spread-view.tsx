import { useId } from 'preact/hooks';
import { isPriced } from '../../src/estimate/price';
import type { FactorSwing, QuantitySpread, Spread } from '../../src/estimate/spread';
import { factorRow } from '../../src/rules/factor-row';
import { DRAWS, type DrawnRanges } from './draw-ranges';
import { costText, quantityText } from './number-text';

const BAR_HEIGHT = 12;

interface Measure {
  readonly label: string;
  readonly kind: 'money' | 'laborHours';
  readonly spread: QuantitySpread;
}

/**
 * The ranges in a sentence, to be spoken.
 * @param drawn the ranges
 * @returns the tenths and the half of the draws
 */
export function spreadOutcome(drawn: DrawnRanges): string {
  const said = measuresOf(drawn).map(({ label, kind, spread }) => {
    const [low, likely, high] = ends(spread.drawn).map((end) => costText(end, kind));
    return Number.isNaN(spread.mean)
      ? `${label}: some trials have no value.`
      : `${label}: ${low ?? ''} to ${high ?? ''}, half of the trials below ${likely ?? ''}.`;
  });
  return said.join(' ');
}

/**
 * Labor-hours and price as ranges, and the factors by what they move.
 * @param props what is shown
 * @param props.drawn the ranges
 * @returns a table and the ranked factors as bars
 */
export function SpreadView({ drawn }: { drawn: DrawnRanges }) {
  const id = useId();
  const { result, factors, table: of, seed } = drawn;
  const measures = measuresOf(drawn);
  const kind = isPriced(factors) ? 'money' : 'laborHours';
  return (
    <section aria-labelledby={`${id}-title`}>
      <h4 id={`${id}-title`}>
        Ranges from {of}: {DRAWS.toLocaleString()} trials, seed {seed}
      </h4>
      <div class="scroll" role="region" aria-label="Ranges" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">Range</th>
              <th scope="col">Low</th>
              <th scope="col">Likely</th>
              <th scope="col">High</th>
            </tr>
          </thead>
          <tbody>
            {measures.flatMap(({ label, kind: measured, spread }) =>
              (['drawn', 'threePoint'] as const).map((which) => (
                <tr key={label + which}>
                  <th scope="row">
                    {label}, {which === 'drawn' ? 'trials' : 'three points'}
                  </th>
                  {ends(spread[which]).map((end, place) => (
                    <td key={place} class="number">
                      {costText(end, measured)}
                    </td>
                  ))}
                </tr>
              )),
            )}
          </tbody>
        </table>
      </div>
      <p>
        Trials: a tenth lies below low, half below likely, a tenth above high. Three points: every factor at
        its better end, at its likely value, at its worse end.
      </p>
      {measures.some(({ spread }) => Number.isNaN(spread.mean)) && (
        <p class="notice">
          Some trials have no value: a zone has no wash cycle there. Look at the ranges of dwell, rates and
          patches.
        </p>
      )}
      <h4>What moves {kind === 'money' ? 'the price' : 'the labor-hours'} most</h4>
      <Swings swings={result.swings} textOf={(value) => quantityText(value, kind, factors.system)} />
    </section>
  );
}

function Swings({ swings, textOf }: { swings: readonly FactorSwing[]; textOf: (value: number) => string }) {
  const all = swings.flatMap(ends).filter(Number.isFinite);
  const least = Math.min(...all);
  const width = Math.max(...all) - least;
  const place = (value: number) => (width > 0 ? ((value - least) / width) * 100 : 0);
  return (
    <ol class="swings">
      {swings.map(({ id, low, likely, high }) => (
        <li key={id}>
          <p>
            <strong>{id}</strong>, {factorRow(id).meaning}
          </p>
          {Number.isFinite(low) && Number.isFinite(high) && (
            <svg width="100%" height={BAR_HEIGHT} aria-hidden="true">
              <line x1="0" x2="100%" y1={BAR_HEIGHT / 2} y2={BAR_HEIGHT / 2} />
              <rect
                x={`${String(place(Math.min(low, high)))}%`}
                width={`${String(Math.abs(place(high) - place(low)))}%`}
                height={BAR_HEIGHT}
              />
              <line
                class="likely"
                x1={`${String(place(likely))}%`}
                x2={`${String(place(likely))}%`}
                y1="0"
                y2="100%"
              />
            </svg>
          )}
          <p>
            {textOf(low)} at its low, {textOf(high)} at its high
            {Number.isFinite(high - low) &&
              `: ${high === low ? 'moves nothing here' : `moves it by ${textOf(Math.abs(high - low))}`}`}
          </p>
        </li>
      ))}
    </ol>
  );
}

function measuresOf({ result, factors }: DrawnRanges): Measure[] {
  const hours: Measure = { label: 'Labor-hours', kind: 'laborHours', spread: result.laborHours };
  return isPriced(factors) ? [hours, { label: 'Price', kind: 'money', spread: result.price }] : [hours];
}

function ends({ low, likely, high }: Spread): [number, number, number] {
  return [low, likely, high];
}
