import { comparable } from '../../../quantity/cell';
import { said } from '../agree';
import type { AuditFinding } from '../audit-finding';
import type { Value } from '../outcome';
import type { BidBook } from './bid-book';
import { kindOf, type Asked, type Step } from './ways';
import { findingAt, shownAt } from './words';

/** What is known of the walls that a call asks about. */
export interface KnownWalls {
  readonly zones: readonly string[];
  /** What the function gives for the whole job. */
  readonly whole: Value;
}

/** Gives the zones of the walls of a call; undefined where they cannot be read. */
export type ZonesOf = (asked: Asked) => KnownWalls | undefined;

/**
 * Zones of the walls that have no line among those that a total takes.
 * @param book the workbook
 * @param zonesOf the zones of the walls that a call asks about
 * @returns one finding for each sheet and set of zones, with the whole job beside what is summed
 */
export function zonesMissing(book: BidBook, zonesOf: ZonesOf): AuditFinding[] {
  const found = new Map<
    string,
    {
      readonly total: Step;
      readonly asked: Asked;
      readonly missing: readonly string[];
      readonly whole: Value;
    }
  >();
  const priceFirst = [...book.totals].sort(
    (a, b) => Number(book.priceWay.has(b)) - Number(book.priceWay.has(a)),
  );
  for (const total of priceFirst) {
    for (const asked of kindsOf(book, total)) {
      const known = zonesOf(asked);
      const missing = known ? zonesReached(book, total, asked, known.zones) : [];
      if (!known || missing.length === 0) continue;
      const key = `${total.sheet}\n${missing.join('\n')}`;
      if (!found.has(key)) found.set(key, { total, asked, missing, whole: known.whole });
    }
  }
  const first = [...found.values()];
  return first
    .filter(({ total, missing }) =>
      first.every(
        (other) =>
          other.total === total ||
          other.missing.join('\n') !== missing.join('\n') ||
          !book.ways.from(other.total).has(total),
      ),
    )
    .map(({ total, asked, missing, whole }) =>
      findingAt(
        total,
        'left out',
        `${missing.length === 1 ? 'Zone' : 'Zones'} ${missing.join(', ')} ${missing.length === 1 ? 'has' : 'have'} no line here: the lines come to ${shownAt(book.ways, total)}, ${asked.name} of the whole job is ${said(whole)}.`,
        `Add a line for ${missing.join(', ')}, and see that this total takes it.`,
      ),
    );
}

/** The calls over single zones among the terms of a total, one for each function, part and walls. */
function kindsOf({ adds }: BidBook, total: Step): Asked[] {
  const kinds = new Map<string, Asked>();
  for (const { step } of adds.terms(total).values()) {
    for (const start of step ? adds.startsOf(step) : []) {
      const [asked, ...more] = start.asked;
      if (asked && more.length === 0 && asked.zone !== '' && asked.part !== 'rate')
        kinds.set(kindOf(asked), asked);
    }
  }
  return [...kinds.values()];
}

/** The zones without a line on the sheet of the total, and in whatever takes it. */
function zonesReached({ ways }: BidBook, total: Step, asked: Asked, zones: readonly string[]): string[] {
  const lines = new Set(
    ways.steps.filter(({ sheet }) => sheet === total.sheet).flatMap((step) => zonesAsked(step, asked)),
  );
  let least = zones.filter((zone) => !lines.has(comparable(zone)));
  for (const step of [total, ...ways.from(total)]) {
    const had = new Set([...upstream(step)].flatMap((start) => zonesAsked(start, asked)));
    const missing = zones.filter((zone) => !had.has(comparable(zone)));
    if (missing.length < least.length) least = missing;
  }
  return least;
}

function zonesAsked(step: Step, asked: Asked): string[] {
  return step.asked.flatMap((other) => (kindOf(other) === kindOf(asked) ? [comparable(other.zone)] : []));
}

function upstream(step: Step): ReadonlySet<Step> {
  const found = new Set<Step>([step]);
  for (const each of found) for (const source of each.sources) found.add(source);
  return found;
}
