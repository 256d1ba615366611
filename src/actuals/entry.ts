import type { WallRow } from '../walls/wall-row';
import type { Zone } from '../walls/zones';
import type { Task } from './task';

/** One line of recorded work, read and checked, in base units. */
export interface Entry {
  /** Row within the range, its header being row 1. */
  readonly row: number;
  /** Day as the spreadsheet counts them; undefined where not stated. */
  readonly date: number | undefined;
  /** Undefined where the work was for the whole job. */
  readonly zone: Zone | undefined;
  /** Undefined where no wall is named. */
  readonly wall: WallRow | undefined;
  readonly task: Task;
  /** m2; 0 where not stated. */
  readonly area: number;
  /** Labor-hours as the clock has them; 0 where none were booked. */
  readonly hours: number;
  /** L */
  readonly water: number;
  /** Concentrate, L. */
  readonly cleaner: number;
}

/** What is booked in an entry. */
export type Measure = 'hours' | 'water' | 'cleaner';
