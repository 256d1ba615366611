import { useCallback, useEffect, useId, useMemo, useState } from 'preact/hooks';
import type { Problem } from '../../src/quantity/problem';
import type { System } from '../../src/quantity/systems';
import { UNITS } from '../../src/rules/read-factors';
import type { ColumnId } from '../../src/walls/columns';
import { GoThere } from '../go-there';
import { messageOf } from '../message-of';
import { useReading } from '../use-reading';
import {
  readFactorRange,
  readReference,
  referenceText,
  type FactorContent,
  type Reference,
} from '../wall-source';
import { areaOf } from '../workbook/block-area';
import type { CellContent, Place, TableInfo } from '../workbook/port';
import { beginningOf, findWalls, wallsIn, type WallRows } from './find-walls';
import { FreeNames } from './free-names';
import { guessHeadings, systemOfHeadings, type HeadingMatch } from './guess-headings';
import { HeadingSelects } from './heading-selects';
import { matchWarnings, missingColumns } from './match-warnings';
import { placeOfProblem, readTest } from './read-test';
import type { SetUpProps } from './set-up-props';
import { UnitsChoice } from './units-choice';
import { useWriting } from './use-writing';
import { WritingNotice } from './writing-notice';

const PROBLEMS_SHOWN = 5;

/** Cells that the user pointed at. */
export interface Choice {
  readonly place: Place;
  /** The name of the table that they are. */
  readonly table?: string;
}

/** What the user corrected: a heading for a column, empty for none. */
type Corrections = ReadonlyMap<ColumnId, string>;

interface Cells {
  readonly rows: readonly (readonly CellContent[])[];
  readonly factors: readonly (readonly FactorContent[])[] | undefined;
}

/**
 * Cells that the user pointed at: which rows are walls, which heading is which, whether they can be read. All of it is
 * read again after cells have changed.
 * @param props what it works on
 * @param props.choice the cells
 * @param props.tables the tables of the workbook
 * @returns the form
 */
export function ChosenBlock(
  props: SetUpProps & { readonly choice: Choice; readonly tables: readonly TableInfo[] },
) {
  const { port, choice } = props;
  const [factorTable, setFactorTable] = useState('');
  const read = useCallback(async (): Promise<Cells> => {
    const [rows, factors] = await Promise.all([
      readReference(port, referenceOf(choice)),
      factorTable === '' ? undefined : readFactorRange(port, { table: factorTable }),
    ]);
    return { rows, factors };
  }, [port, choice, factorTable]);
  const reading = useReading(port, read);
  switch (reading.is) {
    case 'reading':
      return <p>Reading the cells…</p>;
    case 'failed':
      return (
        <p class="notice">
          These cells cannot be read. Select one block of cells with its headings. {reading.message}
        </p>
      );
    case 'ready':
      return (
        <Walls {...props} cells={reading.value} factorTable={factorTable} chooseFactors={setFactorTable} />
      );
  }
}

function Walls({
  port,
  say,
  choose,
  choice,
  tables,
  cells,
  factorTable,
  chooseFactors,
}: SetUpProps & {
  choice: Choice;
  tables: readonly TableInfo[];
  cells: Cells;
  factorTable: string;
  chooseFactors: (table: string) => void;
}) {
  const id = useId();
  const [heading, setHeading] = useState<number>();
  const [last, setLast] = useState<number>();
  const [corrections, setCorrections] = useState<Corrections>(new Map());
  const [typedSystem, setSystem] = useState<System>();
  const writing = useWriting(port, say);
  const { rows } = cells;
  const found = useMemo(
    () => (choice.table === undefined ? findWalls(rows, heading) : { heading: 0, last: rows.length - 1 }),
    [rows, heading, choice],
  );
  const wallRows: WallRows = {
    ...found,
    last: Math.max(found.heading, Math.min(last ?? found.last, rows.length - 1)),
  };
  const place = choice.table === undefined ? wallsIn(choice.place, rows, wallRows) : choice.place;
  const headings = cut(rows[wallRows.heading] ?? [], place, choice.place).map(String);
  const walls = rows.slice(wallRows.heading, wallRows.last + 1).map((row) => cut(row, place, choice.place));
  const guess = useMemo(() => guessHeadings(headings, walls.slice(1)), [rows, place.address]);
  const match = corrected(guess, headings, corrections);
  const system = typedSystem ?? systemOfHeadings(headings, match) ?? 'US';
  const reference = choice.table === undefined ? place : { table: choice.table };
  useEffect(() => {
    say(`${String(guess.size)} of our columns are matched by name. Check the matches.`);
    // Only what is chosen is told, not what is read again.
  }, []);
  const use = async () => {
    // The tables to write are known once they are wanted.
    const { useTable } = await import(/* webpackChunkName: "plans" */ './use-table');
    const plan = useTable(
      {
        walls: reference,
        headings,
        match,
        factors: factorTable === '' ? undefined : { table: factorTable },
        system,
      },
      await FreeNames.of(port),
    );
    writing.offer({
      blocks: plan.blocks,
      says: [`The walls are those of ${placeText(place)}.`, ...plan.says],
      place: plan.blocks[0] ? { sheet: plan.blocks[0].sheet, address: 'A1' } : place,
      then: () => {
        choose(plan.source);
      },
    });
  };
  return (
    <>
      <p>
        Walls: <strong>{placeText(place)}</strong>. Formulas name them {referenceText(reference)}.
      </p>
      {tables.some(({ name, totals }) => name === choice.table && totals) && (
        <p class="notice">
          The table ends with a totals row, which formulas read as a wall. Turn the totals row off, or select
          the rows above it and use the selected cells.
        </p>
      )}
      {choice.table === undefined && (
        <RowChoice
          {...{ rows, wallRows }}
          top={areaOf(choice.place.address).top}
          chooseHeading={(row) => {
            setHeading(row);
            setLast(undefined);
          }}
          chooseLast={setLast}
        />
      )}
      <HeadingSelects
        headings={headings}
        match={match}
        change={(next) => {
          setCorrections(correctionsOf(guess, next, headings, corrections));
        }}
      />
      <p class="field">
        <label for={`${id}-factors`}>Table of the factors</label>
        <select
          id={`${id}-factors`}
          value={factorTable}
          onChange={(event) => {
            chooseFactors(event.currentTarget.value);
          }}
        >
          <option value="">add one</option>
          {tables
            .filter(({ name }) => name !== choice.table)
            .map(({ name, sheet }) => (
              <option key={name} value={name}>
                {name}, sheet {sheet}
              </option>
            ))}
        </select>
      </p>
      {factorTable === '' && <UnitsChoice system={system} choose={setSystem} />}
      <Reading
        {...{ place, match, port, say }}
        rows={walls}
        headings={headings}
        factors={cells.factors ?? [[UNITS, system]]}
      />
      <p class="actions">
        <button
          type="button"
          class="main"
          onClick={() => {
            use().catch((error: unknown) => {
              writing.refuse(messageOf(error, 'The workbook cannot be read.'));
            });
          }}
        >
          Use these walls
        </button>
      </p>
      <WritingNotice port={port} of={writing} say={say} />
    </>
  );
}

