import { useCallback, useEffect, useId, useRef, useState } from 'preact/hooks';
import type { SpreadProgress } from '../../src/estimate/spread';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { GoThere } from '../shared/go-there';
import type { PanelProps } from '../shared/panel-props';
import { browserTurns } from '../shared/slices';
import { FreeNames } from '../shared/free-names';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';
import { useReading } from '../shared/use-reading';
import type { TableInfo } from '../workbook/port';
import { DRAWS, drawRanges, type DrawnRanges } from './draw-ranges';
import { holdsRanges, starterRanges } from './range-tables';
import { SpreadView, spreadOutcome } from './spread-view';
import { messageOf } from '../workbook/message-of';

const RANGES = 'Ranges';
const FIRST_SEED = '1';

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'running'; readonly progress: SpreadProgress; readonly stop: () => void }
  | { readonly is: 'failed'; readonly message: string }
  | { readonly is: 'done'; readonly drawn: DrawnRanges; readonly changedSince: boolean };

/**
 * Labor-hours and price as ranges instead of points, from a table of ranges in the workbook.
 * @param props what it works on
 * @returns the choice of table and seed, and the ranges
 */
export function Ranges({ port, source, say, factors }: PanelProps & { factors: FactorsInForce }) {
  const tables = useReading(
    port,
    useCallback(async () => (await port.tables()).filter(holdsRanges), [port]),
  );
  const writing = useWriting(port, say);
  const addTable = async () => {
    const names = await FreeNames.of(port);
    const [sheet, table] = [names.sheet(RANGES), names.table(RANGES)];
    writing.offer({
      blocks: [{ sheet, address: 'A1', rows: starterRanges(factors), table }],
      says: [
        `The table ${table} is on the sheet ${sheet}: enter your own figures, and add rows for other factors.`,
      ],
      place: { sheet, address: 'A2' },
    });
  };
  const found = tables.is === 'ready' ? tables.value : [];
  return (
    <>
      <p>
        No rate is known exactly. With a low, a likely and a high value of some factors, the labor-hours and
        the price become ranges too, and the list shows which factor moves them most.
      </p>
      {tables.is === 'failed' && <p class="notice">{tables.message}</p>}
      {tables.is === 'ready' && found.length === 0 && (
        <>
          <p>This workbook has no table with the columns Factor, Low, Likely and High.</p>
          <p class="actions">
            <button
              type="button"
              class="main"
              onClick={() => {
                addTable().catch(() => {
                  writing.refuse('The workbook cannot be read.');
                });
              }}
            >
              Add a table of ranges
            </button>
          </p>
        </>
      )}
      <WritingNotice port={port} of={writing} say={say} />
      {found.length > 0 && <Draw {...{ port, source, say }} tables={found} />}
    </>
  );
}

function Draw({ port, source, say, tables }: PanelProps & { tables: readonly TableInfo[] }) {
  const id = useId();
  const [chosen, choose] = useState('');
  const [seed, setSeed] = useState(FIRST_SEED);
  const [state, setState] = useState<State>({ is: 'idle' });
  const running = useRef<AbortController>(undefined);
  useEffect(() => () => running.current?.abort(), []);
  useEffect(
    () =>
      port.onChanged(() => {
        setState((now) => (now.is === 'done' ? { ...now, changedSince: true } : now));
      }),
    [port],
  );
  const table = tables.find(({ name }) => name === chosen) ?? tables[0];
  if (table === undefined) return null;
  const seedIsWhole = /^\d{1,9}$/.test(seed.trim());
  const run = async () => {
    const controller = new AbortController();
    running.current = controller;
    const stop = () => {
      controller.abort();
    };
    const progress = (now: SpreadProgress) => {
      if (!controller.signal.aborted) setState({ is: 'running', progress: now, stop });
    };
    progress({ done: 0, total: DRAWS });
    say('The trials are running.');
    const drawn = await drawRanges({
      port,
      source,
      table: table.name,
      seed: Number(seed),
      turns: browserTurns,
      signal: controller.signal,
      progress,
    });
    setState(drawn ? { is: 'done', drawn, changedSince: false } : { is: 'idle' });
    say(drawn ? spreadOutcome(drawn) : 'The trials were stopped.');
  };
  const start = () => {
    if (!seedIsWhole) {
      say('The seed must be a whole number of at most nine digits.');
      return;
    }
    run().catch((error: unknown) => {
      const message = messageOf(error, 'The workbook cannot be read.');
      setState({ is: 'failed', message });
      say(message);
    });
  };
  return (
    <>
      <p class="field">
        <label for={`${id}-table`}>Table of ranges</label>
        <select
          id={`${id}-table`}
          value={table.name}
          onChange={(event) => {
            choose(event.currentTarget.value);
          }}
        >
          {tables.map(({ name, sheet }) => (
            <option key={name} value={name}>
              {name}, sheet {sheet}
            </option>
          ))}
        </select>
      </p>
      <p>
        <GoThere port={port} place={table} say={say}>
          Go to the table
        </GoThere>
      </p>
      <p class="field">
        <label for={`${id}-seed`}>Seed of the trials: the same seed gives the same ranges</label>
        <input
          id={`${id}-seed`}
          inputMode="numeric"
          value={seed}
          aria-invalid={!seedIsWhole}
          onInput={(event) => {
            setSeed(event.currentTarget.value);
          }}
        />
      </p>
      {state.is === 'running' ? (
        <section aria-label="The trials are running">
          <label>
            Trials: {state.progress.done} of {state.progress.total}
            <progress value={state.progress.done} max={state.progress.total} />
          </label>
          <p class="actions">
            <button type="button" onClick={state.stop}>
              Stop
            </button>
          </p>
        </section>
      ) : (
        <p class="actions">
          <button type="button" class="main" onClick={start}>
            {state.is === 'done' ? 'Run again' : 'Work out the ranges'}
          </button>
        </p>
      )}
      {state.is === 'failed' && <p class="notice">{state.message}</p>}
      {state.is === 'done' && state.changedSince && (
        <p class="notice">The workbook has changed since these ranges were worked out. Run again.</p>
      )}
      {state.is === 'done' && <SpreadView drawn={state.drawn} />}
    </>
  );
}
