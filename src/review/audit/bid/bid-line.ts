import type { AuditFinding } from '../audit-finding';
import { addedTwice } from './added-twice';
import type { BidBook } from './bid-book';
import { leftOut } from './left-out';
import { typedCopies, typedMarkups } from './typed-alone';
import { typedAmongLines, typedTotals } from './typed-among';
import { zonesMissing, type ZonesOf } from './zones-missing';

/**
 * Follows the Washdown formulas to the totals that use them.
 * @param book what to look at
 * @param zonesOf the zones of the walls that a call asks about
 * @param progress how far the whole work is
 * @yields the progress after each rule
 * @returns what was typed over on the way, left out, or added twice
 */
export function* bidLineFindings<Progress>(
  book: BidBook,
  zonesOf: ZonesOf,
  progress: Progress,
): Generator<Progress, AuditFinding[]> {
  const findings: AuditFinding[] = [];
  for (const rule of [typedAmongLines, typedTotals, typedMarkups, typedCopies, leftOut, addedTwice]) {
    findings.push(...rule(book));
    yield progress;
  }
  findings.push(...zonesMissing(book, zonesOf));
  return findings;
}
