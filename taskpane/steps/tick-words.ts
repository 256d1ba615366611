import type { StepRecord } from '../../src/site/step-progress';
import { timeText } from '../shared/time-text';

/**
 * Who ticked a step, and when.
 * @param record what was kept of it; undefined where nobody did
 * @returns name and time; empty where nobody did
 */
export function tickWords(record: StepRecord | undefined): string {
  return record ? `${record.who}, ${timeText(record.when)}` : '';
}
