import { readFactors, type FactorsInForce } from '../../src/rules/read-factors';
import { bareLoop, labelsDiffer } from './bare-loop';
import { editsOnPage } from './edit-on-page';
import type { Figure } from './figures';
import {
  changedWalls,
  changeWalls,
  madeAlternates,
  madeFactors,
  madeWalls,
  scatterLabels,
} from './made-walls';
import { nativeFormulas } from './native-formulas';
import { expectSameTotals } from './same-totals';
import { inTurn } from './timing';
import { bundled } from './without-recorder';

const FORMULAS = 2_000;
const FORMULA_ROWS = 1_000;
const ZONES = 8;
const ALTERNATES = 40;
const CHANGES = 23;
const FEW_ROWS = 3;

/** A part of the benchmark, to be done in a process of its own. */
export type Part = (size: number) => Promise<Figure[]>;

/** SCHEDULE against a bare loop with the same arithmetic, over the same cells. */
async function againstBareLoop(
  walls: unknown[][],
  bare: (factors: FactorsInForce) => unknown,
): Promise<{ schedule: number; bare: number }> {
  const { runs } = await bundled(true);
  const factors = readFactors(madeFactors);
  const size = walls.length - 1;
  expectSameTotals(runs.SCHEDULE([walls, null, madeFactors]), bareLoop(walls, factors), 'the bare loop');
  return inTurn(
    {
      schedule: (turn) => {
        changeWalls(walls, turn);
        return runs.SCHEDULE([walls, null, madeFactors]);
      },
      bare: () => bare(factors),
    },
    Math.max(7, Math.min(300, Math.round(1_000_000 / size))),
  );
}

const schedule: Part = async (size) => {
  const walls = madeWalls(size);
  const times = await againstBareLoop(walls, (factors) => bareLoop(walls, factors));
  const rows = `${size.toLocaleString('en')} rows`;
  return [
    { name: `SCHEDULE, ${rows}, ns a row`, value: (times.schedule / size) * 1e6 },
    { name: `bare loop, ${rows}, ns a row`, value: (times.bare / size) * 1e6 },
    { name: `SCHEDULE by the bare loop, ${rows}`, value: times.schedule / times.bare, most: 3 },
  ];
};

/** Labels that do not rise are looked up one by one; the bare loop does the same. */
const scattered: Part = async (size) => {
  const walls = scatterLabels(madeWalls(size));
  const times = await againstBareLoop(walls, (factors) => {
    if (!labelsDiffer(walls)) throw new Error('A label occurs twice.');
    return bareLoop(walls, factors);
  });
  const name = `SCHEDULE by the bare loop, ${size.toLocaleString('en')} rows, labels in no order`;
  return [{ name, value: times.schedule / times.bare, most: 2 }];
};

/** The same model as ordinary formulas of the workbench's spreadsheet, against SCHEDULE. */
const native: Part = async (size) => {
  const { runs } = await bundled(true);
  const walls = madeWalls(size);
  const { totals, milliseconds } = await nativeFormulas(walls, readFactors(madeFactors));
  expectSameTotals(runs.SCHEDULE([walls, null, madeFactors]), totals, 'the ordinary formulas');
  const { time } = inTurn(
    {
      time: (turn) => {
        changeWalls(walls, turn);
        return runs.SCHEDULE([walls, null, madeFactors]);
      },
    },
    50,
  );
  const rows = size.toLocaleString('en');
  return [{ name: `ordinary formulas by SCHEDULE, ${rows} rows`, value: milliseconds / time, least: 20 }];
};

