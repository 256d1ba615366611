import { governZone, type Governing } from '../govern/govern-zone';
import { cleanerClasses, STRONGEST_CLASS, type CleanerClass } from '../rules/cleaner-classes';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord, ZoneRecord } from '../trace/recorder';
import { netArea } from '../walls/net-area';
import type { WallRow } from '../walls/wall-row';
import { isWashedLater } from '../walls/washed-later';
import type { Zone } from '../walls/zones';
import { stripBelow } from './below';
import { hoursOf } from './crew';
import { masonryByLevel, traceMasonry, type Elevation, type MasonryByLevel } from './elevation';
import { slowdownOf, type Slowdowns } from './slowdown';
import { washRow, type RowWash, type WashRules } from './wash-row';

/** One wash of a zone: its rows, and the cleaner. */
export interface Wash {
  /** The rows that are washed or, where they are only protected, rinsed. */
  readonly rows: readonly WallRow[];
  /** The class to use. */
  readonly class: CleanerClass;
}

/** What decides how a zone is washed. */
export interface ZoneDecision {
  /** Undefined where no bare row is left. */
  readonly governing: Governing | undefined;
  /** The wash of the bare rows; undefined where there is none. */
  readonly first: Wash | undefined;
  /** The washes of the masked masonry afterwards, the strongest class first. */
  readonly later: readonly Wash[];
  /** The class that a row of masked masonry is washed with afterwards. */
  readonly laterClass: (row: WallRow) => CleanerClass;
  /** The masonry by level that is kept wet below what is washed, m2. */
  readonly masonry: MasonryByLevel;
  /** How a row is washed with a class; net, on an area. */
  readonly how: (row: WallRow, of: CleanerClass) => RowWash;
}

