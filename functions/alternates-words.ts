import type { Alternate } from '../src/alternates/alternate';
import type { AlternateLine, Together } from '../src/alternates/alternates';
import type { ZoneEstimate } from '../src/estimate/schedule';
import { classInWords } from '../src/rules/cleaner-classes';
import { listed } from '../src/site/named';
import { columns } from '../src/walls/columns';

/** What is said where an alternate moves no class, ceiling or governor. */
export const NOTHING_MOVED = 'no change';

/**
 * What an alternate sets.
 * @param alternate the alternate
 * @returns for example `Mortar O: S-1, S-2; price.labor 60`
 */
export function whatInWords({ edits }: Alternate): string {
  const walls = new Map<string, string[]>();
  for (const edit of edits) {
    const value = valueInWords(edit.value);
    const setting =
      edit.of === 'factor'
        ? `${edit.id} ${value}`
        : edit.column === 'area' && Number(edit.value) === 0
          ? 'left out'
          : `${columns[edit.column].name} ${value}`;
    walls.set(setting, [...(walls.get(setting) ?? []), ...(edit.of === 'wall' ? [edit.wall] : [])]);
  }
  return [...walls].map(([set, on]) => (on.length > 0 ? `${set}: ${listed(on)}` : set)).join('; ');
}

function valueInWords(value: unknown): string {
  if (typeof value === 'string' && value !== '') return value;
  return typeof value === 'number' || typeof value === 'boolean' ? String(value) : 'blank';
}

/**
 * The class of a zone and what sets its ceiling.
 * @param name the zone
 * @param estimate the zone; undefined where it is not there
 * @returns for example `Front: class 1 (neutral detergent), set by Limestone`
 */
export function zoneInWords(name: string, estimate: ZoneEstimate | undefined): string {
  if (estimate === undefined) return `${name}: not there`;
  const { governing, classToUse, laterClasses } = estimate;
  const first =
    classToUse === undefined || governing === undefined
      ? 'nothing bare is washed'
      : `${classInWords(classToUse)}, set by ${governing.governors.map((material) => material.name).join(', ')}`;
  const later = laterClasses.map((of) => classInWords(of)).join(', ');
  return `${name}: ${first}${later === '' ? '' : `; masked masonry afterwards ${later}`}`;
}

/**
 * The zones that an alternate moves, before or after it.
 * @param line the alternate
 * @param which before or after
 * @returns each zone with its class and governor
 */
export function movesInWords({ moves }: AlternateLine, which: 'before' | 'after'): string {
  return moves.map((move) => zoneInWords(move.name, move[which])).join('; ') || NOTHING_MOVED;
}

/**
 * What is taken together, and what is left out.
 * @param together those that save
 * @returns sentences
 */
export function togetherInWords({ taken, leftOut, line, problem }: Together): string {
  if (taken.length === 0) return 'No alternate saves.';
  const names = listed(taken.map(({ name }) => name));
  const left = leftOut.map(
    ({ alternate, by }) => `${alternate.name} (it sets a cell that ${by.name} has set)`,
  );
  return [
    `Takes ${names}, the largest first, worked out once and not summed; a combination, not an optimum.`,
    ...(left.length > 0 ? [`Leaves out ${listed(left)}.`] : []),
    ...(line?.alternate.notes ?? []),
    ...(problem === undefined ? [] : [problem]),
  ].join(' ');
}
