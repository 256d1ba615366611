import { governZone, type Governing } from '../govern/govern-zone';
import { cleanerClasses, STRONGEST_CLASS, type CleanerClass } from '../rules/cleaner-classes';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import { stripBelow } from './below';
import { hoursOf } from './crew';
import { bareMasonry, traceBare, type BareMasonry, type Elevation } from './elevation';
import { slowdownOf, type Slowdowns } from './slowdown';
import { washRow, type WashRules } from './wash-row';

/** One wash of a zone: what is bare in it, and the cleaner. */
export interface Wash {
  /** The rows that are washed or, where they are only protected, rinsed. */
  readonly rows: readonly WallRow[];
  readonly ceiling: CleanerClass;
  /** The class to use. */
  readonly class: CleanerClass;
  readonly bare: BareMasonry;
}

/** What decides how a zone is washed. */
export interface ZoneDecision {
  /** Undefined where no bare row is left. */
  readonly governing: Governing | undefined;
  /** The wash of the bare rows; undefined where there is none. */
  readonly first: Wash | undefined;
  /** The washes of the masked masonry afterwards, the most tolerant first. */
  readonly later: readonly Wash[];
}

/**
 * How a zone is washed: its bare rows with one cleaner, then the masked masonry, rows of one ceiling together and the
 * most tolerant first, at no stronger class than the bare rows tolerate. The class of each wash is the one from clear
 * water to its ceiling that takes the fewest labor-hours, ties to the gentlest; a class chosen by the user beats it,
 * never above the ceiling.
 * @param zone its rows, or one of each kind, and the rows below that its rinse runs over
 * @param elevation how it stands
 * @param rulesOf what holds for a class
 * @param slowdowns what slows the work
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns the washes
 */
export function decideZone(
  { rows, below }: Pick<Zone, 'rows' | 'below'>,
  elevation: Elevation,
  rulesOf: (classToUse: CleanerClass) => WashRules,
  slowdowns: Slowdowns,
  factors: FactorsInForce,
  rec?: Recorder,
): ZoneDecision {
  const governing = governZone({ rows, below }, factors, rec);
  const wash: MakeWash = (washed, ceiling, own) => {
    const bare = bareMasonry(washed, own);
    if (rec) traceBare(washed, bare, rec);
    const symbol = own === undefined ? 'class@' : `laterClass${String(own)}@`;
    const limit = own === undefined ? 'ceiling@' : `laterCeiling${String(own)}@`;
    if (factors.chosenClass !== undefined) {
      const chosen = Math.min(ceiling, factors.chosenClass) as CleanerClass;
      rec?.line(symbol, `min(${limit}, ${String(factors.chosenClass)})`, chosen, 'class', 'chosenClass');
      return { rows: washed, ceiling, class: chosen, bare };
    }
    const { below: kept } = rulesOf(0);
    const strips = washed.map((row) => stripBelow(row, elevation, bare, kept));
    const weights = washed.map((row) => netArea(row) * slowdownOf(row, slowdowns).washing);
    const minutes = cleanerClasses
      .filter((candidate) => candidate.class <= ceiling)
      .map(({ class: of }) => minutesAt(rulesOf(of), washed, strips, weights));
    const least = minutes.reduce((best, each) => (each < best ? each : best), Infinity);
    // Sums that differ in their last digits alone are a tie.
    const found = minutes.findIndex((each) => each <= least * (1 + constants.guard.value));
    const classToUse = (found < 0 ? ceiling : found) as CleanerClass;
    if (rec)
      traceClass(symbol, classToUse, minutes, rec, (of) => {
        traceTry(rulesOf(of), washed, bare, elevation, slowdowns, rec, symbol);
      });
    return { rows: washed, ceiling, class: classToUse, bare };
  };
  const isWashed = (row: WallRow): boolean => !row.masked && netArea(row) > 0;
  const first = governing && wash(rows.filter(isWashed), governing.ceiling);
  return { governing, first, later: laterWashes(rows, below, governing, wash, rec) };
}

