import { useId, useState } from 'preact/hooks';
import { useJob, type Job } from '../use-job';
import { readSource, type WallSource } from '../wall-source';
import type { Place } from '../workbook/port';
import { parseAddress, cellAddress } from '../../src/spreadsheet/address';
import {
  fillsMore,
  formulasAt,
  insertable,
  inTheWay,
  spillOf,
  tableUnder,
  type Wanted,
} from './insert-formulas';
import { functionNamed } from './job-summary';
import type { SetUpProps } from './set-up-props';
import { useWriting } from './use-writing';
import { WritingNotice } from './writing-notice';
import { messageOf } from '../message-of';

const SUMMARY = 'summary';
const EACH_ZONE = 'each zone';
const CELLS_NAMED = 5;

/**
 * Puts formulas over the chosen walls into cells.
 * @param props what it works on
 * @returns the form
 */
export function InsertForm(props: SetUpProps & { readonly source: WallSource }) {
  const state = useJob(props.port, props.source);
  return (
    <section aria-labelledby="insert">
      <h3 id="insert">Insert formulas</h3>
      {state.is === 'reading' && <p>Reading the walls…</p>}
      {state.is === 'failed' && <p class="notice">The walls cannot be read. {state.message}</p>}
      {state.is === 'ready' && <Choices {...props} job={state.job} />}
    </section>
  );
}

function Choices({ port, source, say, job }: SetUpProps & { source: WallSource; job: Job }) {
  const id = useId();
  const [what, setWhat] = useState(SUMMARY);
  const [zone, setZone] = useState<{ each: boolean; name: string }>({ each: false, name: '' });
  const [typed, setTyped] = useState('');
  const writing = useWriting(port, say);
  const zones = job.zones.map(({ zone: { name } }) => name);
  const wanted: Wanted =
    what === SUMMARY
      ? { is: 'summary' }
      : { is: 'function', name: what, zone: zone.each ? '' : zone.name, eachZone: zone.each };
  const takeSelection = async () => {
    setTyped(placeText(firstCell(await port.selection())));
  };
  const put = async () => {
    const at = typed === '' ? firstCell(await port.selection()) : await readPlace(typed, port);
    const spill = await spillOf(wanted, at, await readSource(port, source));
    const blocking = spill ? inTheWay(spill, await port.readRange(spill)) : [];
    if (spill && blocking.length > 0) {
      const named = blocking.slice(0, CELLS_NAMED).join(', ');
      const more = blocking.length > CELLS_NAMED ? ' and more' : '';
      writing.refuse(
        `The result fills ${spill.address}, but ${named}${more} are filled. Choose another cell.`,
      );
      return;
    }
    const table = tableUnder(spill ?? (fillsMore(wanted) ? at : undefined), await port.tables());
    if (table !== undefined) {
      writing.refuse(
        `The result would stand in the table ${table}, where no formula may fill other cells. Choose a cell outside of it.`,
      );
      return;
    }
    const block = formulasAt(wanted, at, source, { zones, system: job.factors.system });
    writing.offer({
      blocks: [block],
      says: [
        `${String(block.rows.length)} ${block.rows.length === 1 ? 'formula' : 'rows'} at ${placeText(at)}.`,
        ...(spill ? [`The result fills ${spill.address}.`] : []),
      ],
      place: spill ?? at,
    });
  };
  return (
    <>
      <p class="field">
        <label for={`${id}-what`}>What</label>
        <select
          id={`${id}-what`}
          value={what}
          onChange={(event) => {
            setWhat(event.currentTarget.value);
          }}
        >
          <option value={SUMMARY}>Quantities of the whole job</option>
          {insertable.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </p>
      {what !== SUMMARY && (
        <>
          <p>{functionNamed(what).description}</p>
          <p class="field">
            <label for={`${id}-zone`}>Zone</label>
            <select
              id={`${id}-zone`}
              value={zone.each ? EACH_ZONE : String(zones.indexOf(zone.name))}
              onChange={(event) => {
                const { value } = event.currentTarget;
                setZone({ each: value === EACH_ZONE, name: zones[Number(value)] ?? '' });
              }}
            >
              <option value="-1">the whole job</option>
              {functionNamed(what).result === 'scalar' && (
                <option value={EACH_ZONE}>a row for each zone</option>
              )}
              {zones.map((name, index) => (
                <option key={name} value={String(index)}>
                  {name}
                </option>
              ))}
            </select>
          </p>
        </>
      )}
      <p class="field">
        <label for={`${id}-at`}>Top left cell; empty for the selected one</label>
        <input
          id={`${id}-at`}
          value={typed}
          placeholder="Estimate!B4"
          spellcheck={false}
          onInput={(event) => {
            setTyped(event.currentTarget.value);
          }}
        />
      </p>
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            takeSelection().catch(() => {
              say('Select one block of cells.');
            });
          }}
        >
          Use selected cell
        </button>
        <button
          type="button"
          class="main"
          onClick={() => {
            put().catch((error: unknown) => {
              writing.refuse(messageOf(error, 'The workbook cannot be read.'));
            });
          }}
        >
          Insert
        </button>
      </p>
      <WritingNotice port={port} of={writing} say={say} />
    </>
  );
}

async function readPlace(text: string, port: SetUpProps['port']): Promise<Place> {
  const end = text.lastIndexOf('!');
  const written = text.slice(0, Math.max(0, end)).replace(/^'|'$/g, '').replace(/''/g, "'");
  const wanted = end < 0 ? (await port.selection()).sheet : written;
  const sheet = (await port.sheets()).find((name) => name.toLowerCase() === wanted.toLowerCase());
  const area = parseAddress(text.slice(end + 1).trim());
  if (sheet === undefined || !area) {
    throw new Error(
      `"${text}" is no cell of this workbook. Accepted: a sheet and a cell, such as Estimate!B4.`,
    );
  }
  return { sheet, address: cellAddress(area.top, area.left) };
}

function firstCell({ sheet, address }: Place): Place {
  const area = parseAddress(address);
  return { sheet, address: area ? cellAddress(area.top, area.left) : 'A1' };
}

function placeText({ sheet, address }: Place): string {
  return `${sheet}!${address}`;
}