/** Which row has the headings and which is the last wall, and what is left out by that. */
function RowChoice({
  rows,
  wallRows: { heading, last },
  top,
  chooseHeading,
  chooseLast,
}: {
  rows: Cells['rows'];
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

function Reading({
  rows,
  headings,
  place,
  match,
  factors,
  port,
  say,
}: Pick<SetUpProps, 'port' | 'say'> & {
  rows: readonly (readonly CellContent[])[];
  headings: readonly string[];
  place: Place;
  match: HeadingMatch;
  factors: readonly (readonly FactorContent[])[];
}) {
  const missing = missingColumns(match);
  const warnings = matchWarnings(headings, match, rows.slice(1)).map((sentence) => (
    <p key={sentence}>{sentence}</p>
  ));
  if (missing.length > 0) {
    return (
      <>
        <section class="notice" aria-label="What cannot be read">
          <ul>
            {missing.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
        {warnings}
      </>
    );
  }
  const test = readTest(rows, match, factors);
  if (test.is === 'read') {
    return (
      <>
        <p class="notice done">
          {counted(test.walls, 'wall')} in {counted(test.zones, 'zone')} can be read.
        </p>
        {warnings}
      </>
    );
  }
  const more = test.problems.length - PROBLEMS_SHOWN;
  return (
    <>
      <section class="notice" aria-label="What cannot be read">
        <ul>
          {test.problems.slice(0, PROBLEMS_SHOWN).map((problem) => {
            const at = placeOfProblem(problem, place, match);
            return (
              <li key={problem.message}>
                {inSheet(problem, place)}{' '}
                {at && (
                  <GoThere port={port} place={at} say={say}>
                    Go to {at.address}
                  </GoThere>
                )}
              </li>
            );
          })}
        </ul>
        {more > 0 && <p>And {more} more.</p>}
      </section>
      {warnings}
    </>
  );
}

function referenceOf({ place, table }: Choice): Reference {
  return table === undefined ? place : { table };
}

/** A row of the block as wide as the walls are. */
function cut(row: readonly CellContent[], walls: Place, block: Place): CellContent[] {
  const from = areaOf(block.address).left;
  const { left, right } = areaOf(walls.address);
  return row.slice(left - from, right - from + 1);
}

function corrected(guess: HeadingMatch, headings: readonly string[], corrections: Corrections): HeadingMatch {
  const match = new Map(guess);
  for (const [id, heading] of corrections) {
    const place = headings.indexOf(heading);
    if (heading === '') match.delete(id);
    else if (place >= 0) match.set(id, place);
  }
  return match;
}

/** What differs from the guess, as headings: a column that is put in elsewhere moves none of them. */
function correctionsOf(
  guess: HeadingMatch,
  next: HeadingMatch,
  headings: readonly string[],
  before: Corrections,
): Corrections {
  const ids = new Set([...guess.keys(), ...next.keys(), ...before.keys()]);
  return new Map(
    [...ids]
      .filter((id) => before.has(id) || guess.get(id) !== next.get(id))
      .map((id) => [id, headings[next.get(id) ?? -1] ?? '']),
  );
}

/** The rows of the sheet are what the user sees. */
function inSheet({ message, row }: Problem, place: Place): string {
  const { top } = areaOf(place.address);
  if (row === undefined || top === 1) return message;
  return message.replace(/^Row \d+/, `Row ${String(top + row - 1)} of the sheet`);
}

function counted(number: number, what: string): string {
  return `${String(number)} ${what}${number === 1 ? '' : 's'}`;
}

function placeText({ sheet, address }: Place): string {
  return `${sheet}!${address}`;
}
