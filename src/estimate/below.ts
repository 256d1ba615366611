import type { FactorsInForce } from '../rules/read-factors';
import type { RowRecord } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';
import { masonrySymbol, type Elevation, type MasonryByLevel } from './elevation';

/** How what lies below is kept wet. Minutes, L/m2, m2/min. */
export interface BelowRules {
  readonly interval: number;
  readonly water: number;
  readonly rate: number;
  readonly dropWidth: number;
}

/**
 * The rules in force.
 * @param factors the factors in force
 * @returns interval, water, rate and width
 */
export function belowRules(factors: FactorsInForce): BelowRules {
  return {
    interval: factors.value('below.interval'),
    water: factors.value('below.water'),
    rate: factors.value('rate.below'),
    dropWidth: factors.value('access.dropWidth'),
  };
}

/**
 * The strip below a row that is wetted while the row is washed: level by level a drop wide, but no more than the
 * masonry there that is washed, now or afterwards. That it is kept wet until the final rinse is BIA Technical Note 20; the strip is an assumption.
 * @param row the wall row
 * @param elevation how its zone stands
 * @param masonry the masonry of its zone by level, m2
 * @param rules the rules in force
 * @param rec takes down the lines
 * @returns area in m2
 */
export function stripBelow(
  row: WallRow,
  elevation: Elevation,
  masonry: MasonryByLevel,
  rules: BelowRules,
  rec?: RowRecord,
): number {
  let strip = 0;
  for (const { level, height } of elevation.below(row))
    strip += Math.min(rules.dropWidth * height, masonry.get(level) ?? 0);
  if (rec) {
    const levels = elevation.below(row).filter(({ level }) => masonry.has(level));
    const terms = levels.map(
      ({ level }) => `min(access_dropWidth * levelHeight${String(level)}@, ${masonrySymbol(level)})`,
    );
    if (levels.length > 0) rec.line('stripBelow', strip, { levels: terms.join(' + ') });
    else rec.line('nothingBelow', 0);
  }
  return strip;
}
