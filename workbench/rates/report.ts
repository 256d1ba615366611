import type { Observation } from '../../src/actuals/rates';
import type { PooledRate } from '../../src/actuals/pool-jobs';
import { shownUnit } from '../../src/quantity/shown-unit';
import { show, unitOf, type System } from '../../src/quantity/systems';
import { factorRow } from '../../src/rules/factor-row';

const numbers = new Intl.NumberFormat('en-US', { maximumSignificantDigits: 4 });

/**
 * The pooled rates in words.
 * @param rates what the jobs show
 * @param system the display system
 * @returns the text to print: a table, and below each rate what each job shows
 */
export function ratesText(rates: readonly PooledRate[], system: System): string {
  if (rates.length === 0) return 'No entry shows a rate.\n';
  const head = ['Factor', 'Jobs', 'Entries', 'Starting', 'Pooled', '80% range', 'Weight', 'Unit'];
  const lines = rates.flatMap((rate) => {
    const kind = factorRow(rate.factor.id).kind;
    const shown = (value: number): string => numbers.format(show(value, kind, system));
    return [
      [
        rate.factor.id,
        String(rate.jobs.size),
        String(rate.observations.length),
        shown(rate.start),
        shown(rate.blended),
        `${shown(rate.low)} to ${shown(rate.high)}`,
        numbers.format(rate.weight),
        shownUnit(unitOf(kind, system)),
      ],
      ...[...rate.jobs].map(([job, observations]) => [
        `  ${job}`,
        '',
        String(observations.length),
        '',
        shown(middleOf(observations)),
        '',
        '',
        '',
      ]),
    ];
  });
  const widths = head.map((heading, place) =>
    Math.max(heading.length, ...lines.map((line) => line[place]?.length ?? 0)),
  );
  const text = [head, ...lines].map((line) =>
    line
      .map((cell, place) => cell.padEnd(widths[place] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  return `${text.join('\n')}\n`;
}

/** The geometric mean of what the entries of a job show. */
function middleOf(observations: readonly Observation[]): number {
  const logs = observations.map(({ value }) => Math.log(value));
  return Math.exp(logs.reduce((sum, log) => sum + log, 0) / logs.length);
}
