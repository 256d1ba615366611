import { useCallback, useId, useState } from 'preact/hooks';
import { movesInWords, notesInWords, togetherInWords, whatInWords } from '../../functions/alternates-words';
import type { AlternateLine, AlternatesResult } from '../../src/alternates/alternates';
import { messageOf } from '../workbook/message-of';
import type { PanelProps } from '../shared/panel-props';
import { browserTurns } from '../shared/slices';
import { formulaFor } from '../shared/formulas';
import { FreeNames } from '../shared/free-names';
import { functionNamed } from '../shared/job-summary';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';
import { useReading } from '../shared/use-reading';
import type { Job } from '../shared/use-job';
import { holdsAlternates } from '../shared/holds-alternates';
import { alternateTable } from './alternate-rows';
import { AddedBar } from './added-bar';
import { addedText, differenceText, quantityText, ratesText } from './number-text';
import { OwnAlternateForm } from './own-alternate-form';
import { ownerPage } from './owner-page';
import { workOutAlternates } from './work-out-alternates';

const SHEET = 'Alternates';
const WORKED = 'Alternates worked out';
const OWNER = 'Alternates for the owner';

/**
 * The choices that are still open, or those of a table, and what each adds to the bid or deducts from it.
 * @param props what it works on
 * @param props.job the estimate
 * @returns the choice of table, the alternates as bars, and what puts them into the workbook
 */
export function Alternates({ job, ...props }: PanelProps & { job: Job }) {
  const { port, source, say } = props;
  const id = useId();
  const tables = useReading(
    port,
    useCallback(async () => (await port.tables()).filter(holdsAlternates), [port]),
  );
  const [chosen, choose] = useState('');
  const found = tables.is === 'ready' ? tables.value : [];
  const table = found.some(({ name }) => name === chosen) ? chosen : '';
  const worked = useReading(
    port,
    useCallback(
      (unwanted) => workOutAlternates(port, source, table, browserTurns, unwanted),
      [port, source, table],
    ),
  );
  return (
    <>
      <p>
        An alternate is a different choice from the one in the bid. Each is worked out by itself against the
        base bid: a deduct makes the bid less, an add makes it more.
      </p>
      <p class="field">
        <label for={`${id}-table`}>Alternates to compare</label>
        <select
          id={`${id}-table`}
          value={table}
          onChange={(event) => {
            choose(event.currentTarget.value);
          }}
        >
          <option value="">The choices still open</option>
          {found.map(({ name, sheet }) => (
            <option key={name} value={name}>
              {name}, sheet {sheet}
            </option>
          ))}
        </select>
      </p>
      {worked.is === 'reading' && <p>Working the alternates out…</p>}
      {worked.is === 'failed' && <p class="notice">{worked.message}</p>}
      {worked.is === 'ready' && worked.value && (
        <Compared key={table} {...{ port, source, say, table }} result={worked.value} />
      )}
      <OwnAlternateForm {...{ port, source, say, job, table }} added={choose} />
    </>
  );
}

