import { crewHours, type CrewHours } from '../quantity/quantities';
import { constants } from '../rules/constants';
import type { FactorsInForce } from '../rules/read-factors';
import type { Recorder } from '../trace/recorder';
import type { WallRow } from '../walls/wall-row';

/**
 * Crew-hours of moving along a zone. Levels stand above one another, so the longest level sets the length; masked
 * rows count, since the masking is put up from the same positions. A row without a height has no length and is
 * named by the checks.
 * @param rows the rows of the zone
 * @param factors the factors in force
 * @param rec takes down the lines
 * @returns crew-hours
 */
export function moveHours(rows: readonly WallRow[], factors: FactorsInForce, rec?: Recorder): CrewHours {
  const lengths = new Map<number, number>();
  for (const row of rows) {
    if (row.height > 0) lengths.set(row.level, (lengths.get(row.level) ?? 0) + row.area / row.height);
  }
  let longest = 0;
  let level: number | undefined;
  for (const [candidate, length] of lengths) {
    if (length > longest) {
      longest = length;
      level = candidate;
    }
  }
  const positions = Math.ceil(longest / factors.value('access.dropWidth') - constants.guard.value);
  const hours =
    (positions * factors.value('access.move') * factors.value('crew')) / constants.minPerHour.value;
  if (rec) {
    const onLevel = rows.filter((row) => row.height > 0 && row.level === level);
    for (const row of onLevel) {
      rec.inRow(row.row, row.wall);
      rec.input('Area#', row.area, 'area', 'Area of the row, gross');
      rec.input('Height#', row.height, 'length', 'Height of the row');
      rec.line('length#', 'Area# / Height#', row.area / row.height, 'length', 'levelLength');
    }
    rec.sum(
      'length@',
      onLevel.map((row) => `length_r${String(row.row)}`),
      onLevel.map((row) => row.area / row.height),
      'length',
      'zoneLength',
    );
    rec.line(
      'positions@',
      'ceil(length@ / access_dropWidth - guard)',
      Math.max(0, positions),
      'count',
      'moves',
    );
    rec.line(
      'moveHours@',
      'positions@ * access_move * crew / minPerHour',
      Math.max(0, hours),
      'crewHours',
      'moveHours',
    );
  }
  return crewHours(Math.max(0, hours));
}
