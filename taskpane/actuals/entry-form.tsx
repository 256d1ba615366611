import { useId, useMemo, useState } from 'preact/hooks';
import type { ZoneBudgets } from '../../src/actuals/budget';
import { RECLEAN, taskOf, tasks, type Task } from '../../src/actuals/task';
import { readCell } from '../../src/quantity/cell';
import { dayIn } from '../../src/quantity/day';
import { shownUnit } from '../../src/quantity/shown-unit';
import { unitOf, type Kind } from '../../src/quantity/systems';
import { amount } from '../../src/site/amount';
import { restOf } from '../../src/site/offered-entry';
import { failureText } from '../shared/failure-text';
import { messageOf } from '../workbook/message-of';
import { WashdownError } from '../../src/quantity/problem';
import { dayText } from '../shared/time-text';
import type { WorkbookPort } from '../workbook/port';
import { draftOf, typedNumber, type EntryDraft, type EntryOffer } from './entry-draft';
import { addEntry, type Recorded } from './recorded';

/** What the form shows and does. */
export interface EntryFormProps {
  readonly port: WorkbookPort;
  readonly recorded: Recorded;
  readonly budgets: ZoneBudgets;
  readonly offer: EntryOffer;
  /** What was typed before, where the form was out of sight; undefined before anything is. */
  readonly typed: EntryDraft | undefined;
  /** Keeps what is typed, so that it outlasts the form. */
  readonly keep: (draft: EntryDraft) => void;
  /** Speaks a sentence. */
  readonly say: (sentence: string) => void;
  /** Called once the entry is written, or is not wanted. */
  readonly done: (written: boolean) => void;
}

/**
 * Work that was done, offered as an entry of the table Actuals. Hours that nobody has counted are left blank: those of
 * the estimate, entered as if they were worked, would teach the rates nothing.
 * @param props what it shows and does
 * @returns the form
 */
export function EntryForm({ port, recorded, budgets, offer, typed, keep, say, done }: EntryFormProps) {
  const { job, entries, table } = recorded;
  const { zone } = budgets;
  const { system } = job.factors;
  const id = useId();
  const [draft, setDraft] = useState(() => typed ?? draftOf(offer, dayText(new Date()), system));
  const { date, wall, task, area, hours, water, cleaner, note } = draft;
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

  const type = (fields: Partial<EntryDraft>) => {
    const next = { ...draft, ...fields };
    setDraft(next);
    keep(next);
  };
  const place = (nextTask: Task, nextWall: string) => {
    const row = zone.rows.find((each) => each.wall === nextWall);
    const left = restOf(nextTask, budgets, entries, row)?.area ?? 0;
    type({ task: nextTask, wall: nextWall, area: typedNumber(left, 'area', system) });
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
    done(true);
  };
  const field = (label: string, name: Exclude<keyof EntryDraft, 'task'>, more: object = {}) => (
    <p class="field">
      <label for={`${id}-${label}`}>{label}</label>
      <input
        id={`${id}-${label}`}
        value={draft[name]}
        autocomplete="off"
        onInput={(event) => {
          type({ [name]: event.currentTarget.value });
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
      {field('Date', 'date', { type: 'date' })}
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
        {task !== RECLEAN && field(`Area, ${unit('area')}`, 'area', number)}
        {field('Labor-hours', 'hours', { ...number, 'aria-describedby': `${id}-planned` })}
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
        {field(`Water, ${unit('volume')}`, 'water', number)}
        {field(`Concentrate, ${unit('volume')}`, 'cleaner', number)}
      </div>
      {field('Note', 'note')}
      {refused !== '' && <p class="notice">{refused}</p>}
      <p class="actions">
        <button type="submit" class="main" aria-disabled={writing}>
          Record
        </button>
        <button
          type="button"
          onClick={() => {
            say('Nothing was recorded.');
            done(false);
          }}
        >
          Not now
        </button>
      </p>
    </form>
  );
}

/** A text that is no number goes on as it is: what reads it says what it accepts. */
function numberOrText(text: string): number | string {
  const trimmed = text.trim();
  const number = Number(trimmed.replace(/(?<=\d),(?=\d{3}(?:\D|$))/g, ''));
  return trimmed === '' || Number.isNaN(number) ? trimmed : number;
}
