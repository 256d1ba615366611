import { useCallback, useEffect, useId, useMemo, useState } from 'preact/hooks';
import type { System } from '../../src/quantity/systems';
import { readFactors, UNITS } from '../../src/rules/read-factors';
import type { ColumnId } from '../../src/walls/columns';
import { messageOf } from '../workbook/message-of';
import { useReading } from '../shared/use-reading';
import {
  readFactorRange,
  readReference,
  referenceText,
  type FactorContent,
  type Reference,
} from '../shared/wall-source';
import { areaOf } from '../workbook/block-area';
import type { CellContent, Place, TableInfo } from '../workbook/port';
import { findWalls, wallsIn, type WallRows } from './find-walls';
import { FreeNames } from '../shared/free-names';
import { guessHeadings, systemOfHeadings, type HeadingMatch } from './guess-headings';
import { HeadingSelects } from './heading-selects';
import { MaterialNamesForm } from './material-names-form';
import { ReadNotice } from './read-notice';
import { RowChoice } from './row-choice';
import type { SetUpProps } from './set-up-props';
import { UnitsChoice } from './units-choice';
import { nameRows, unknownMaterials, type OwnNames } from './unknown-materials';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';

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
  const [names, setNames] = useState<OwnNames>(new Map());
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
  // A new table takes names; one that is there may have some already.
  const { materials } = useMemo(() => readFactors(null), []);
  const unknown = factorTable === '' ? unknownMaterials(walls.slice(1), match, materials) : [];
  const ownNames = new Map([...names].filter(([name]) => unknown.includes(name)));
  useEffect(() => {
    say(`${String(guess.size)} of our columns are matched by name. Check the matches.`);
    // Only what is chosen is told, not what is read again.
  }, []);
  const use = async () => {
    // The tables to write are known once they are wanted.
    const { planTable } = await import(/* webpackChunkName: "plans" */ './plan-table');
    const plan = planTable(
      {
        walls: reference,
        headings,
        match,
        factors: factorTable === '' ? undefined : { table: factorTable },
        system,
        names: ownNames,
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
      {unknown.length > 0 && (
        <MaterialNamesForm {...{ unknown, materials }} names={ownNames} change={setNames} />
      )}
      <ReadNotice
        {...{ place, match, port, say }}
        rows={walls}
        headings={headings}
        factors={cells.factors ?? [[UNITS, system], ...nameRows(ownNames)]}
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

function placeText({ sheet, address }: Place): string {
  return `${sheet}!${address}`;
}
