import { comparable } from '../../../quantity/cell';
import type { AuditFinding } from '../audit-finding';
import { placeKey } from '../remembered';
import { someOf } from '../spills';
import type { BidBook } from './bid-book';
import type { Step } from './ways';
import { cellNamed, findingAt } from './words';

// A bid line rounds its price to whole money at most.
const ROUNDING = 1;

/**
 * Totals that take a bid line more than once: in overlapping ranges, beside a total that holds it already, or as the
 * price of the whole job beside that of its zones.
 * @param book the workbook
 * @returns a finding at the lowest total that does
 */
export function addedTwice(book: BidBook): AuditFinding[] {
  const known = new Map<Step, ReadonlySet<string>>();
  const twiceIn = (total: Step): ReadonlySet<string> => {
    const before = known.get(total);
    if (before) return before;
    const found = new Set([...cellsTwice(book, total), ...pricesTwice(book, total)]);
    known.set(total, found);
    return found;
  };
  const passedOn = (step: Step): ReadonlySet<string> => {
    const below = step.sources.filter(({ role }) => role.is !== 'other');
    return new Set(
      below.flatMap((source) => (source.role.is === 'total' ? [...twiceIn(source)] : [...passedOn(source)])),
    );
  };
  return book.totals.flatMap((total) => {
    const all = twiceIn(total);
    if (all.size === 0) return [];
    const below = passedOn(total);
    const own = [...all].filter((cell) => !below.has(cell));
    return own.length === 0
      ? []
      : [
          findingAt(
            total,
            'added twice',
            `Includes ${someOf(own)} twice.`,
            'Count each line once: leave it out of the range, or out of the other total.',
          ),
        ];
  });
}

function cellsTwice({ adds, ways, way }: BidBook, total: Step): string[] {
  return [...adds.terms(total).values()].flatMap(({ place, step, times }) =>
    times > 1 &&
    step &&
    (step.asked.length > 0 || way.has(step)) &&
    ways.book.value(place.sheet, place.row, place.column) !== 0
      ? [cellNamed(place)]
      : [],
  );
}

/** The same price by two lines, and the whole job beside zones of it; a share of a price is no second price. */
function pricesTwice({ adds, ways }: BidBook, total: Step): string[] {
  const lines = [...adds.terms(total).values()].flatMap(({ place, step }) => {
    if (!step) return [];
    const [start, ...more] = adds.startsOf(step);
    const [asked, ...others] = start?.asked ?? [];
    if (!start || !asked || more.length > 0 || others.length > 0) return [];
    if (asked.name !== 'BIDPRICE' || asked.part === 'rate') return [];
    const shown = ways.book.value(place.sheet, place.row, place.column);
    const price = ways.book.value(start.sheet, start.row, start.column);
    const same =
      typeof shown === 'number' && typeof price === 'number' && Math.abs(shown - price) <= ROUNDING;
    return same && price !== 0 ? [{ place, asked }] : [];
  });
  return lines.flatMap(({ place, asked }) => {
    const { question, part, zone } = asked;
    const again = lines.some(
      (other) =>
        placeKey(other.place) !== placeKey(place) &&
        other.asked.question === question &&
        (other.asked.part === part || other.asked.part === '' || part === '') &&
        (other.asked.zone === '' || zone === '' || comparable(other.asked.zone) === comparable(zone)),
    );
    return again ? [cellNamed(place)] : [];
  });
}