/** Formulas that ask the same walls for one zone each, against as many that each ask other walls. */
const formulas: Part = async () => {
  const [remembering, reading] = [await bundled(true), await bundled(true)];
  const walls = madeWalls(FORMULA_ROWS);
  // As a host does: every cell of every call made anew.
  const text = JSON.stringify(walls);
  const spent = { remembering: 0, reading: 0 };
  const time = (of: keyof typeof spent, work: () => unknown): void => {
    const start = performance.now();
    work();
    spent[of] += performance.now() - start;
  };
  for (let formula = 0; formula < FORMULAS; formula++) {
    const zone = `Zone ${formula % ZONES}`;
    const [same, other] = [JSON.parse(text), JSON.parse(text)] as [unknown[][], unknown[][]];
    changeWalls(other, formula);
    time('remembering', () => remembering.runs.CREWHOURS([same, zone, madeFactors]));
    time('reading', () => reading.runs.CREWHOURS([other, zone, madeFactors]));
  }
  const count = FORMULAS.toLocaleString('en');
  return [
    { name: `${count} formulas over the same 1,000 rows, ms`, value: spent.remembering },
    { name: `${count} formulas by ${count} readings`, value: spent.remembering / spent.reading, most: 0.5 },
  ];
};

/** What the recorder costs where nobody wants a trace. */
const recorder: Part = async (size) => {
  const [asItIs, without] = [await bundled(true), await bundled(false)];
  const walls = madeWalls(size);
  const run =
    ({ runs }: typeof asItIs) =>
    (turn: number) => {
      changeWalls(walls, turn);
      return runs.SCHEDULE([walls, null, madeFactors]);
    };
  const times = inTurn({ asItIs: run(asItIs), without: run(without) }, 400);
  return [
    { name: 'SCHEDULE by SCHEDULE without a recorder', value: times.asItIs / times.without, most: 1.05 },
  ];
};

/** An edit in a table on the workbench page until 60 formulas over it show what they come to. */
const edit: Part = async (size) => {
  const [few = NaN, many = NaN] = await editsOnPage([FEW_ROWS, size]);
  return [
    { name: `edit in ${size} rows on the page, ms`, value: many },
    { name: `edit in ${size} rows on the page by one in ${FEW_ROWS}`, value: many / few, most: 3 },
  ];
};

/** What other choices and changes take, against one estimate of the same walls. */
const choices: Part = async (size) => {
  const { runs } = await bundled(true);
  const walls = madeWalls(size);
  const [alternates, after] = [madeAlternates(walls, ALTERNATES), changedWalls(walls, CHANGES)];
  const times = inTurn(
    {
      estimate: (turn) => {
        changeWalls(walls, turn);
        return runs.SCHEDULE([walls, null, madeFactors]);
      },
      alternates: () => runs.ALTERNATES([walls, alternates, null, madeFactors]),
      changes: () => runs.CHANGES([madeWalls(size), after, madeFactors]),
    },
    9,
  );
  const by = `by an estimate of the same ${size} walls`;
  return [
    { name: `${ALTERNATES} alternates ${by}`, value: times.alternates / times.estimate, most: 60 },
    { name: `${CHANGES} changes ${by}`, value: times.changes / times.estimate, most: 2_500 },
  ];
};

const MEGABYTE = 1_000_000;
// What Excel on the web takes as a request or an answer.
const MOST_PAYLOAD = 5;

/** How much goes over between host and functions, as JSON; one formula of each kind. */
const payload: Part = async (size) => {
  const { runs } = await bundled(true);
  const walls = madeWalls(size);
  const megabytes = (value: unknown): number => JSON.stringify(value).length / MEGABYTE;
  const rows = `${size.toLocaleString('en')} rows, MB`;
  return [
    { name: `arguments, ${rows}`, value: megabytes([walls, madeFactors]), most: MOST_PAYLOAD },
    {
      name: `SCHEDULE, ${rows}`,
      value: megabytes(runs.SCHEDULE([walls, null, madeFactors])),
      most: MOST_PAYLOAD,
    },
    {
      name: `WALLROWS, ${rows}`,
      value: megabytes(runs.WALLROWS([walls, null, madeFactors])),
      most: MOST_PAYLOAD,
    },
    {
      name: `TRACE, ${rows}`,
      value: megabytes(runs.TRACE(['labor-hours', walls, null, madeFactors])),
      most: MOST_PAYLOAD,
    },
    {
      name: `CHECKS, ${rows}`,
      value: megabytes(runs.CHECKS([walls, null, madeFactors])),
      most: MOST_PAYLOAD,
    },
  ];
};

/** The parts by name. */
export const parts: Readonly<Record<string, Part>> = {
  schedule,
  scattered,
  native,
  formulas,
  recorder,
  choices,
  edit,
  payload,
};
