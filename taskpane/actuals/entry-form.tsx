import { useId, useMemo, useState } from 'preact/hooks';
import type { ZoneBudgets } from '../../src/actuals/budget';
import { taskOf, tasks, type Task } from '../../src/actuals/task';
import { readCell } from '../../src/quantity/cell';
import { dayIn } from '../../src/quantity/day';
import { shownNumber } from '../../src/quantity/shown-number';
import { shownUnit } from '../../src/quantity/shown-unit';
import { show, unitOf, type Kind } from '../../src/quantity/systems';
import { amount } from '../../src/site/amount';
import { restOf } from '../../src/site/offered-entry';
import { failureText } from '../shared/failure-text';
import { messageOf } from '../workbook/message-of';
import { WashdownError } from '../../src/quantity/problem';
import { dayText } from '../shared/time-text';
import type { WorkbookPort } from '../workbook/port';
import { addEntry, type Recorded } from './recorded';

// As many digits as a number keeps through a change of units.
const DIGITS = 12;
const MEASURED_DIGITS = 3;
// A hundredth of an hour is half a minute.
const MOST_PLACES = 4;

/** What the form starts with. */
export interface EntryOffer {
  readonly task: Task;
  /** m2; 0 where the task has no area. */
  readonly area: number;
  /** Labor-hours that a clock has counted; undefined where nobody has counted them. */
  readonly counted?: number;
  readonly note?: string;
}

/** What the form shows and does. */
export interface EntryFormProps {
  readonly port: WorkbookPort;
  readonly recorded: Recorded;
  readonly budgets: ZoneBudgets;
  readonly offer: EntryOffer;
  /** Speaks a sentence. */
  readonly say: (sentence: string) => void;
  /** Called once the entry is written, or is not wanted. */
  readonly done: () => void;
}

/**
 * Work that was done, offered as an entry of the table Actuals. Hours that nobody has counted are left blank: those of
 * the estimate, entered as if they were worked, would teach the rates nothing.
 * @param props what it shows and does
 * @returns the form
 */
