import type { ZoneEstimate } from '../../estimate/schedule';
import type { WashedRow } from '../../estimate/zone-own';
import { washedRows } from '../../hazards/washed';
import { constants } from '../../rules/constants';
import type { FactorsInForce } from '../../rules/read-factors';
import { groupKey } from '../../walls/rows-alike';
import type { WallRow } from '../../walls/wall-row';
import { hazardCheck, materialNames } from '../finding';
import { shownFactor } from '../shown';

/** Walls that take up more water than the most passes give them. */
export const preWetTooLong = hazardCheck(
  (zone) => rowsWashedSo(zone, cutShort),
  (zone, _, { factors }) => {
    const wanted = Math.max(...zone.washed.filter(cutShort).map(({ how }) => how.wet.wanted));
    return {
      check: 'pre-wet',
      what: `Pre-wet would take ${String(wanted)} passes, the most is ${shownFactor(factors, 'prewet.mostPasses')}`,
      why: 'The face still takes up cleaner when it is applied, and may dry too soon',
      todo: 'Measure the suction on the wall and state it in the column Suction, or allow more passes by the factor prewet.mostPasses',
      source: 'estimate',
      column: 'suction',
    };
  },
);

/** Suction from the table of materials that decides the hours. */
export const suctionNotMeasured = hazardCheck(
  (zone, factors) => rowsWashedSo(zone, (washed) => bySuctionAlone(washed, factors)),
  (_, rows) => ({
    check: 'suction',
    what: `${materialNames(rows)}: suction is not measured, and decides the hours`,
    why: 'Pre-wetting takes longer than the helpers have while one applies and rinses; brick of one name differs by a factor of five',
    todo: 'Measure the initial rate of absorption and state it in the column Suction, or by the factor of the material',
    source: 'c67',
    column: 'suction',
  }),
);

function cutShort({ how: { wet } }: WashedRow): boolean {
  return wet.wanted > wet.passes;
}

/** The helpers' work does not fit beside the one who washes, and suction asks for more than the least passes. */
function bySuctionAlone({ row, how }: WashedRow, factors: FactorsInForce): boolean {
  if (how.cycle === undefined || row.suction > 0 || row.material.overridden.includes('suction')) return false;
  const unhindered = factors.value('team.size') * how.cycle.time;
  return (
    how.wet.passes > factors.value('prewet.leastPasses') && how.all > unhindered * (1 + constants.guard.value)
  );
}

/** One row stands for each group in long tables: the finding names every wall of it. */
function rowsWashedSo(zone: ZoneEstimate, so: (washed: WashedRow) => boolean): WallRow[] {
  const groups = new Set(zone.washed.filter(so).map(({ row }) => groupKey(row)));
  return groups.size === 0 ? [] : washedRows(zone).filter((row) => groups.has(groupKey(row)));
}
