import { rounded } from './amount';

/** What a dwell clock goes by, in minutes. */
export interface DwellLimits {
  readonly least: number;
  readonly most: number;
  /** Infinite where nothing dries. */
  readonly dries: number;
  /** When the plan starts to rinse, at the wall where that is first; undefined where there is no patch. */
  readonly rinseAt: number | undefined;
  /** The same at the wall where it is last; left out where all walls are alike. */
  readonly rinseAtMost?: number | undefined;
  /** When the last point, which was covered last, has had its most dwell; undefined where there is no patch. */
  readonly lastBy: number | undefined;
}

/** Where the cleaner on the wall stands: the clock of the device may also have been set back behind the start. */
export type DwellPhase = 'before least' | 'within' | 'over most' | 'dried' | 'set back';

/** A reading of the dwell clock. */
export interface DwellReading {
  /** Minutes since the first stroke. */
  readonly elapsed: number;
  readonly phase: DwellPhase;
  /** What to do now, in a sentence or two. */
  readonly say: string;
}

const MS_PER_MINUTE = 60_000;

/**
 * Reads the dwell clock. Where the cleaner dries within its most dwell it is misted each time before it does, and dries
 * only once that is over. What would dry on the wall is told before what has only worked too long.
 * @param start first stroke of the patch, ms
 * @param now the present, ms
 * @param limits what the clock goes by
 * @returns elapsed minutes, phase and what to do
 */
export function readDwellClock(start: number, now: number, limits: DwellLimits): DwellReading {
  const elapsed = (now - start) / MS_PER_MINUTE;
  const phase = phaseOf(elapsed, limits);
  return { elapsed: Math.max(0, elapsed), phase, say: sayOf(phase, elapsed, limits) };
}

/**
 * When the cleaner of the first stroke may have dried: misted, only once nobody mists it any longer.
 * @param limits what the clock goes by
 * @returns minutes on the clock; infinite where nothing dries
 */
export function driesAt(limits: DwellLimits): number {
  return isMisted(limits) ? limits.most + limits.dries : limits.dries;
}

function phaseOf(elapsed: number, limits: DwellLimits): DwellPhase {
  const { least, most } = limits;
  if (elapsed < 0) return 'set back';
  if (elapsed >= driesAt(limits)) return 'dried';
  if (elapsed > most) return 'over most';
  return elapsed < least ? 'before least' : 'within';
}

/** Whether the cleaner has to be misted. */
function isMisted({ most, dries }: DwellLimits): boolean {
  return dries < most;
}

function sayOf(phase: DwellPhase, elapsed: number, limits: DwellLimits): string {
  const { least, most, dries, rinseAt, rinseAtMost, lastBy } = limits;
  switch (phase) {
    case 'set back':
      return 'The clock of this device was set back behind the start. Go by the wall, rinse, and start over.';
    case 'dried':
      return `Rinse now, with plenty of water: the cleaner may have dried, ${rounded(dries)} min in this weather.`;
    case 'over most':
      return lastBy !== undefined && elapsed <= lastBy
        ? `Rinse now: the most dwell of ${rounded(most)} min is over where you began; the last point by ${rounded(lastBy)} min on this clock.`
        : `Rinse now: the most dwell of ${rounded(most)} min is over.`;
    case 'before least':
      return dries < least
        ? `Leave it to work, but watch it: it dries after ${rounded(dries)} min, before the least dwell of ${rounded(least)} min. ${mistSaying(elapsed, dries)} Rinse where it starts to dry.`
        : `Leave it to work until ${rounded(least)} min, and keep it wet.`;
    case 'within': {
      const rinsing =
        rinseAt !== undefined && elapsed < (rinseAtMost ?? rinseAt)
          ? `Least dwell reached. Start to rinse at ${rounded(rinseAt)} ${rinseAtMost === undefined ? 'min' : `to ${rounded(rinseAtMost)} min, as the steps say of each wall`}, in the order of applying.`
          : `Rinse, in the order of applying; the last point by ${rounded(most)} min of its own dwell.`;
      return isMisted(limits) ? `${rinsing} ${mistSaying(elapsed, dries)}` : rinsing;
    }
  }
}

function mistSaying(elapsed: number, dries: number): string {
  const next = (Math.floor(elapsed / dries) + 1) * dries;
  return `Mist it at ${rounded(next)} min at the latest, and each ${rounded(dries)} min.`;
}
