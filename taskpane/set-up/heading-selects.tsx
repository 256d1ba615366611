import { useId } from 'preact/hooks';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import type { HeadingMatch } from './guess-headings';

/**
 * One choice of heading for each of our columns.
 * @param props the headings and their match
 * @param props.headings the headings of the table
 * @param props.match which of them stand for our columns
 * @param props.change takes another match
 * @returns a table of choices
 */
export function HeadingSelects({
  headings,
  match,
  change,
}: {
  headings: readonly string[];
  match: HeadingMatch;
  change: (match: HeadingMatch) => void;
}) {
  const id = useId();
  const choose = (column: ColumnId, place: string) => {
    const next = new Map(match);
    if (place === '') next.delete(column);
    else next.set(column, Number(place));
    change(next);
  };
  return (
    <table class="headings">
      <caption>Which heading is which</caption>
      <thead>
        <tr>
          <th scope="col">Our column</th>
          <th scope="col">Heading here</th>
        </tr>
      </thead>
      <tbody>
        {columnIds.map((column) => (
          <tr key={column}>
            <th scope="row">
              <label for={`${id}-${column}`}>
                {columns[column].name}
                {columns[column].needed && <small> needed</small>}
              </label>
            </th>
            <td>
              <select
                id={`${id}-${column}`}
                value={String(match.get(column) ?? '')}
                aria-invalid={columns[column].needed && !match.has(column)}
                onChange={(event) => {
                  choose(column, event.currentTarget.value);
                }}
              >
                <option value="">not here</option>
                {headings.map((heading, place) => (
                  <option key={place} value={String(place)}>
                    {heading}
                  </option>
                ))}
              </select>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
