import type { Alternate } from '../src/alternates/alternate';
import type { AlternateLine, AlternatesResult } from '../src/alternates/alternates';
import type { ZoneEstimate } from '../src/estimate/schedule';
import { classInWords } from '../src/rules/cleaner-classes';
import { amount } from '../src/site/amount';
import { listed } from '../src/site/named';
import { columns } from '../src/walls/columns';

/** What is said where an alternate moves no class, ceiling or governor. */
export const NOTHING_MOVED = 'no change';

// m2; what sums leave over where the same walls are washed.
const NO_AREA = 1e-6;

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
 * What the reader must know of an alternate: who chooses it, and where it washes more or less than the bid.
 * @param line the alternate
 * @param result what it is compared with
 * @returns sentences
 */
export function notesInWords(
  { alternate, estimate }: AlternateLine,
  { base, factors }: AlternatesResult,
): string[] {
  const setsMortar = alternate.edits.some((edit) => edit.of === 'wall' && edit.column === 'mortar');
  const more = estimate.totals.washedArea - base.totals.washedArea;
  const area = amount(Math.abs(more), 'area', factors.system);
  return [
    ...alternate.notes,
    ...(setsMortar ? ['The engineer and the code choose the mortar.'] : []),
    ...(more > NO_AREA ? [`Washes ${area} more than the base bid.`] : []),
    ...(more < -NO_AREA ? [`Washes ${area} less than the base bid.`] : []),
  ];
}

/**
 * What is taken together, and what is left out.
 * @param result the alternates
 * @returns sentences
 */
export function togetherInWords(result: AlternatesResult): string {
  const { taken, leftOut, line, problem } = result.together;
  if (taken.length === 0) return 'No alternate saves.';
  const names = listed(taken.map(({ name }) => name));
  const left = leftOut.map(
    ({ alternate, by }) => `${alternate.name} (it sets a cell that ${by.name} has set)`,
  );
  return [
    `Includes ${names}, the largest first. Worked out as one bid, not summed; not always the best combination.`,
    ...(left.length > 0 ? [`Leaves out ${listed(left)}.`] : []),
    ...(line ? notesInWords(line, result) : []),
    ...(problem === undefined ? [] : [problem]),
  ].join(' ');
}
