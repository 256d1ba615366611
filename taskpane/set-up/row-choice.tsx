import { useId } from 'preact/hooks';
import type { CellContent } from '../workbook/port';
import { beginningOf, type WallRows } from './find-walls';

/**
 * Which row has the headings and which is the last wall, and what is left out by that.
 * @param props the rows of the block
 * @param props.rows its cells
 * @param props.wallRows which of them are walls
 * @param props.top the row of the sheet that the block begins in
 * @param props.chooseHeading takes another row of headings
 * @param props.chooseLast takes another last row
 * @returns two fields and what they leave out
 */
export function RowChoice({
  rows,
  wallRows: { heading, last },
  top,
  chooseHeading,
  chooseLast,
}: {
  rows: readonly (readonly CellContent[])[];
  wallRows: WallRows;
  top: number;
  chooseHeading: (row: number) => void;
  chooseLast: (row: number) => void;
}) {
  const id = useId();
  const field = (name: string, label: string, row: number, least: number, choose: (row: number) => void) => (
    <p class="field">
      <label for={`${id}-${name}`}>{label}</label>
      <input
        id={`${id}-${name}`}
        type="number"
        min={top + least}
        max={top + rows.length - 1}
        value={top + row}
        onChange={(event) => {
          const typed = event.currentTarget.valueAsNumber - top;
          if (Number.isInteger(typed) && typed >= least && typed < rows.length) choose(typed);
        }}
      />
    </p>
  );
  const after = rows[last + 1];
  return (
    <>
      {field('heading', 'Row of the headings', heading, 0, chooseHeading)}
      {field('last', 'Last row of the walls', last, heading, chooseLast)}
      {heading > 0 && (
        <p>
          {heading === 1
            ? `Row ${String(top)} above the headings is`
            : `Rows ${String(top)} to ${String(top + heading - 1)} above the headings are`}{' '}
          left alone.
        </p>
      )}
      {after && (
        <p>
          {beginningOf(after) === ''
            ? `Row ${String(top + last + 1)}, which is blank, and what is below it are left out.`
            : `Row ${String(top + last + 1)} (“${beginningOf(after)}”) and what is below it are left out.`}
        </p>
      )}
      <p>A wall that is added later counts where its row is inserted between these.</p>
    </>
  );
}
