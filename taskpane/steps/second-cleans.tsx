import { useId, useState } from 'preact/hooks';
import { amount } from '../../src/site/amount';
import type { SecondClean } from '../../src/site/inspection';
import { timeText } from '../shared/time-text';
import { WallChoice } from './wall-choice';

/**
 * The second cleans of a zone, and the fields to record one.
 * @param props what it shows and does
 * @param props.cleans the second cleans
 * @param props.walls labels of the walls of the zone
 * @param props.record records one; false where it was not signed
 * @param props.putOnSheet puts them on a sheet as rows of recorded work
 * @param props.say speaks a sentence
 * @returns the list and the fields
 */
export function SecondCleans({
  cleans,
  walls,
  record,
  putOnSheet,
  say,
}: {
  cleans: readonly SecondClean[];
  walls: readonly string[];
  record: (wall: string, hours: number, why: string) => boolean;
  putOnSheet: () => void;
  say: (sentence: string) => void;
}) {
  const id = useId();
  const [wall, setWall] = useState('');
  const [hours, setHours] = useState('');
  const [why, setWhy] = useState('');
  return (
    <section class="inspection" aria-labelledby={`${id}-title`}>
      <h4 id={`${id}-title`}>Second clean</h4>
      <ul>
        {cleans.map((clean) => (
          <li key={`${clean.when}${clean.wall}`}>
            {clean.wall === '' ? 'The whole zone' : clean.wall}: {amount(clean.hours, 'laborHours', 'US')}.{' '}
            {clean.why}. {clean.who}, {timeText(clean.when)}
          </li>
        ))}
      </ul>
      <div class="not-printed">
        {cleans.length > 0 && (
          <>
            <p>
              To count them in Actuals, add these rows to the table of recorded work: their task is reclean.
            </p>
            <button type="button" onClick={putOnSheet}>
              Copy the rows to a new sheet
            </button>
          </>
        )}
        <WallChoice id={`${id}-wall`} walls={walls} wall={wall} choose={setWall} />
        <p class="field">
          <label for={`${id}-hours`}>Labor-hours it took</label>
          <input
            id={`${id}-hours`}
            inputMode="decimal"
            value={hours}
            onInput={(event) => {
              setHours(event.currentTarget.value);
            }}
          />
        </p>
        <p class="field">
          <label for={`${id}-why`}>Why</label>
          <input
            id={`${id}-why`}
            value={why}
            onInput={(event) => {
              setWhy(event.currentTarget.value);
            }}
          />
        </p>
        <button
          type="button"
          onClick={() => {
            const taken = Number(hours.trim());
            if (!(taken > 0 && Number.isFinite(taken))) {
              say(`Labor-hours: “${hours}” is not a number above 0. One person for one hour is 1.`);
            } else if (why.trim() === '') say('Say why it was cleaned again first.');
            else if (record(wall, taken, why.trim())) {
              setHours('');
              setWhy('');
            }
          }}
        >
          Record the second clean
        </button>
      </div>
    </section>
  );
}
