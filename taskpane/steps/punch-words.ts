import type { PunchItem } from '../../src/site/inspection';
import { timeText } from '../shared/time-text';

/**
 * An item of the punch list in words.
 * @param item the item
 * @returns wall, what, photo, who and when, done or open
 */
export function punchWords({ wall, what, photo, who, when, closed }: PunchItem): string {
  const found = `${wall === '' ? 'The whole zone' : wall}: ${what}.${photo === undefined ? '' : ` Photo ${photo}.`} Found by ${who}, ${timeText(when)}.`;
  return closed ? `${found} Done: ${closed.who}, ${timeText(closed.when)}.` : `${found} Open.`;
}