function Compared({
  port,
  source,
  say,
  table,
  result,
}: PanelProps & { table: string; result: AlternatesResult }) {
  const [left, leave] = useState<ReadonlySet<string>>(new Set());
  const writing = useWriting(port, say);
  const { lines, together } = result;
  const picked = lines.filter(({ alternate }) => !left.has(alternate.name));
  const widest = Math.max(...[...lines, together.line].map((line) => Math.abs(line?.added ?? 0)), 0);
  const formula = (of: string) =>
    formulaFor(functionNamed('ALTERNATES'), source, of === '' ? {} : { alternates: `${of}[#All]` });
  const putTable = async () => {
    const names = await FreeNames.of(port);
    const [sheet, name] = [names.sheet(SHEET), names.table(SHEET)];
    const rows = alternateTable(picked.map(({ alternate }) => alternate));
    writing.offer({
      blocks: [{ sheet, address: 'A1', rows, table: name }],
      says: [`The table ${name} is on the sheet ${sheet}: change it, or add rows.`],
      place: { sheet, address: 'A1' },
    });
  };
  const putFormula = async () => {
    const sheet = (await FreeNames.of(port)).sheet(WORKED);
    writing.offer({
      blocks: [{ sheet, address: 'A1', rows: [[formula(table)]] }],
      says: [`The alternates are on the sheet ${sheet}, as a formula.`],
      place: { sheet, address: 'A1' },
    });
  };
  const putPage = async () => {
    const names = await FreeNames.of(port);
    const [workedOn, sheet] = [names.sheet(WORKED), names.sheet(OWNER)];
    const chosen = new Set(picked.map(({ alternate }) => alternate.name));
    writing.offer({
      blocks: [
        { sheet: workedOn, address: 'A1', rows: [[formula(table)]] },
        ownerPage(result, chosen, sheet, workedOn),
      ],
      says: [`The page is on the sheet ${sheet}; its numbers come from the sheet ${workedOn}.`],
      place: { sheet, address: 'A1' },
    });
  };
  const button = (text: string, put: () => Promise<void>) => (
    <button
      type="button"
      onClick={() => {
        put().catch((error: unknown) => {
          writing.refuse(messageOf(error, 'The workbook cannot be read.'));
        });
      }}
    >
      {text}
    </button>
  );
  return (
    <>
      {lines.length === 0 && <p>There is no choice left open in these walls.</p>}
      <ol class="alternates">
        {lines.map((line) => {
          const { name } = line.alternate;
          return (
            <li key={name}>
              <label>
                <input
                  type="checkbox"
                  checked={!left.has(name)}
                  onChange={() => {
                    const others = [...left].filter((each) => each !== name);
                    leave(new Set(left.has(name) ? others : [...others, name]));
                  }}
                />{' '}
                <strong>{name}</strong>
              </label>
              <Line {...{ line, result, widest }} />
              {notesInWords(line, result).map((note) => (
                <p key={note}>{note}</p>
              ))}
            </li>
          );
        })}
      </ol>
      <section class="together" aria-label="All that save together">
        <p>
          <strong>All that save together</strong>
        </p>
        {together.line && <Line {...{ line: together.line, result, widest }} />}
        <p>{togetherInWords(result)}</p>
      </section>
      {lines.length > 0 && (
        <p class="actions">
          {picked.length > 0 && button('Insert the picked lines as a table', putTable)}
          {button('Insert the formula', putFormula)}
          {picked.length > 0 && button('Make a page for the owner', putPage)}
        </p>
      )}
      <WritingNotice port={port} of={writing} say={say} />
    </>
  );
}

function Line({ line, result, widest }: { line: AlternateLine; result: AlternatesResult; widest: number }) {
  const { base, factors, priced } = result;
  const { totals } = line.estimate;
  const { system } = factors;
  const rates = priced ? ratesText(totals, factors) : '';
  const numbers = [
    ['Labor-hours', 'laborHours', 'laborHours'],
    ['Water', 'water', 'volume'],
    ...(priced ? ([['Price', 'price', 'money']] as const) : []),
  ] as const;
  return (
    <>
      <AddedBar
        share={widest > 0 ? line.added / widest : 0}
        text={addedText(line.added, priced ? 'money' : 'laborHours')}
      />
      <details>
        <summary>What it changes</summary>
        <p>{whatInWords(line.alternate)}</p>
        <p>Before: {movesInWords(line, 'before')}</p>
        <p>After: {movesInWords(line, 'after')}</p>
      </details>
      <dl class="differences">
        {numbers.map(([label, of, kind]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>
              {quantityText(totals[of], kind, system)} (
              {/* To the cent what the line adds: a difference of two bids, each rounded. */}
              {differenceText(kind === 'money' ? line.added : totals[of] - base.totals[of], kind, system)})
            </dd>
          </div>
        ))}
        {rates !== '' && (
          <div>
            <dt>Rates</dt>
            <dd>{rates}</dd>
          </div>
        )}
      </dl>
    </>
  );
}
