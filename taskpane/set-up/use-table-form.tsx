import { useCallback, useEffect, useId, useState } from 'preact/hooks';
import { areaOf } from '../workbook/block-area';
import type { Place, TableInfo } from '../workbook/port';
import { ChosenBlock, type Choice } from './chosen-block';
import type { SetUpProps } from './set-up-props';

/**
 * Points at walls that are in the workbook already: a table, the selected cells, or a whole sheet.
 * @param props what it works on
 * @returns the form
 */
export function UseTableForm(props: SetUpProps) {
  const { port, say } = props;
  const id = useId();
  const [tables, setTables] = useState<readonly TableInfo[]>([]);
  const [choice, setChoice] = useState<Choice>();
  const look = useCallback(() => {
    port.tables().then(setTables, () => {
      say('The tables of this workbook cannot be read.');
    });
  }, [port, say]);
  useEffect(look, [look]);

  const failed = () => {
    setChoice(undefined);
    say('These cells cannot be read. Select one block of cells with its headings.');
  };
  const takeSheet = async (sheet: string) => {
    const place = await port.usedCells(sheet);
    if (place) setChoice({ place });
    else {
      setChoice(undefined);
      say(`The sheet ${sheet} is blank.`);
    }
  };
  const takeSelection = async () => {
    const place = await port.selection();
    // Who selected one cell means what is around it.
    if (isOneCell(place)) await takeSheet(place.sheet);
    else setChoice({ place });
  };
  return (
    <section aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>Use walls that are here</h3>
      {tables.length > 0 && (
        <p class="field">
          <label for={`${id}-table`}>Table of the walls</label>
          <select
            id={`${id}-table`}
            value={choice?.table ?? ''}
            onChange={(event) => {
              const table = tables.find(({ name }) => name === event.currentTarget.value);
              if (table) setChoice({ place: table, table: table.name });
            }}
          >
            <option value="">choose</option>
            {tables.map(({ name, sheet }) => (
              <option key={name} value={name}>
                {name}, sheet {sheet}
              </option>
            ))}
          </select>
        </p>
      )}
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            port
              .selection()
              .then(({ sheet }) => takeSheet(sheet))
              .catch(failed);
          }}
        >
          Use this sheet
        </button>
        <button
          type="button"
          onClick={() => {
            takeSelection().catch(failed);
          }}
        >
          Use selected cells
        </button>
        <button type="button" onClick={look}>
          Look for tables again
        </button>
      </p>
      {choice && (
        <ChosenBlock
          {...props}
          key={`${choice.place.sheet}!${choice.place.address}`}
          choice={choice}
          tables={tables}
        />
      )}
    </section>
  );
}

function isOneCell({ address }: Place): boolean {
  const { top, left, bottom, right } = areaOf(address);
  return top === bottom && left === right;
}
