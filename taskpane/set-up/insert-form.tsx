import { useId, useState } from 'preact/hooks';
import type { System } from '../../src/quantity/systems';
import { UNITS } from '../../src/rules/read-factors';
import { isPriced } from '../../src/estimate/price';
import { useJob, type Job } from '../shared/use-job';
import { readSource, type WallSource } from '../shared/wall-source';
import type { Block, Place } from '../workbook/port';
import { parseAddress, cellAddress } from '../../src/spreadsheet/address';
import { resultUnit } from '../../functions/result-unit';
import {
  fillsMore,
  formatsOf,
  formulasAt,
  insertable,
  isClass,
  inTheWay,
  spillOf,
  tableUnder,
  withoutWords,
  type Wanted,
} from './insert-formulas';
import { functionNamed } from '../shared/job-summary';
import type { SetUpProps } from './set-up-props';
import { useWriting } from '../shared/use-writing';
import { whatWentWrong } from './what-went-wrong';
import { WritingNotice } from '../shared/writing-notice';
import { messageOf } from '../workbook/message-of';

const SUMMARY = 'summary';
const EACH_ZONE = 'each zone';
const CELLS_NAMED = 5;
const GENERAL = 'General';
// As the host takes names of sheets.
const SHEET_NAME = /^(?!')[^[\]:*?/\\]{1,31}(?<!')$/;

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
    const isNew = !(await port.sheets()).includes(at.sheet);
    const spill = await spillOf(wanted, at, await readSource(port, source));
    const blocking = spill && !isNew ? inTheWay(spill, await port.readRange(spill)) : [];
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
        `The result would be inside the table ${table}, where no formula may fill other cells. Choose a cell outside it.`,
      );
      return;
    }
    const whole = formulasAt(wanted, at, source, {
      zones,
      system: job.factors.system,
      priced: isPriced(job.factors),
    });
    // Words beside a class overwrite nothing.
    const filled = new Set((await port.filledCells([whole])).map(({ address }) => address));
    const hasRoom = !isClass(wanted) || lastColumn(whole).every((address) => !filled.has(address));
    const block = hasRoom ? whole : withoutWords(wanted, whole);
    const formats = await freshOnly(formatsOf(wanted, block), at.sheet, filled, isNew, port);
    writing.offer({
      blocks: [{ ...block, formats }],
      says: [
        `${String(block.rows.length)} ${block.rows.length === 1 ? 'formula' : 'rows'} at ${placeText(at)}.`,
        ...(isNew ? [`The sheet ${at.sheet} is added.`] : []),
        ...(spill ? [`The result fills ${spill.address}.`] : []),
        ...(hasRoom ? [] : ['The words of the class are left out: the cells beside it are filled.']),
      ],
      place: spill ?? at,
      look: () =>
        whatWentWrong(port, source, block, (row) =>
          wanted.is === 'summary' ? '' : wanted.eachZone ? (zones[row] ?? '') : wanted.zone,
        ),
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
            writing.clear();
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
          <p>
            {functionNamed(what).description} {unitWords(what, job.factors.system)}
          </p>
          <p>
            Example: <code>{functionNamed(what).example}</code>
          </p>
          <p class="field">
            <label for={`${id}-zone`}>Zone</label>
            <select
              id={`${id}-zone`}
              value={zone.each ? EACH_ZONE : String(zones.indexOf(zone.name))}
              onChange={(event) => {
                const { value } = event.currentTarget;
                setZone({ each: value === EACH_ZONE, name: zones[Number(value)] ?? '' });
                writing.clear();
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
            writing.clear();
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
  if (!area || (sheet === undefined && !SHEET_NAME.test(wanted))) {
    throw new Error(
      `"${text}" is not a cell of this workbook. Accepted: a sheet and a cell, such as Estimate!B4; a sheet that does not exist yet is added.`,
    );
  }
  return { sheet: sheet ?? wanted, address: cellAddress(area.top, area.left) };
}

/** What is measured, where it is a number. */
function unitWords(name: string, system: System): string {
  const { unit, parameters, result } = functionNamed(name);
  if (result === 'matrix') return 'It fills the cells below and to the right.';
  if (unit === 'class') return 'A class from 0 to 3; its words go beside it.';
  const shown = resultUnit(
    name,
    parameters.map((parameter) => (parameter.name === 'factors' ? [[UNITS, system]] : null)),
  );
  return unit === 'money' ? 'In your money.' : shown === '' ? '' : `In ${shown}.`;
}

function lastColumn({ address, rows }: Block): string[] {
  const { top = 1, left = 1 } = parseAddress(address) ?? {};
  return rows.map((row, index) => cellAddress(top + index, left + row.length - 1));
}

/** The formats of cells that are blank and that nobody has given a format. */
async function freshOnly(
  formats: Readonly<Record<string, string>>,
  sheet: string,
  filled: ReadonlySet<string>,
  isNew: boolean,
  port: SetUpProps['port'],
): Promise<Record<string, string>> {
  const fresh: Record<string, string> = {};
  for (const [address, format] of Object.entries(formats)) {
    if (filled.has(address)) continue;
    const [[now = GENERAL] = []] = isNew ? [] : await port.readFormats({ sheet, address });
    if (now === GENERAL || now === '') fresh[address] = format;
  }
  return fresh;
}

function firstCell({ sheet, address }: Place): Place {
  const area = parseAddress(address);
  return { sheet, address: area ? cellAddress(area.top, area.left) : 'A1' };
}

function placeText({ sheet, address }: Place): string {
  return `${sheet}!${address}`;
}
