import { useId, useState } from 'preact/hooks';
import { columnIds, columns, type ColumnId } from '../../src/walls/columns';
import { messageOf } from '../workbook/message-of';
import type { PanelProps } from '../shared/panel-props';
import { FreeNames } from '../shared/free-names';
import type { Job } from '../shared/use-job';
import { readSource } from '../shared/wall-source';
import { ALTERNATE_HEADINGS } from '../../src/alternates/headings';
import { holdsAlternates } from '../shared/holds-alternates';
import { ownRows } from './alternate-rows';

const NEW = 'Alternates';
const SHOWN_WALLS = 6;
const settable = columnIds.filter((id) => id !== 'wall');

/**
 * Names an alternate of one's own: some walls, a column, and the value that it would hold.
 * @param props what it works on
 * @param props.job the estimate
 * @param props.table the table of alternates that is shown; empty where none is
 * @param props.added told of the table that holds it
 * @returns the form
 */
export function OwnAlternateForm({
  port,
  source,
  say,
  job: { zones, factors },
  table: shown,
  added,
}: PanelProps & { job: Job; table: string; added: (table: string) => void }) {
  const id = useId();
  const [name, setName] = useState('');
  const [walls, setWalls] = useState<readonly string[]>([]);
  const [column, setColumn] = useState<ColumnId>('mortar');
  const [value, setValue] = useState('');
  const [problem, setProblem] = useState('');
  const { reading } = columns[column];
  const words =
    reading.as === 'choice'
      ? reading.choices
      : reading.as === 'material'
        ? factors.materials.map((material) => material.name)
        : undefined;
  const refuse = (message: string) => {
    setProblem(message);
    say(message);
  };
  const add = async () => {
    if (name.trim() === '' || walls.length === 0) {
      refuse('Give the alternate a name, and pick its walls.');
      return;
    }
    // Asked now: what the section lists may be older than the workbook.
    const tables = (await port.tables()).filter(holdsAlternates);
    const joined = (tables.find(({ name: of }) => of === shown) ?? tables[0])?.name;
    const [ranges, table] = await Promise.all([
      readSource(port, source),
      joined === undefined ? [[...ALTERNATE_HEADINGS]] : port.readTable(joined),
    ]);
    const rows = ownRows({ name, walls, column, value }, table, ranges);
    if (joined === undefined) {
      const names = await FreeNames.of(port);
      const [sheet, made] = [names.sheet(NEW), names.table(NEW)];
      await port.write([{ sheet, address: 'A1', rows: [[...ALTERNATE_HEADINGS], ...rows], table: made }]);
      added(made);
      say(`Written. The table ${made} is on the sheet ${sheet}.`);
    } else {
      await port.addRows(joined, rows);
      added(joined);
      say(
        `Written. Added to the table ${joined}: ${String(rows.length)} ${rows.length === 1 ? 'row' : 'rows'}.`,
      );
    }
    setProblem('');
    setName('');
  };
  return (
    <details class="own-alternate">
      <summary>An alternate of your own</summary>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          add().catch((error: unknown) => {
            refuse(messageOf(error, 'The workbook cannot be written to.'));
          });
        }}
      >
        <p class="field">
          <label for={`${id}-name`}>Name of the alternate</label>
          <input
            id={`${id}-name`}
            value={name}
            onInput={(event) => {
              setName(event.currentTarget.value);
            }}
          />
        </p>
        <p class="field">
          <label for={`${id}-walls`}>Walls: one or more</label>
          <select
            id={`${id}-walls`}
            multiple
            size={SHOWN_WALLS}
            onChange={(event) => {
              setWalls([...event.currentTarget.selectedOptions].map((option) => option.value));
            }}
          >
            <option value="">All walls</option>
            {zones.map(({ zone }) => (
              <optgroup key={zone.name} label={zone.name}>
                {zone.rows.map(({ wall }) => (
                  <option key={wall} value={wall}>
                    {wall}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        </p>
        <p class="field">
          <label for={`${id}-column`}>Column</label>
          <select
            id={`${id}-column`}
            value={column}
            onChange={(event) => {
              setColumn(event.currentTarget.value as ColumnId);
              setValue('');
            }}
          >
            {settable.map((each) => (
              <option key={each} value={each}>
                {columns[each].name}
              </option>
            ))}
          </select>
        </p>
        <p class="field">
          <label for={`${id}-value`}>Value</label>
          {words ? (
            <select
              id={`${id}-value`}
              value={value}
              onChange={(event) => {
                setValue(event.currentTarget.value);
              }}
            >
              <option value="">(blank)</option>
              {words.map((word) => (
                <option key={word} value={word}>
                  {word}
                </option>
              ))}
            </select>
          ) : (
            <input
              id={`${id}-value`}
              value={value}
              onInput={(event) => {
                setValue(event.currentTarget.value);
              }}
            />
          )}
        </p>
        {problem !== '' && <p class="notice">{problem}</p>}
        <p class="actions">
          <button type="submit">Add the alternate</button>
        </p>
      </form>
    </details>
  );
}
