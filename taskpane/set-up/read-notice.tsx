import type { Problem } from '../../src/quantity/problem';
import { GoThere } from '../shared/go-there';
import type { FactorContent } from '../shared/wall-source';
import { areaOf } from '../workbook/block-area';
import type { CellContent, Place } from '../workbook/port';
import type { HeadingMatch } from './guess-headings';
import { matchWarnings, missingColumns } from './match-warnings';
import { placeOfProblem, readTest } from './read-test';
import type { SetUpProps } from './set-up-props';

const PROBLEMS_SHOWN = 5;

/**
 * Whether the walls can be read, and what the user should know of them.
 * @param props the walls
 * @param props.rows their rows, the headings first
 * @param props.headings the headings
 * @param props.place where they stand
 * @param props.match which headings stand for our columns
 * @param props.factors the rows of the factors
 * @param props.port the workbook
 * @param props.say speaks a sentence
 * @returns one notice, and what is told beside it
 */
export function ReadNotice({
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

/** The rows of the sheet are what the user sees. */
function inSheet({ message, row }: Problem, place: Place): string {
  const { top } = areaOf(place.address);
  if (row === undefined || top === 1) return message;
  return message.replace(/^Row \d+/, `Row ${String(top + row - 1)} of the sheet`);
}

function counted(number: number, what: string): string {
  return `${String(number)} ${what}${number === 1 ? '' : 's'}`;
}