/** Net minutes of persons that a wash takes, each row with its strip below and its area slowed; NaN where a row cannot be washed so. */
function minutesAt(
  rules: WashRules,
  rows: readonly WallRow[],
  strips: readonly number[],
  weights: readonly number[],
): number {
  let sum = 0;
  rows.forEach((row, place) => {
    sum += washRow(row, strips[place] ?? NaN, rules).all * (weights[place] ?? NaN);
  });
  return sum;
}

/** Makes the wash of rows under a ceiling; a later one has the ceiling of its own rows beside it. */
type MakeWash = (washed: readonly WallRow[], ceiling: CleanerClass, own?: CleanerClass) => Wash;

function laterWashes(
  rows: readonly WallRow[],
  below: readonly WallRow[],
  governing: Governing | undefined,
  wash: MakeWash,
  rec?: Recorder,
): Wash[] {
  const most =
    governing?.ceiling ??
    below.reduce<CleanerClass>(
      (least, { material }) => (material.ceiling < least ? material.ceiling : least),
      STRONGEST_CLASS,
    );
  const waiting = rows.filter((row) => row.mask === 'yes' && row.material.masonry && netArea(row) > 0);
  const washes: Wash[] = [];
  for (const { class: of } of cleanerClasses.toReversed()) {
    const together = waiting.filter(({ material }) => material.ceiling === of);
    if (together.length === 0) continue;
    const ceiling = Math.min(of, most) as CleanerClass;
    rec?.line(
      `laterCeiling${String(of)}@`,
      governing ? `min(${String(of)}, ceiling@)` : `min(${String(of)}, ${String(most)})`,
      ceiling,
      'class',
      'laterCeiling',
    );
    washes.push(wash(together, ceiling, of));
  }
  return washes;
}

/** Takes down what a class would take that is tried out. */
function traceTry(
  rules: WashRules,
  rows: readonly WallRow[],
  bare: BareMasonry,
  elevation: Elevation,
  slowdowns: Slowdowns,
  rec: Recorder,
  symbol: string,
): void {
  const minutes = rows.map((row) => {
    rec.inRow(row.row, row.wall, rules.class);
    const area = netArea(row);
    rec.input('Area#', row.area, 'area', 'Area of the row, gross');
    rec.input('Openings#', row.openings, 'area', 'Openings in the row');
    rec.line('bareArea#', 'Area# - Openings#', area, 'area', 'bareArea');
    const slowed = slowdownOf(row, slowdowns, rec).washing;
    const strip = stripBelow(row, elevation, bare, rules.below, rec);
    const hours = hoursOf(washRow(row, strip, rules, rec).all * area * slowed, rules.crew);
    const expression = 'team_size * teamTime# * bareArea# * slowed# / minPerHour / working_share';
    rec.line('hours#', expression, hours, 'laborHours', 'hoursAtClass');
    return hours;
  });
  const terms = rows.map(({ row }) => `hours_r${String(row)}_c${String(rules.class)}`);
  rec.sum(hoursSymbol(symbol, rules.class), terms, minutes, 'laborHours', 'hoursAtClass');
}

function hoursSymbol(symbol: string, of: number): string {
  return `${symbol.slice(0, -1)}Hours${String(of)}@`;
}

function traceClass(
  symbol: string,
  classToUse: CleanerClass,
  minutes: readonly number[],
  rec: Recorder,
  tryClass: (of: CleanerClass) => void,
): void {
  // A class whose cycle is an error is no candidate.
  const able = cleanerClasses.map((row) => row.class).filter((of) => !Number.isNaN(minutes[of] ?? NaN));
  for (const of of able) tryClass(of);
  const cases = able.slice(0, -1).map((of, place) => {
    const others = able.slice(place + 1).map((each) => hoursSymbol(symbol, each));
    return `${hoursSymbol(symbol, of)} <= min(${others.join(', ')}) * (1 + guard) ? ${String(of)} : `;
  });
  rec.line(
    symbol,
    `${cases.join('')}${String(able.at(-1) ?? classToUse)}`,
    classToUse,
    'class',
    'classToUse',
  );
}