/**
 * How a zone is washed: its bare rows with one cleaner, then the masked masonry, each row with the class that suits it,
 * rows of one class together and the strongest first, at no stronger class than the bare rows tolerate. The class of
 * the bare rows is the one from clear water to the ceiling that takes the fewest labor-hours; a tie goes to the gentlest; the
 * classes of the masked rows are those that take the fewest with a set-up for each. A class chosen by the user beats
 * them, never above the ceiling. As the best of what is allowed, neither takes fewer hours where a row tolerates less.
 * @param zone its rows, or one of each group, and the rows below that its rinse runs over
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
  rec?: ZoneRecord,
): ZoneDecision {
  const governing = governZone({ rows, below }, factors, rec);
  const masonry = masonryByLevel(rows);
  if (rec) traceMasonry(rows, masonry, rec);
  const how = howRowsAreWashed(rulesOf, masonry, elevation);
  const minutesOf = (washed: readonly WallRow[], ceiling: CleanerClass): number[] => {
    const classes = classesUpTo[ceiling] ?? [];
    const minutes: number[] = classes.map(() => 0);
    for (const row of washed) {
      const weight = netArea(row) * slowdownOf(row, slowdowns).washing;
      for (const of of classes) minutes[of] = (minutes[of] ?? 0) + how(row, of).all * weight;
    }
    return minutes;
  };
  const choose = (minutes: readonly number[], at: ChoiceOf, taker?: ZoneRecord): CleanerClass => {
    const { chosenClass } = factors;
    if (chosenClass === undefined) {
      const classToUse = fewest(minutes);
      if (taker)
        traceClass(at, classToUse, minutes, taker, (of) => {
          traceTry(rulesOf(of), at, masonry, elevation, slowdowns, taker);
        });
      return classToUse;
    }
    const chosen = Math.min(at.ceiling, chosenClass) as CleanerClass;
    taker?.lineNamed(at.symbol, `min(${at.limit}, ${String(chosenClass)})`, chosen, 'class', 'chosenClass');
    return chosen;
  };
  const bare = rows.filter((row) => !row.masked && netArea(row) > 0);
  const first = governing && {
    rows: bare,
    class: choose(
      factors.chosenClass === undefined ? minutesOf(bare, governing.ceiling) : [],
      { rows: bare, ceiling: governing.ceiling, limit: 'ceiling@', symbol: 'class@', method: 'classToUse' },
      rec,
    ),
  };

  const most = governing?.ceiling ?? leastCeiling(below);
  const ceilingOf = (row: WallRow) => Math.min(row.material.ceiling, most) as CleanerClass;
  const waiting = rows.filter(isWashedLater);
  const onceMore = 1 + factors.value('reclean.share');
  const setup =
    (factors.value('setup.zone') * constants.minPerHour.value * rulesOf(0).crew.workingShare) / onceMore;
  const minutesLater = new Map<WallRow, readonly number[]>();
  if (factors.chosenClass === undefined)
    for (const row of waiting) minutesLater.set(row, minutesOf([row], ceilingOf(row)));
  const cleaners = minutesLater.size > 0 ? laterCleaners([...minutesLater.values()], setup) : [];
  const laterClasses = new Map<WallRow, CleanerClass>();
  const chooseLater = (row: WallRow, taker?: RowRecord): CleanerClass => {
    const ceiling = ceilingOf(row);
    if (taker) {
      const limits = `min(${String(row.material.ceiling)}, ${governing ? 'ceiling@' : String(most)})`;
      taker.line('laterCeiling', ceiling, limits);
    }
    const minutes =
      factors.chosenClass === undefined
        ? (minutesLater.get(row) ?? minutesOf([row], ceiling)).map((each, of) =>
            cleaners.includes(of as CleanerClass) ? each : NaN,
          )
        : [];
    const at = {
      rows: [row],
      ceiling,
      limit: 'laterCeiling#',
      symbol: 'laterClass#',
      method: 'laterClass',
    } as const;
    return choose(minutes, at, taker);
  };
  const laterClass = (row: WallRow): CleanerClass => {
    const of = laterClasses.get(row) ?? chooseLater(row);
    laterClasses.set(row, of);
    return of;
  };
  for (const row of waiting) laterClasses.set(row, chooseLater(row, rec?.row(row.row, row.wall)));
  return { governing, first, later: laterWashes(waiting, laterClass), laterClass, masonry, how };
}

/** What a class is chosen for: the rows, their ceiling, the symbol of that and of the choice, and the rule. */
interface ChoiceOf {
  readonly rows: readonly WallRow[];
  readonly ceiling: CleanerClass;
  readonly limit: string;
  readonly symbol: string;
  readonly method: 'classToUse' | 'laterClass';
}

const classesUpTo: readonly (readonly CleanerClass[])[] = cleanerClasses.map(({ class: most }) =>
  cleanerClasses.map((row) => row.class).filter((of) => of <= most),
);

/** The class with the fewest minutes, ties to the gentlest; NaN is no candidate. */
function fewest(minutes: readonly number[]): CleanerClass {
  const least = minutes.reduce((best, each) => (each < best ? each : best), Infinity);
  // Sums that differ in their last digits alone are a tie.
  const found = minutes.findIndex((each) => each <= least * (1 + constants.guard.value));
  return (found < 0 ? minutes.length - 1 : found) as CleanerClass;
}

/**
 * The cleaners of the washes of masked rows: of all sets of classes the one with the fewest minutes, where each row
 * takes the best of the set and each class takes a set-up; ties to fewer cleaners, then to gentler ones.
 */
function laterCleaners(minutes: readonly (readonly number[])[], setup: number): readonly CleanerClass[] {
  let best: readonly CleanerClass[] = [];
  let least = Infinity;
  for (const set of setsOfClasses) {
    let sum = set.length * setup;
    for (const ofRow of minutes) sum += set.reduce((best, of) => lesser(best, ofRow[of]), Infinity);
    if (best.length > 0 && !(sum < least * (1 - constants.guard.value))) continue;
    best = set;
    least = sum;
  }
  return best;
}

/** The lesser of two, where the second may be no number. */
function lesser(one: number, other: number | undefined): number {
  return other !== undefined && other < one ? other : one;
}