export function EntryForm({ port, recorded, budgets, offer, say, done }: EntryFormProps) {
  const { job, entries, table } = recorded;
  const { zone } = budgets;
  const { system } = job.factors;
  const id = useId();
  const [date, setDate] = useState(() => dayText(new Date()));
  const [wall, setWall] = useState('');
  const [task, setTask] = useState(offer.task);
  const [area, setArea] = useState(() =>
    offer.counted === undefined ? shown(offer.area, 'area') : measured(show(offer.area, 'area', system)),
  );
  const [hours, setHours] = useState(() => (offer.counted === undefined ? '' : measured(offer.counted)));
  const [water, setWater] = useState('');
  const [cleaner, setCleaner] = useState('');
  const [note, setNote] = useState(offer.note ?? '');
  const [refused, setRefused] = useState('');
  const [writing, setWriting] = useState(false);
  // A zone of thousands of walls is not listed again at each letter.
  const walls = useMemo(
    () =>
      zone.rows.map((row) => (
        <option key={row.row} value={row.wall}>
          {row.wall}
        </option>
      )),
    [zone],
  );
  const rest = restOf(
    task,
    budgets,
    entries,
    zone.rows.find((row) => row.wall === wall),
  );

  function shown(value: number, kind: Kind): string {
    return value === 0 ? '' : shownNumber(value, kind, system, DIGITS);
  }
  const place = (nextTask: Task, nextWall: string) => {
    const row = zone.rows.find((each) => each.wall === nextWall);
    setTask(nextTask);
    setWall(nextWall);
    setArea(shown(restOf(nextTask, budgets, entries, row)?.area ?? 0, 'area'));
  };
  const refuse = (message: string) => {
    setRefused(message);
    say(message);
  };
  const record = async () => {
    const where = await addEntry(port, job, {
      date: dayIn(readCell(date)) ?? '',
      ...(wall === '' ? { zone: zone.name } : { zone: zone.name, wall }),
      task: task.name,
      area: numberOrText(area),
      hours: numberOrText(hours),
      water: numberOrText(water),
      cleaner: numberOrText(cleaner),
      note,
    });
    say(`Recorded in ${where}.`);
    done();
  };
  const field = (label: string, value: string, set: (text: string) => void, more: object = {}) => (
    <p class="field">
      <label for={`${id}-${label}`}>{label}</label>
      <input
        id={`${id}-${label}`}
        value={value}
        autocomplete="off"
        onInput={(event) => {
          set(event.currentTarget.value);
        }}
        {...more}
      />
    </p>
  );
  const unit = (kind: Kind) => shownUnit(unitOf(kind, system));
  const number = { inputMode: 'decimal' };
  return (
    <form
      class="entry not-printed"
      aria-labelledby={`${id}-title`}
      onSubmit={(event) => {
        event.preventDefault();
        if (writing) return;
        setWriting(true);
        record()
          .catch((error: unknown) => {
            refuse(error instanceof WashdownError ? messageOf(error, '') : failureText(error));
          })
          .finally(() => {
            setWriting(false);
          });
      }}
    >
      <h4 id={`${id}-title`}>Record this work?</h4>
      <p>
        {table
          ? `It goes to the end of the table ${table.name}.`
          : 'This workbook has no table Actuals yet: one is made on a new sheet, with this as its first entry.'}
      </p>
      {field('Date', date, setDate, { type: 'date' })}
      <p class="field">
        <label for={`${id}-where`}>Zone or wall</label>
        <select
          id={`${id}-where`}
          value={wall}
          onChange={(event) => {
            place(task, event.currentTarget.value);
          }}
        >
          <option value="">{zone.name}, the whole zone</option>
          {walls}
        </select>
      </p>
      <p class="field">
        <label for={`${id}-task`}>Task</label>
        <select
          id={`${id}-task`}
          value={task.name}
          onChange={(event) => {
            place(taskOf(event.currentTarget.value) ?? task, wall);
          }}
        >
          {tasks.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <div class="pair">
        {field(`Area, ${unit('area')}`, area, setArea, number)}
        {field('Labor-hours', hours, setHours, { ...number, 'aria-describedby': `${id}-planned` })}
      </div>
      <p id={`${id}-planned`}>
        {offer.counted === undefined
          ? 'The hours of everyone, added up. '
          : 'Counted by the dwell clock for the team. '}
        {rest
          ? `The estimate has ${amount(rest.hours, 'laborHours', system)} for ${rest.area > 0 ? `the ${amount(rest.area, 'area', system)} that are not recorded yet` : 'this'}.`
          : 'By the estimate, none of this task is left here.'}
      </p>
      <div class="pair">
        {field(`Water, ${unit('volume')}`, water, setWater, number)}
        {field(`Concentrate, ${unit('volume')}`, cleaner, setCleaner, number)}
      </div>
      {field('Note', note, setNote)}
      {refused !== '' && <p class="notice">{refused}</p>}
      <p class="actions">
        <button type="submit" class="main" aria-disabled={writing}>
          Record
        </button>
        <button
          type="button"
          onClick={() => {
            say('Nothing was recorded.');
            done();
          }}
        >
          Not now
        </button>
      </p>
    </form>
  );
}

/** As it can be measured on the wall, and never more than there is. */
function measured(value: number): string {
  if (!(value > 0)) return '';
  const place = MEASURED_DIGITS - 1 - Math.floor(Math.log10(value));
  const step = 10 ** Math.min(MOST_PLACES, place);
  return String(Math.floor(value * step) / step);
}

/** A text that is no number goes on as it is: what reads it says what it accepts. */
function numberOrText(text: string): number | string {
  const trimmed = text.trim();
  const number = Number(trimmed.replace(/(?<=\d),(?=\d{3}(?:\D|$))/g, ''));
  return trimmed === '' || Number.isNaN(number) ? trimmed : number;
}
