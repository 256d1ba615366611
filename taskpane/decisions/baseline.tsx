import { useCallback, useId, useState } from 'preact/hooks';
import { GoThere } from '../shared/go-there';
import type { PanelProps } from '../shared/panel-props';
import { browserTurns } from '../shared/slices';
import { freeName } from '../shared/free-name';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';
import { useReading } from '../shared/use-reading';
import { changesFormula, changesSince } from './changes-since';
import { ChangesList } from './changes-list';
import { baselineBlock, keptBaselines } from './kept-baselines';
import { messageOf } from '../workbook/message-of';
import { dayText } from '../shared/time-text';

const CHANGES_SHEET = 'Changes';

/**
 * Keeps dated copies of the wall table, and tells what changed since one of them.
 * @param props what it works on
 * @returns the baselines that are kept, and the changes
 */
export function Baseline({ port, source, say }: PanelProps) {
  const id = useId();
  const list = useReading(
    port,
    useCallback(() => keptBaselines(port), [port]),
  );
  const [chosen, choose] = useState('');
  const writing = useWriting(port, say);
  const keep = async () => {
    const block = await baselineBlock(port, source.walls, dayText(new Date()));
    writing.offer({
      blocks: [block],
      says: [`The current walls are saved as the table ${block.table} on the sheet ${block.sheet}.`],
      place: { sheet: block.sheet, address: 'A1' },
      then: () => {
        choose(block.table);
      },
    });
  };
  const putOnSheet = async (baseline: string) => {
    const sheet = freeName(CHANGES_SHEET, await port.sheets(), ' ');
    const place = { sheet, address: 'A1' };
    writing.offer({
      blocks: [{ ...place, rows: [[changesFormula(source, baseline)]] }],
      says: [`The changes since ${baseline} are on the sheet ${sheet}, as a formula.`],
      place,
    });
  };
  const fail = (error: unknown) => {
    writing.refuse(messageOf(error, 'The workbook cannot be read.'));
  };
  const kept = list.is === 'ready' ? list.value : [];
  return (
    <>
      <p>
        A baseline is a dated copy of the wall table. Later you can compare the walls with it: what has
        changed, and what each change does to the price.
      </p>
      <p class="actions">
        <button
          type="button"
          class="main"
          onClick={() => {
            keep().catch(fail);
          }}
        >
          Save baseline
        </button>
      </p>
      <WritingNotice port={port} of={writing} say={say} />
      {list.is === 'failed' && <p class="notice">{list.message}</p>}
      {list.is === 'ready' && kept.length === 0 && <p>No baseline is saved in this workbook yet.</p>}
      {kept.length > 0 && (
        <fieldset>
          <legend>Compare the walls with</legend>
          {kept.map(({ name, sheet, address }) => (
            <p key={name} class="kept">
              <label>
                <input
                  type="radio"
                  name={id}
                  checked={name === chosen}
                  onChange={() => {
                    choose(name);
                  }}
                />{' '}
                {name}
              </label>{' '}
              <GoThere port={port} place={{ sheet, address }} say={say}>
                sheet {sheet}
              </GoThere>
            </p>
          ))}
        </fieldset>
      )}
      {kept.some(({ name }) => name === chosen) && (
        <Compared
          key={chosen}
          {...{ port, source, say }}
          baseline={chosen}
          putOnSheet={() => {
            putOnSheet(chosen).catch(fail);
          }}
        />
      )}
    </>
  );
}

function Compared({
  port,
  source,
  baseline,
  putOnSheet,
}: PanelProps & { baseline: string; putOnSheet: () => void }) {
  const since = useReading(
    port,
    useCallback(
      (unwanted) => changesSince(port, source, baseline, browserTurns, unwanted),
      [port, source, baseline],
    ),
  );
  if (since.is === 'reading') return <p>Comparing…</p>;
  if (since.is === 'failed') return <p class="notice">{since.message}</p>;
  return (
    <>
      {since.value && <ChangesList since={since.value} baseline={baseline} />}
      <p class="actions">
        <button type="button" onClick={putOnSheet}>
          Copy the changes to a new sheet
        </button>
      </p>
    </>
  );
}
