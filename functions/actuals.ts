import { findingInWords, isFromEntries, noRateInWords, rowsInWords } from '../src/actuals/finding-words';
import type { ProgressLine } from '../src/actuals/progress';
import { progressOf } from '../src/actuals/progress';
import { ratesOf, type ObservedRate, type WithoutRate } from '../src/actuals/rates';
import { readActuals } from '../src/actuals/read-actuals';
import { noteOf } from '../src/actuals/note';
import type { Measure } from '../src/actuals/entry';
import { show, unitOf, type Kind, type System } from '../src/quantity/systems';
import { shownUnit } from '../src/quantity/shown-unit';
import { factorRow } from '../src/rules/factor-row';
import { readQuestion } from './arguments';
import { heading, quantityCell } from './cells';
import type { CellValue, Run } from './worksheet-function';

const measured = [
  { measure: 'hours', name: 'hours', kind: 'laborHours' },
  { measure: 'water', name: 'water', kind: 'volume' },
  { measure: 'cleaner', name: 'cleaner', kind: 'volume' },
] as const satisfies readonly { measure: Measure; name: string; kind: Kind }[];

/** Spills how recorded work stands against the estimate, in the terms of earned value. */
export const runProgress: Run = ([walls, actuals, zone, factors, headings]) => {
  const question = readQuestion(walls, zone, factors, headings);
  const { system } = question.factors;
  const entries = readActuals(actuals, question.job, system, headings);
  const lines = progressOf(entries, question.job, question.factors, question.zones);
  return [
    [
      'Zone',
      'Task',
      heading('Area', 'area', system),
      heading('Area done', 'area', system),
      'Share done',
      ...measured.flatMap(({ name, kind }) => [
        heading(`Budget ${name}`, kind, system),
        heading(`Earned ${name}`, kind, system),
        heading(`Actual ${name}`, kind, system),
        `Index of ${name} (earned / actual)`,
        heading(`Forecast ${name}: the rest at the index so far`, kind, system),
        heading(`Forecast ${name}: the rest as budgeted`, kind, system),
        heading(`Forecast ${name}: task by task at its own index`, kind, system),
      ]),
      'Finding',
    ],
    ...lines.map((line) => progressLine(line, system)),
  ];
};

function progressLine(line: ProgressLine, system: System): CellValue[] {
  const { zone, task, area, done, standing, findings, why } = line;
  const cell = (value: number | undefined, kind: Kind): CellValue =>
    value === undefined ? '' : quantityCell(value, kind, system, why);
  const hours = standing.hours;
  const share = hours.budget > 0 ? hours.earned / hours.budget : undefined;
  const ofTask = done === undefined || area === 0 ? undefined : done / area;
  return [
    zone?.name ?? 'Job',
    task?.name ?? 'all',
    cell(area, 'area'),
    cell(done, 'area'),
    // Of a zone and of the job, what is earned of the hours: its tasks are done on areas of their own.
    cell(done === undefined ? undefined : task ? (ofTask ?? share) : share, 'ratio'),
    ...measured.flatMap(({ measure, kind }): CellValue[] => {
      const { budget, earned, actual, index, forecasts } = standing[measure];
      const booked = actual > 0;
      return [
        cell(budget, kind),
        cell(booked ? earned : undefined, kind),
        cell(booked ? actual : undefined, kind),
        cell(index, 'ratio'),
        cell(forecasts?.atIndex, kind),
        cell(forecasts?.asBudgeted, kind),
        cell(forecasts?.taskByTask, kind),
      ];
    }),
    findings.map((finding) => findingInWords(finding, system)).join(' '),
  ];
}

/** Spills the rates that recorded work shows. */
export const runRates: Run = ([actuals, walls, factors, headings]) => {
  const question = readQuestion(walls, null, factors, headings);
  const { system } = question.factors;
  const entries = readActuals(actuals, question.job, system, headings);
  const { rates, without } = ratesOf(entries, question.job, question.factors);
  const columns = [
    'Factor',
    'Task',
    'Entries',
    heading('Area', 'area', system),
    heading('Hours', 'laborHours', system),
    'In force',
    'Kind',
    'From the entries alone',
    'Blended',
    'Low end of its 80% range',
    'High end of its 80% range',
    'Weight of the entries',
    'Unit',
    'Smallest entry',
    'Largest entry',
    'Note for the factor',
    'Finding',
  ];
  const isOverridden = (rate: ObservedRate): boolean => question.factors.overridden(rate.factor.id);
  return [
    columns,
    ...rates.map((rate) => rateLine(rate, isOverridden(rate), question.factors.note(rate.factor.id), system)),
    ...without.map((line) => withoutLine(line, system, columns.length)),
  ];
};

function rateLine(rate: ObservedRate, isStated: boolean, note: string, system: System): CellValue[] {
  const { factor, observations, outliers } = rate;
  const kind = factorRow(factor.id).kind;
  const cell = (value: number): CellValue => show(value, kind, system);
  const values = observations.map(({ value }) => value);
  return [
    factor.id,
    factor.task,
    observations.length,
    show(sum(observations, 'area'), 'area', system),
    show(sum(observations, 'hours'), 'laborHours', system),
    cell(rate.inForce),
    isStated ? 'stated' : 'starting value',
    cell(rate.plain),
    cell(rate.blended),
    cell(rate.low),
    cell(rate.high),
    rate.weight,
    shownUnit(unitOf(kind, system)),
    cell(Math.min(...values)),
    cell(Math.max(...values)),
    noteOf(observations),
    [
      ...(outliers.length > 0 ? [`Far from the others, counted anyway: ${rowsInWords(outliers)}.`] : []),
      ...(isFromEntries(note)
        ? [
            'The value in force is itself from entries. If they are the same entries, they count twice: blend from the earlier value.',
          ]
        : []),
    ].join(' '),
  ];
}

function withoutLine({ task, why, entries }: WithoutRate, system: System, columns: number): CellValue[] {
  const cells: CellValue[] = [
    '',
    task.name,
    entries.length,
    show(sum(entries, 'area'), 'area', system),
    show(sum(entries, 'hours'), 'laborHours', system),
  ];
  const blank: CellValue[] = Array.from({ length: columns - cells.length - 1 }, () => '');
  return [...cells, ...blank, noRateInWords(why, task.name, entries)];
}

function sum<Key extends 'area' | 'hours'>(of: readonly Readonly<Record<Key, number>>[], key: Key): number {
  return of.reduce((total, each) => total + each[key], 0);
}
