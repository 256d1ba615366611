import type { Overruled } from '../../src/site/step-progress';
import { timeText } from '../shared/time-text';
const ISO_TIME = /\d{4}-\d{2}-\d{2}T[\d:.]+Z/g;

/**
 * A condition that was overruled, as a reader has it: it is kept with times that are the same on every device.
 * @param hold the condition as it is kept
 * @param timeText writes a time in words
 * @returns the condition with its times in words
 */
export function conditionText(hold: string, timeText: (time: string) => string): string {
  return hold.replace(ISO_TIME, (time) => timeText(time));
}

/**
 * Who overruled a condition, and why.
 * @param overruled what is kept of it
 * @returns a sentence or two
 */
export function overruledText({ hold, who, when, why }: Overruled): string {
  return `Overruled by ${who}, ${timeText(when)}: ${why}. The condition: ${conditionText(hold, timeText)}`;
}
