import type { Measure } from '../../src/actuals/entry';
import type { Standing } from '../../src/actuals/earned-value';
import type { ProgressLine } from '../../src/actuals/progress';
import { shownUnit } from '../../src/quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../../src/quantity/systems';
import { paceInWords, useInWords } from '../../src/site/pace-words';
import { rounded } from '../../src/site/amount';
import { percentText, ShareBar } from './share-bar';

const DIGITS = 2;

const measures: readonly { readonly id: Measure; readonly name: string; readonly kind: Kind }[] = [
  { id: 'hours', name: 'Labor-hours', kind: 'laborHours' },
  { id: 'water', name: 'Water', kind: 'volume' },
  { id: 'cleaner', name: 'Cleaner', kind: 'volume' },
];

const rows: readonly {
  readonly name: string;
  readonly of: (standing: Standing) => number | undefined;
  readonly isRatio?: true;
}[] = [
  { name: 'Planned', of: ({ budget }) => budget },
  { name: 'Earned', of: ({ earned }) => earned },
  { name: 'Recorded', of: ({ index, actual }) => (index === undefined ? undefined : actual) },
  { name: 'Left to earn', of: ({ budget, earned }) => budget - earned },
  { name: 'Index: earned / recorded', of: ({ index }) => index, isRatio: true },
  { name: 'At completion, at the index so far', of: ({ forecasts }) => forecasts?.atIndex },
  { name: 'At completion, the rest as planned', of: ({ forecasts }) => forecasts?.asBudgeted },
  { name: 'At completion, each task at its own index', of: ({ forecasts }) => forecasts?.taskByTask },
];

/**
 * How a zone or the job stands: a bar and a sentence for the hours, the water and the cleaner, and the numbers of all
 * three with what each is likely to come to in the end.
 * @param props the line
 * @param props.line of a zone or of the job
 * @param props.system the display system
 * @returns bars and a table
 */
export function StandingTable({ line, system }: { line: ProgressLine; system: System }) {
  const shown = measures.filter(({ id }) => line.standing[id].budget !== 0 || line.standing[id].actual > 0);
  return (
    <>
      {shown.map(({ id, name }) => {
        const standing = line.standing[id];
        const share = standing.budget > 0 ? standing.earned / standing.budget : 0;
        return (
          <div key={id} class="measure">
            <p>
              <strong>{name}</strong> {percentText(share)} done
            </p>
            <ShareBar share={share} />
            <p>{id === 'hours' ? paceInWords(standing) : useInWords(standing, system)}.</p>
          </div>
        );
      })}
      <table class="standings">
        <thead>
          <tr>
            <td />
            {shown.map(({ id, name, kind }) => (
              <th key={id} scope="col">
                {name}
                {kind === 'volume' && (
                  <>
                    <br />
                    {shownUnit(unitOf(kind, system))}
                  </>
                )}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, of, isRatio }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {shown.map(({ id, kind }) => (
                <td key={id} class="number">
                  {cellText(of(line.standing[id]), isRatio ? undefined : kind, system)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function cellText(value: number | undefined, kind: Kind | undefined, system: System): string {
  if (value === undefined) return '–';
  if (!Number.isFinite(value)) return 'no value';
  return kind === undefined ? value.toFixed(DIGITS) : rounded(show(value, kind, system));
}
