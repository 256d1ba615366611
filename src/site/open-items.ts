import { punchList, type Inspection, type PunchItem } from './inspection';
import { listed } from './named';
import type { Hold } from './step';

/**
 * The items of a punch list that are open.
 * @param inspection what is kept of the inspection of a zone
 * @returns them in the order in which they were found
 */
export function openItems(inspection: Inspection): PunchItem[] {
  return punchList(inspection).filter(({ closed }) => closed === undefined);
}

/**
 * Items of a punch list by wall and words, as an inspection is decided on them.
 * @param items the items
 * @returns a name for each, told apart where the same was found twice
 */
export function itemsNamed(items: readonly PunchItem[]): string[] {
  const names = items.map(named);
  return names.map((name, index) => {
    const before = names.slice(0, index).filter((other) => other === name).length;
    return before === 0 ? name : `${name} (${String(before + 1)})`;
  });
}

/**
 * What holds an inspection back: a zone is not signed off over items that are open, unless somebody answers for it.
 * @param items the items that are open
 * @returns the condition, of these items alone; undefined where none is open
 */
export function heldByItems(items: readonly PunchItem[]): Hold | undefined {
  if (items.length === 0) return undefined;
  const found = items.map((item) => `${named(item)} (found ${item.when})`);
  return {
    condition: `Open on the punch list: ${found.join('; ')}.`,
    words: `Open on the punch list: ${listed(itemsNamed(items), '; ')}. Close what is done first.`,
  };
}

/**
 * How many items are open, in words.
 * @param count how many
 * @returns for example `2 punch items open`
 */
export function itemsOpenWords(count: number): string {
  return `${String(count)} punch ${count === 1 ? 'item' : 'items'} open`;
}

function named({ wall, what }: PunchItem): string {
  return `${wall === '' ? 'the whole zone' : wall}: ${what}`;
}
