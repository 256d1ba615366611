import { useId } from 'preact/hooks';
import { cleanerClasses } from '../../../src/rules/cleaner-classes';
import { classLine, type FactorLine } from '../../../src/rules/factor-lines';
import type { Edit, Standing } from './factor-edits';

const DIGITS = 6;
const MONEY = 'money';

/**
 * One factor of the form: its value, its note, and what it takes.
 * @param props the factor
 * @param props.line the factor as a form shows it
 * @param props.standing how it stands in the table
 * @param props.edit what was typed
 * @param props.refusal what is wrong with it; undefined where nothing is
 * @param props.takesNote whether the table has a column for notes
 * @param props.change takes what is typed
 * @returns the fields
 */
export function FactorField({
  line,
  standing,
  edit = {},
  refusal,
  takesNote,
  change,
}: {
  line: FactorLine;
  standing: Standing;
  edit: Edit | undefined;
  refusal: string | undefined;
  takesNote: boolean;
  change: (edit: Edit) => void;
}) {
  const id = useId();
  const { meaning, unit, bracket } = line;
  const value = edit.value ?? standing.value;
  const note = edit.note ?? standing.note;
  const choices = choicesOf(line);
  const shared = {
    id,
    value,
    'aria-invalid': refusal !== undefined,
    'aria-describedby': `${id}-about`,
  };
  return (
    <div class="factor">
      <label for={id}>{line.id}</label>
      <p class="value">
        {choices ? (
          <select
            {...shared}
            onChange={(event) => {
              change({ ...edit, value: event.currentTarget.value });
            }}
          >
            <option value="">{String(line.start)}, the starting value</option>
            {choices.map(([word, label]) => (
              <option key={word} value={word}>
                {label}
              </option>
            ))}
          </select>
        ) : (
          <input
            {...shared}
            placeholder={String(line.start)}
            spellcheck={false}
            onInput={(event) => {
              change({ ...edit, value: event.currentTarget.value });
            }}
          />
        )}
        {unit !== '' && <span>{unit}</span>}
      </p>
      {refusal !== undefined && (
        <p class="wrong" role="alert">
          {refusal}
        </p>
      )}
      <p id={`${id}-about`} class="about">
        {meaning.charAt(0).toUpperCase() + meaning.slice(1)}. {takes(line)}
        {bracket !== '' && ` Published for like work: ${bracket}.`}
      </p>
      {takesNote && (standing.value !== '' || standing.note !== '' || value !== '' || note !== '') && (
        <input
          class="note"
          aria-label={`Note on ${line.id}`}
          placeholder="Note: where it comes from"
          value={note}
          onInput={(event) => {
            change({ ...edit, note: event.currentTarget.value });
          }}
        />
      )}
    </div>
  );
}

/** The words that it takes, each with what a list shows; undefined where it takes a number. */
function choicesOf({ id, choices }: FactorLine): readonly (readonly [string, string])[] | undefined {
  if (id === classLine.id)
    return cleanerClasses.map(({ class: of, name }) => [String(of), `${String(of)}, ${name}`]);
  return choices.length === 0 ? undefined : choices.map((word) => [word, word]);
}

function takes({ choices, start, unit, least, most }: FactorLine): string {
  const inUnit = ['', MONEY].includes(unit) ? '' : ` ${unit}`;
  const from = start === '' ? 'Not stated at the start.' : `Starting value: ${shown(start)}${inUnit}.`;
  if (choices.length > 0 || most === '') return from;
  return `${from} Minimum ${shown(least)}, maximum ${shown(most)}${inUnit}.`;
}

function shown(value: number | string): string {
  return typeof value === 'string'
    ? value
    : value.toLocaleString(undefined, { maximumFractionDigits: DIGITS });
}
