import type { Recorder } from '../src/trace/recorder';
import type { Question } from './arguments';
import { added } from './trace-names';

/** What a number is of: one zone, one row, or the job where it says neither. */
const OF = /_[zr]\d+$/;
/** A long sum goes over several lines. */
const PIECE = /_to\d+$/;
/** What others are shared out by is no part of them. */
const SHARED_BY = added['washed area'];
const EVERY_WALL = 'every wall counts here';

const nameOf = new Map(Object.entries(added).map(([name, symbol]) => [symbol, name]));

function of(symbol: string): string {
  return OF.exec(symbol.replace(PIECE, ''))?.[0] ?? '';
}

/**
 * A question whose lines are all shown, where those of a number are not: of one zone, of one wall, or for a part.
 * @param rec what was taken down
 * @param symbol the number
 * @param question the zones asked for
 * @param most how many lines are shown
 * @returns the question in words, as what to do; that every wall counts, where there is none
 */
export function narrower(rec: Recorder, symbol: string, { zones, job }: Question, most: number): string {
  const base = symbol.replace(OF, '');
  const [first] = zones;
  const isOfAll = of(symbol) === '' && zones.length > 1;
  if (first && isOfAll && rec.isWithin(`${base}_z${String(job.indexOf(first) + 1)}`, most))
    return `name one zone, such as ${first.name}`;
  const rows = of(symbol).startsWith('_r') ? [] : zones.flatMap((zone) => zone.rows);
  const row = rows.find(({ row }) => rec.isWithin(`${base}_r${String(row)}`, Infinity));
  const ofRow = `${base}_r${String(row?.row)}`;
  if (row && rec.isWithin(ofRow, most)) return `name one wall, such as ${row.wall}`;
  const part = partWithin(rec, symbol, most);
  if (part !== undefined) return `name a part of it, such as ${part}`;
  const partOfRow = partWithin(rec, ofRow, most);
  if (row && partOfRow !== undefined) return `name one wall and a part, such as ${partOfRow} of ${row.wall}`;
  return EVERY_WALL;
}

/** The first number that can be asked for, that is a part of another, and whose lines are all shown. */
function partWithin(rec: Recorder, symbol: string, most: number): string | undefined {
  const seen = new Set([symbol]);
  for (const whole of seen) {
    for (const name of rec.namedIn(whole)) {
      if (seen.has(name) || of(name) !== of(symbol)) continue;
      const base = name.replace(OF, '');
      const called = base === SHARED_BY ? undefined : nameOf.get(base);
      if (called !== undefined && rec.isWithin(name, most)) return called;
      seen.add(name);
    }
  }
  return undefined;
}
