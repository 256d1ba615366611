import type { MaterialInForce } from '../../rules/read-factors';
import { netArea } from '../../walls/net-area';
import type { WallRow } from '../../walls/wall-row';
import { setting, type EarlyChoice } from './early-choice';

/**
 * In each zone whose ceiling one material alone holds down, that material replaced by the next tolerant one.
 * @param bid the bid as it is
 * @returns the alternates, in the order of the zones
 */
export const otherMaterial: EarlyChoice = ({ zones, factors }) =>
  zones.flatMap(({ zone, governing }) => {
    const [held, ...others] = governing?.governors ?? [];
    if (held === undefined || others.length > 0) return [];
    const next = nextTolerant(held, factors.materials);
    if (next === undefined) return [];
    const isHeld = (row: WallRow): boolean => !row.masked && netArea(row) > 0 && row.material === held;
    const rows = [...zone.rows, ...zone.below].filter(isHeld);
    const edits = [
      ...setting(rows, 'material', next.name),
      // What was measured on the other unit does not hold for this one.
      ...setting(
        rows.filter(({ suction }) => suction > 0),
        'suction',
        '',
      ),
    ];
    return [{ name: `${next.name} for ${held.name} in ${zone.name}`, edits, notes: [] }];
  });

/**
 * The next tolerant material of the table: the least ceiling above its own, of the same group where one is, then the
 * nearest suction.
 */
function nextTolerant(
  held: MaterialInForce,
  materials: readonly MaterialInForce[],
): MaterialInForce | undefined {
  const [next] = materials
    .filter(({ masonry, ceiling }) => masonry === held.masonry && ceiling > held.ceiling)
    .sort(
      (a, b) =>
        a.ceiling - b.ceiling ||
        Number(b.group === held.group) - Number(a.group === held.group) ||
        Math.abs(a.suction - held.suction) - Math.abs(b.suction - held.suction),
    );
  return next;
}
