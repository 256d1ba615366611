import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { noRateInWords } from '../../src/actuals/finding-words';
import { ratesOf } from '../../src/actuals/rates';
import { readCell } from '../../src/quantity/cell';
import { show } from '../../src/quantity/systems';
import { factorRow } from '../../src/rules/factor-row';
import { isStart } from '../../src/rules/factor-start';
import type { FactorId } from '../../src/rules/factors';
import type { FactorsInForce } from '../../src/rules/read-factors';
import type { Recorded } from '../actuals/recorded';
import { useRecorded } from '../actuals/use-recorded';
import type { PanelProps } from '../shared/panel-props';
import type { Job } from '../shared/use-job';
import { Written } from '../shared/written-notice';
import { changeOf, factorText, RateItem } from './rate-item';
import { useRates, type AskedChange, type RatesWriting } from './use-rates';

/**
 * The rates that the recorded work of a job shows, and what puts the chosen ones into its factor table.
 * @param props what it works on
 * @returns the rates
 */
export function RatesList(props: PanelProps & { readonly job: Job }) {
  const recorded = useRecorded(props.port, props.job);
  switch (recorded.is) {
    case 'reading':
      return <p>Reading the recorded work…</p>;
    case 'failed':
      return <p class="notice">The recorded work cannot be read. {recorded.message}</p>;
    case 'ready':
      return <Shown {...props} recorded={recorded.value} />;
  }
}

function Shown({ port, source, say, recorded }: PanelProps & { readonly recorded: Recorded }) {
  const { job, entries } = recorded;
  const { factors } = job;
  const { rates, without } = useMemo(() => ratesOf(entries, job.walls, job.factors), [entries, job]);
  const [chosen, setChosen] = useState<ReadonlySet<FactorId>>(new Set());
  const { writing, ask, write, drop } = useRates(port, source.factors, say);
  const picked = rates.filter(({ factor }) => chosen.has(factor.id));
  return (
    <>
      <p>
        What the entries of the table Actuals show of the rates of this estimate. A blended value is between
        the value in force and the entries: the more entries, the nearer to them.
      </p>
      {rates.length === 0 && (
        <p>
          {recorded.table
            ? 'No entry shows a rate yet.'
            : 'No work is recorded: this workbook has no table Actuals. The crew’s steps offer entries for it.'}
        </p>
      )}
      <ul class="rate-list">
        {rates.map((rate) => (
          <RateItem
            key={rate.factor.id}
            rate={rate}
            factors={factors}
            chosen={chosen.has(rate.factor.id)}
            choose={(wanted) => {
              const others = [...chosen].filter((id) => id !== rate.factor.id);
              setChosen(new Set(wanted ? [...others, rate.factor.id] : others));
            }}
          />
        ))}
      </ul>
      {without.length > 0 && (
        <>
          <h4>Entries that show no rate</h4>
          <ul>
            {without.map(({ task, why, entries: of }) => (
              <li key={`${task.name} ${why}`}>{noRateInWords(why, task.name, of)}</li>
            ))}
          </ul>
        </>
      )}
      {rates.length > 0 && (
        <p class="actions">
          <button
            type="button"
            class="main"
            onClick={() => {
              if (picked.length === 0) say('Tick the rates that you want to use first.');
              else ask(picked.map((rate) => changeOf(rate, factors)));
            }}
          >
            Use these rates
          </button>
        </p>
      )}
      <Notice writing={writing} factors={factors} write={write} drop={drop} />
    </>
  );
}

function Notice({
  writing,
  factors,
  write,
  drop,
}: {
  writing: RatesWriting;
  factors: FactorsInForce;
  write: (asked: readonly AskedChange[]) => void;
  drop: () => void;
}) {
  const question = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (writing.is === 'asking') question.current?.focus();
  }, [writing]);
  switch (writing.is) {
    case 'none':
      return null;
    case 'failed':
      return <p class="notice">{writing.message}</p>;
    case 'written':
      return <Written says={writing.says} />;
    case 'asking':
      return (
        <section class="notice" aria-label="Write these rates">
          <h4 tabIndex={-1} ref={question}>
            {writing.asked.some(({ changed }) => changed)
              ? 'The factor table has changed since: write these anyway?'
              : 'Write these into the factor table?'}
          </h4>
          <ul>
            {writing.asked.map((each) => (
              <li key={each.change.id}>{askedText(each, factors)}</li>
            ))}
          </ul>
          <p>
            Value and note of these rows are replaced, a formula too. From then on progress is measured
            against the estimate with these rates.
            {!writing.keepsNotes &&
              ' The factor table has no third column, so that the notes are not kept: add a column Note to keep them.'}
          </p>
          <p class="actions">
            <button type="button" onClick={drop}>
              Leave them
            </button>
            <button
              type="button"
              class="main"
              onClick={() => {
                write(writing.asked);
              }}
            >
              Write them
            </button>
          </p>
        </section>
      );
  }
}

function askedText({ change, seen, changed }: AskedChange, factors: FactorsInForce): string {
  const { id, value, note } = change;
  const start = `starting value ${factorText(id, startingValue(id, factors), factors)}`;
  const before =
    seen.row === undefined
      ? `${start}, no row yet`
      : isStart(readCell(seen.value))
        ? start
        : typeof seen.value === 'number'
          ? factorText(id, seen.value, factors)
          : `“${String(seen.value)}”`;
  const noted = seen.note === '' ? '' : `, noted “${String(seen.note)}”`;
  return `${id}: ${changed ? 'now ' : ''}${before}${noted} → ${factorText(id, value, factors)}, noted “${note}”`;
}

function startingValue(id: FactorId, factors: FactorsInForce): number {
  return show(factors.value(id), factorRow(id).kind, factors.system);
}
