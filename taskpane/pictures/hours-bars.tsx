import { addedQuantities, hourParts, type Quantities } from '../../src/estimate/quantities';
import { rounded } from '../../src/site/amount';

/**
 * Labor-hours by part, as bars with their numbers; the crew-hours that they make below.
 * @param props the hours
 * @param props.totals quantities of a zone or of the job
 * @param props.finding why some have no value
 * @returns a table whose bars repeat its numbers
 */
export function HoursBars({ totals, finding }: { totals: Quantities; finding: string | undefined }) {
  const shown = hourParts.filter((id) => totals[id] !== 0);
  const most = shown.reduce((most, id) => Math.max(most, numberOr0(totals[id])), 0);
  return (
    <>
      <table class="hours">
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col" colSpan={2}>
              Labor-hours
            </th>
          </tr>
        </thead>
        <tbody>
          {shown.map((id) => (
            <tr key={id}>
              <th scope="row">{addedQuantities[id].heading.replace(/ hours$/, '')}</th>
              <td class="number">{hoursText(totals[id])}</td>
              <td class="bar">
                <svg width="100%" height="12" aria-hidden="true">
                  <rect width={`${String((numberOr0(totals[id]) / (most || 1)) * 100)}%`} height="12" />
                </svg>
              </td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Together</th>
            <td class="number">{hoursText(totals.laborHours)}</td>
            <td />
          </tr>
          <tr>
            <th scope="row">In crew-hours</th>
            <td class="number">{hoursText(totals.crewHours)}</td>
            <td />
          </tr>
        </tfoot>
      </table>
      {finding !== undefined && <p>{finding}</p>}
    </>
  );
}

function numberOr0(hours: number): number {
  return Number.isFinite(hours) ? hours : 0;
}

function hoursText(hours: number): string {
  return Number.isFinite(hours) ? rounded(hours) : 'no value';
}
