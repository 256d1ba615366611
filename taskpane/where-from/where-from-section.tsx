import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { traceNames } from '../../functions/trace-names';
import { explainedByRow } from '../../src/trace/explained';
import { traceNode } from '../../src/trace/trace-tree';
import { GoThere } from '../shared/go-there';
import { messageOf } from '../workbook/message-of';
import { useJob } from '../shared/use-job';
import type { WallSource } from '../shared/wall-source';
import type { Place, WorkbookPort } from '../workbook/port';
import { askNumber, rangesOf, type AskedNumber } from './asked-number';
import { CellInError, numberInSelection } from './number-in-cell';
import { TraceBranch } from './trace-branch';

/** What the section works on. */
export interface WhereFromProps {
  readonly port: WorkbookPort;
  /** Undefined where no walls are chosen: a selected cell can be asked about all the same. */
  readonly source: WallSource | undefined;
  readonly say: (sentence: string) => void;
}

type State =
  | { readonly is: 'idle' }
  | { readonly is: 'reading' }
  | { readonly is: 'failed'; readonly message: string; readonly places: readonly Place[] }
  | { readonly is: 'shown'; readonly number: AskedNumber; readonly times: number };

const ASKED_FIRST = ['bid price', 'labor-hours', 'crew-hours', 'water', 'cleaner', 'class'];
const quantities = [
  ...ASKED_FIRST,
  ...traceNames.filter((name) => !ASKED_FIRST.includes(name) && !(name in explainedByRow)),
];

/**
 * Where a number of the bid comes from, level by level.
 * @param props what it works on
 * @returns the choice of a number, and its tree
 */
export function WhereFromSection({ port, source, say }: WhereFromProps) {
  const [state, setState] = useState<State>({ is: 'idle' });
  const [isOld, setOld] = useState(false);
  const reading = useRef<AbortController>(undefined);
  useEffect(() => () => reading.current?.abort(), []);
  useEffect(
    () =>
      port.onChanged(() => {
        setOld(true);
      }),
    [port],
  );
  const show = (ask: (signal: AbortSignal) => Promise<AskedNumber>) => {
    reading.current?.abort();
    const { signal } = (reading.current = new AbortController());
    setState({ is: 'reading' });
    ask(signal).then(
      (number) => {
        if (signal.aborted) return;
        setOld(false);
        setState({ is: 'shown', number, times: Date.now() });
        say(`${titleOf(number)} is shown, part by part.`);
      },
      (error: unknown) => {
        if (signal.aborted) return;
        const message = messageOf(error, 'The workbook cannot be read.');
        setState({ is: 'failed', message, places: error instanceof CellInError ? error.places : [] });
        say(message);
      },
    );
  };
  return (
    <section class="where-from" aria-labelledby="where-from">
      <h3 id="where-from">Where a number comes from</h3>
      <p>Opens a number of the bid part by part, down to the cells, factors and sources it comes from.</p>
      {source && (
        <Chosen
          port={port}
          source={source}
          ask={(quantity, zone) => {
            show(async () => askNumber(await rangesOf(port, source), { quantity, zone, wall: '' }));
          }}
        />
      )}
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            show(async (signal) => {
              const { ranges, wanted } = await numberInSelection(port, signal);
              return askNumber(ranges, wanted);
            });
          }}
        >
          Use the selected cell
        </button>
      </p>
      {state.is === 'reading' && <p>Reading the cells…</p>}
      {state.is === 'failed' && (
        <div class="notice">
          <p>{state.message}</p>
          {state.places.map((place) => (
            <p key={`${place.sheet}!${place.address}`}>
              <GoThere port={port} place={place} say={say}>
                {place.sheet}!{place.address}
              </GoThere>
            </p>
          ))}
        </div>
      )}
      {state.is === 'shown' && (
        <>
          {isOld && <p class="notice">Cells have changed since. Show the number again.</p>}
          <Shown key={state.times} number={state.number} port={port} say={say} />
        </>
      )}
    </section>
  );
}

function Chosen({
  port,
  source,
  ask,
}: {
  port: WorkbookPort;
  source: WallSource;
  ask: (quantity: string, zone: string) => void;
}) {
  const id = useId();
  const job = useJob(port, source);
  const [quantity, setQuantity] = useState('bid price');
  const [zone, setZone] = useState('');
  if (job.is === 'reading') return <p>Reading the walls…</p>;
  if (job.is === 'failed') return <p class="notice">The walls cannot be read. {job.message}</p>;
  const zones = job.job.zones.map((each) => each.zone.name);
  return (
    <>
      <p class="field">
        <label for={`${id}-quantity`}>Number</label>
        <select
          id={`${id}-quantity`}
          value={quantity}
          onChange={(event) => {
            setQuantity(event.currentTarget.value);
          }}
        >
          {quantities.map((name) => (
            <option key={name} value={name}>
              {capital(name)}
            </option>
          ))}
        </select>
      </p>
      <p class="field">
        <label for={`${id}-zone`}>Of</label>
        <select
          id={`${id}-zone`}
          value={zone}
          onChange={(event) => {
            setZone(event.currentTarget.value);
          }}
        >
          <option value="">The whole job</option>
          {zones.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            ask(quantity, zones.includes(zone) ? zone : '');
          }}
        >
          Show where it comes from
        </button>
      </p>
    </>
  );
}

function Shown({ number, port, say }: Pick<WhereFromProps, 'port' | 'say'> & { number: AskedNumber }) {
  const node = traceNode(number.rec, number.symbol);
  if (!node) return null;
  return (
    <div class="tree">
      <h4>{titleOf(number)}</h4>
      <TraceBranch number={number} node={node} port={port} say={say} open />
      {number.formula !== undefined && (
        <p>
          For all of its lines at once put this formula into an empty cell: <code>{number.formula}</code>
        </p>
      )}
    </div>
  );
}

function titleOf({ quantity, zone, wall }: AskedNumber): string {
  return `${capital(quantity)} of ${wall || zone || 'the whole job'}`;
}

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
