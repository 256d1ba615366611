import type { ZoneEstimate } from '../estimate/schedule';

/**
 * Residue that is scraped and brushed off, which raises dust that holds silica. 29 CFR 1926.1153(f)(1) forbids to brush
 * it dry where wet brushing or a HEPA vacuum is feasible.
 * @param zone the estimate of the zone
 * @returns true where the zone has scraping hours
 */
export function raisesDust({ totals }: ZoneEstimate): boolean {
  return totals.scrapeHours > 0;
}
