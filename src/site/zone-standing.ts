import { itemsOpenWords } from './open-items';
import type { StandingStep } from './step-gates';

/** How far the steps of a zone are. */
export interface ZoneStanding {
  readonly done: number;
  readonly steps: number;
  /** The first step that may be ticked; undefined where none may. */
  readonly next: StandingStep | undefined;
  /** Items of the punch list that are open. */
  readonly openItems: number;
}

/**
 * How far the steps of a zone are.
 * @param steps its steps with where each stands
 * @param openItems how many items of its punch list are open
 * @returns the counts, and what is next
 */
export function zoneStanding(steps: readonly StandingStep[], openItems: number): ZoneStanding {
  return {
    done: steps.filter(({ standing }) => standing === 'done').length,
    steps: steps.length,
    next: steps.find(({ standing }) => standing === 'open' || standing === 'again'),
    openItems,
  };
}

/**
 * Whether nothing is left to do in a zone.
 * @param standing how far its steps are
 * @returns true where every step is done, and there is one
 */
export function isAllDone({ done, steps }: ZoneStanding): boolean {
  return steps > 0 && done === steps;
}

/**
 * The standing of a zone in a few words, for a list of zones.
 * @param standing how far its steps are
 * @returns for example `3 of 12 steps done, held, 2 punch items open`
 */
export function standingWords(standing: ZoneStanding): string {
  const { done, steps, next, openItems } = standing;
  if (steps === 0) return 'no steps';
  const open = openItems > 0 ? `, ${itemsOpenWords(openItems)}` : '';
  if (isAllDone(standing)) return `all steps done${open}`;
  const counted = done === 0 ? 'not begun' : `${String(done)} of ${String(steps)} steps done`;
  return `${counted}${next === undefined ? ', held' : ''}${open}`;
}
