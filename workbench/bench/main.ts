import { worksheetFunctions } from '../../functions/catalogue';
import { madeWalls } from './made-walls';
import { bundled } from './without-recorder';

const RUNS = 9;
const PAIRS = 41;
const SIZES = [1_000, 10_000, 100_000, 1_000_000];

function median(values: number[]): number {
  return values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
}

function once(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function milliseconds(work: () => unknown, runs = RUNS): number {
  work();
  return median(Array.from({ length: runs }, () => once(work)));
}

function schedule(): (...args: unknown[]) => unknown {
  const found = worksheetFunctions.find(({ name }) => name === 'SCHEDULE');
  if (found === undefined) throw new Error('SCHEDULE is not on the list of functions');
  return (...args) => found.run(args);
}

const figures: Record<string, number> = {};
const run = schedule();
for (const size of SIZES) {
  const walls = madeWalls(size);
  const time = milliseconds(() => run(walls), size >= 1_000_000 ? 3 : RUNS);
  figures[`schedule ${size} rows, ms`] = time;
  figures[`schedule ${size} rows, us a row`] = (time / size) * 1000;
}
const [least, most] = [10_000, 1_000_000].map((size) => figures[`schedule ${size} rows, us a row`]);
figures['time a row at 1,000,000 rows by that at 10,000'] = (most ?? NaN) / (least ?? NaN);

const walls = madeWalls(10_000);
const [asItIs, without] = [await bundled(true), await bundled(false)];
const times = { asItIs: [] as number[], without: [] as number[] };
for (let pair = 0; pair < PAIRS; pair++) {
  times.without.push(once(() => without.runs.SCHEDULE([walls])));
  times.asItIs.push(once(() => asItIs.runs.SCHEDULE([walls])));
}
figures['SCHEDULE with the recorder unused by without a recorder'] =
  median(times.asItIs) / median(times.without);

for (const [name, figure] of Object.entries(figures)) figures[name] = Number(figure.toPrecision(4));
if (process.argv.includes('--json')) console.log(JSON.stringify(figures));
else for (const [name, figure] of Object.entries(figures)) console.log(`${name}: ${String(figure)}`);
