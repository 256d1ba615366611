import { useCallback, useEffect, useId, useState } from 'preact/hooks';
import type { System } from '../../src/quantity/systems';
import { GoThere } from '../go-there';
import { readFactorRange, readReference, type FactorContent, type Reference } from '../wall-source';
import type { CellContent, Place, TableInfo } from '../workbook/port';
import { FreeNames } from './free-names';
import { guessHeadings, type HeadingMatch } from './guess-headings';
import { HeadingSelects } from './heading-selects';
import { factorRows } from './new-estimate';
import { placeOfProblem, readTest } from './read-test';
import type { SetUpProps } from './set-up-props';
import { UnitsChoice } from './units-choice';
import { useTable } from './use-table';
import { useWriting } from './use-writing';
import { WritingNotice } from './writing-notice';

const PROBLEMS_SHOWN = 5;

/** Walls that the user pointed at, as they were read. */
interface Candidate {
  readonly walls: Reference;
  readonly place: Place;
  readonly rows: readonly (readonly CellContent[])[];
}

/**
 * Points at walls that are in the workbook already: choose, match the headings, look whether they can be read.
 * @param props what it works on
 * @returns the form
 */
export function UseTableForm({ port, say, choose }: SetUpProps) {
  const id = useId();
  const [tables, setTables] = useState<readonly TableInfo[]>([]);
  const [candidate, setCandidate] = useState<Candidate>();
  const [match, setMatch] = useState<HeadingMatch>(new Map());
  const [system, setSystem] = useState<System>('US');
  const [factors, setFactors] = useState<{ table: string; rows: readonly (readonly FactorContent[])[] }>();
  const writing = useWriting(port, say);
  const look = useCallback(() => {
    port.tables().then(setTables, () => {
      say('The tables of this workbook cannot be read.');
    });
  }, [port, say]);
  useEffect(look, [look]);

  const take = async (walls: Reference, place: Place) => {
    const rows = await readReference(port, walls);
    const guess = guessHeadings((rows[0] ?? []).map(String));
    setCandidate({ walls, place, rows });
    setMatch(guess);
    say(`${String(guess.size)} of our columns are matched by name. Check the matches.`);
  };
  const failed = () => {
    setCandidate(undefined);
    say('These cells cannot be read. Select one block of cells with its headings.');
  };
  const takeSelection = async () => {
    const place = await port.selection();
    await take(place, place);
  };
  const use = async ({ walls, place, rows }: Candidate) => {
    const headings = (rows[0] ?? []).map(String);
    const plan = useTable(
      { walls, headings, match, factors: factors && { table: factors.table }, system },
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
    <section aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>Use walls that are here</h3>
      {tables.length > 0 && (
        <p class="field">
          <label for={`${id}-table`}>Table of the walls</label>
          <select
            id={`${id}-table`}
            value={candidate && 'table' in candidate.walls ? candidate.walls.table : ''}
            onChange={(event) => {
              const table = tables.find(({ name }) => name === event.currentTarget.value);
              if (table) take({ table: table.name }, table).catch(failed);
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
            takeSelection().catch(failed);
          }}
        >
          Use selected cells
        </button>
        <button type="button" onClick={look}>
          Look for tables again
        </button>
      </p>
      {candidate && (
        <>
          <p>
            Walls: <strong>{placeText(candidate.place)}</strong>
          </p>
          <HeadingSelects headings={(candidate.rows[0] ?? []).map(String)} match={match} change={setMatch} />
          <p class="field">
            <label for={`${id}-factors`}>Table of the factors</label>
            <select
              id={`${id}-factors`}
              value={factors?.table ?? ''}
              onChange={(event) => {
                const table = event.currentTarget.value;
                if (table === '') setFactors(undefined);
                else
                  readFactorRange(port, { table }).then((rows) => {
                    setFactors({ table, rows });
                  }, failed);
              }}
            >
              <option value="">add one</option>
              {tables
                .filter(({ name }) => !('table' in candidate.walls && candidate.walls.table === name))
                .map(({ name, sheet }) => (
                  <option key={name} value={name}>
                    {name}, sheet {sheet}
                  </option>
                ))}
            </select>
          </p>
          {!factors && <UnitsChoice system={system} choose={setSystem} />}
          <Reading {...{ candidate, match, port, say }} factors={factors?.rows ?? factorRows(system)} />
          <p class="actions">
            <button
              type="button"
              class="main"
              onClick={() => {
                use(candidate).catch(failed);
              }}
            >
              Use these walls
            </button>
          </p>
        </>
      )}
      <WritingNotice port={port} of={writing} say={say} />
    </section>
  );
}

function Reading({
  candidate: { rows, place },
  match,
  factors,
  port,
  say,
}: Pick<SetUpProps, 'port' | 'say'> & {
  candidate: Candidate;
  match: HeadingMatch;
  factors: readonly (readonly FactorContent[])[];
}) {
  const test = readTest(rows, match, factors);
  if (test.is === 'read') {
    return (
      <p class="notice done">
        {test.walls} walls in {test.zones} zones can be read.
      </p>
    );
  }
  const more = test.problems.length - PROBLEMS_SHOWN;
  return (
    <section class="notice" aria-label="What cannot be read">
      <ul>
        {test.problems.slice(0, PROBLEMS_SHOWN).map((problem) => {
          const at = placeOfProblem(problem, place, match);
          return (
            <li key={problem.message}>
              {problem.message}{' '}
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
  );
}

function placeText({ sheet, address }: Place): string {
  return `${sheet}!${address}`;
}
