import { rounded } from './amount';

/** What a dwell clock goes by, in minutes. */
export interface DwellLimits {
  readonly least: number;
  readonly most: number;
  /** Infinite where nothing dries. */
  readonly dries: number;
  /** When the plan starts to rinse; undefined where there is no patch. */
  readonly rinseAt: number | undefined;
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
 * Reads the dwell clock. What would dry on the wall is told before what has only worked too long.
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

function phaseOf(elapsed: number, { least, most, dries }: DwellLimits): DwellPhase {
  if (elapsed < 0) return 'set back';
  if (elapsed >= dries) return 'dried';
  if (elapsed > most) return 'over most';
  return elapsed < least ? 'before least' : 'within';
}

function sayOf(phase: DwellPhase, elapsed: number, { least, most, dries, rinseAt }: DwellLimits): string {
  switch (phase) {
    case 'set back':
      return 'The clock of this device was set back behind the start. Go by the wall, rinse, and start anew.';
    case 'dried':
      return `Rinse now, with plenty of water: the cleaner may have dried, ${rounded(dries)} min in this weather.`;
    case 'over most':
      return `Rinse now: the most dwell of ${rounded(most)} min is over.`;
    case 'before least':
      return dries < least
        ? `Leave it to work, but watch it: it dries after ${rounded(dries)} min, before the least dwell of ${rounded(least)} min. Rinse where it starts to dry.`
        : `Leave it to work until ${rounded(least)} min, and keep it wet.`;
    case 'within':
      return rinseAt !== undefined && elapsed < rinseAt
        ? `Least dwell reached. Start to rinse at ${rounded(rinseAt)} min, in the order of applying.`
        : `Rinse, in the order of applying; the last point by ${rounded(Math.min(most, dries))} min of its own dwell.`;
  }
}