/** All sets of classes, the small and gentle first. */
const setsOfClasses: readonly (readonly CleanerClass[])[] = cleanerClasses
  .reduce<CleanerClass[][]>((sets, { class: of }) => [...sets, ...sets.map((set) => [...set, of])], [[]])
  .slice(1)
  .sort((a, b) => a.length - b.length);

/** How each row is washed with a class, worked out once: a class that is tried out may be the one that is used. */
function howRowsAreWashed(
  rulesOf: (classToUse: CleanerClass) => WashRules,
  masonry: MasonryByLevel,
  elevation: Elevation,
): (row: WallRow, of: CleanerClass) => RowWash {
  const known = new Map<WallRow, { readonly strip: number; readonly byClass: (RowWash | undefined)[] }>();
  return (row, of) => {
    const rules = rulesOf(of);
    let ofRow = known.get(row);
    if (ofRow === undefined) {
      ofRow = { strip: stripBelow(row, elevation, masonry, rules.below), byClass: [] };
      known.set(row, ofRow);
    }
    return (ofRow.byClass[of] ??= washRow(row, ofRow.strip, rules));
  };
}

function laterWashes(waiting: readonly WallRow[], laterClass: (row: WallRow) => CleanerClass): Wash[] {
  const byClass = new Map<CleanerClass, WallRow[]>();
  for (const row of waiting) {
    const of = laterClass(row);
    const together = byClass.get(of);
    if (together) together.push(row);
    else byClass.set(of, [row]);
  }
  return [...byClass]
    .map(([of, together]) => ({ rows: together, class: of }))
    .sort((a, b) => b.class - a.class);
}

function leastCeiling(rows: readonly WallRow[]): CleanerClass {
  let least: CleanerClass = STRONGEST_CLASS;
  for (const { material } of rows) if (material.ceiling < least) least = material.ceiling;
  return least;
}

/** Takes down what a class would take that is tried out. */
function traceTry(
  rules: WashRules,
  { rows, symbol }: ChoiceOf,
  masonry: MasonryByLevel,
  elevation: Elevation,
  slowdowns: Slowdowns,
  rec: ZoneRecord,
): void {
  const minutes = rows.map((row) => {
    const rowRec = rec.row(row.row, row.wall, rules.class);
    const area = netArea(row);
    rowRec.input('Area#', row.area, 'area', 'Area of the row, gross', 'area');
    rowRec.input('Openings#', row.openings, 'area', 'Openings in the row', 'openings');
    rowRec.line('bareArea', area);
    const slowed = slowdownOf(row, slowdowns, rowRec).washing;
    const strip = stripBelow(row, elevation, masonry, rules.below, rowRec);
    const hours = hoursOf(washRow(row, strip, rules, rowRec).all * area * slowed, rules.crew);
    rowRec.line('hoursAtClass', hours);
    return hours;
  });
  const terms = rows.map(({ row }) => `hours_r${String(row)}_c${String(rules.class)}`);
  rec.sum(hoursSymbol(symbol, rules.class), terms, minutes, 'laborHours', 'hoursAtClass');
}

function hoursSymbol(symbol: string, of: number): string {
  return `${symbol.slice(0, -1)}Hours${String(of)}${symbol.slice(-1)}`;
}

function traceClass(
  { symbol, method }: ChoiceOf,
  classToUse: CleanerClass,
  minutes: readonly number[],
  rec: ZoneRecord,
  tryClass: (of: CleanerClass) => void,
): void {
  // A class whose cycle is an error is no candidate.
  const able = cleanerClasses.map((row) => row.class).filter((of) => !Number.isNaN(minutes[of] ?? NaN));
  for (const of of able) tryClass(of);
  const cases = able.slice(0, -1).map((of, place) => {
    const others = able.slice(place + 1).map((each) => hoursSymbol(symbol, each));
    return `${hoursSymbol(symbol, of)} <= min(${others.join(', ')}) * (1 + guard) ? ${String(of)} : `;
  });
  rec.lineNamed(symbol, `${cases.join('')}${String(able.at(-1) ?? classToUse)}`, classToUse, 'class', method);
}
