import type { Inspection } from './inspection';
import { knownZones, type NamedWalls } from './known-zones';
import type { StepId } from './step';

/** That a step was done, or that this was taken back: who said so, and when. */
export interface StepRecord {
  readonly step: StepId;
  readonly done: boolean;
  readonly who: string;
  /** Date and time, ISO 8601. */
  readonly when: string;
  readonly note: string;
  /** Of a gate: what it was decided on. */
  readonly decidedOn: readonly string[];
  /** Left out where no condition of the step was overruled. */
  readonly overruled?: Overruled;
}

/** That somebody let a step go on against a condition, and answers for it. */
export interface Overruled {
  /** The condition in words; another one is not overruled by it. */
  readonly hold: string;
  readonly who: string;
  /** Date and time, ISO 8601. */
  readonly when: string;
  readonly why: string;
}

/** One patch that was timed. */
export interface TimedDwell {
  /** Date and time, ISO 8601. */
  readonly start: string;
  /** Date and time, ISO 8601. */
  readonly stop: string;
}

/** How far the work on a zone is. */
export interface ZoneProgress extends NamedWalls, Inspection {
  /** The latest record of each step that has one. */
  readonly records: readonly StepRecord[];
  /** The patches timed so far. */
  readonly dwells: readonly TimedDwell[];
  /** When the running dwell clock was started, ISO 8601; empty where it stands still. */
  readonly clock: string;
}

/** How far the work on a job is. */
export interface Progress {
  readonly zones: readonly ZoneProgress[];
}

/** Before anything is done. */
export const NO_PROGRESS: Progress = { zones: [] };

/**
 * The progress of the zones of a workbook. What was kept for a zone that is gone stays in the progress.
 * @param progress what was kept
 * @param zones the zones as they are now
 * @returns the progress of each, by name of zone
 */
export function progressByZone(
  progress: Progress,
  zones: readonly NamedWalls[],
): ReadonlyMap<string, ZoneProgress> {
  const known = knownZones(progress.zones, zones);
  return new Map(
    zones.map(({ zone, walls }) => [
      zone,
      { ...(known.get(zone) ?? { records: [], dwells: [], clock: '' }), zone, walls },
    ]),
  );
}

/**
 * Progress that belongs to no zone of the workbook any more.
 * @param progress what was kept
 * @param zones the zones as they are now
 * @returns the progress left over
 */
export function progressLeftOver(progress: Progress, zones: readonly NamedWalls[]): ZoneProgress[] {
  const taken = new Set(knownZones(progress.zones, zones).values());
  return progress.zones.filter((kept) => !taken.has(kept));
}

/**
 * Changes the progress of one zone, and takes its present name and walls down.
 * @param progress what was kept
 * @param zones the zones as they are now
 * @param zone name of the zone to change
 * @param change what happens to it
 * @returns the progress after it; unchanged where there is no such zone
 */
export function changeZone(
  progress: Progress,
  zones: readonly NamedWalls[],
  zone: string,
  change: (zone: ZoneProgress) => ZoneProgress,
): Progress {
  const before = progressByZone(progress, zones).get(zone);
  if (before === undefined) return progress;
  const kept = knownZones(progress.zones, zones).get(zone);
  const after = change(before);
  return {
    zones:
      kept === undefined
        ? [...progress.zones, after]
        : progress.zones.map((other) => (other === kept ? after : other)),
  };
}

/**
 * Takes a record down in place of an earlier one of the same step; who overruled a condition of it stays.
 * @param record the record
 * @returns the change to a zone
 */
export function takeDown(record: StepRecord): (zone: ZoneProgress) => ZoneProgress {
  return (zone) => {
    const overruled = recordOf(zone, record.step)?.overruled;
    return withRecord(zone, { ...(overruled ? { overruled } : {}), ...record });
  };
}

/**
 * Takes down that somebody lets a step go on against a condition; whether it is ticked stays.
 * @param step the step
 * @param overruled the condition, who answers for it, and why
 * @returns the change to a zone
 */
export function overrule(step: StepId, overruled: Overruled): (zone: ZoneProgress) => ZoneProgress {
  return (zone) => {
    const { who, when } = overruled;
    const before = recordOf(zone, step) ?? { step, done: false, who, when, note: '', decidedOn: [] };
    return withRecord(zone, { ...before, overruled });
  };
}

/**
 * Takes back that a condition of a step was overruled; whether it is ticked stays.
 * @param step the step
 * @returns the change to a zone
 */
export function withdrawOverruled(step: StepId): (zone: ZoneProgress) => ZoneProgress {
  return (zone) => {
    const before = recordOf(zone, step);
    if (before === undefined) return zone;
    const { step: of, done, who, when, note, decidedOn } = before;
    return withRecord(zone, { step: of, done, who, when, note, decidedOn });
  };
}

function recordOf(zone: ZoneProgress, step: StepId): StepRecord | undefined {
  return zone.records.find((record) => record.step === step);
}

function withRecord(zone: ZoneProgress, record: StepRecord): ZoneProgress {
  return { ...zone, records: [...zone.records.filter(({ step }) => step !== record.step), record] };
}

/**
 * Starts the dwell clock; one that runs already keeps its start, since that cleaner is still on the wall.
 * @param when date and time, ISO 8601
 * @returns the change to a zone
 */
export function startClock(when: string): (zone: ZoneProgress) => ZoneProgress {
  return (zone) => (zone.clock === '' ? { ...zone, clock: when } : zone);
}

/**
 * Strikes a patch that was timed by mistake.
 * @param start when it was started, ISO 8601
 * @returns the change to a zone
 */
export function strikeDwell(start: string): (zone: ZoneProgress) => ZoneProgress {
  return (zone) => ({ ...zone, dwells: zone.dwells.filter((dwell) => dwell.start !== start) });
}

/**
 * Stops the dwell clock and keeps the time of the patch.
 * @param when date and time, ISO 8601
 * @returns the change to a zone
 */
export function stopClock(when: string): (zone: ZoneProgress) => ZoneProgress {
  return (zone) =>
    zone.clock === ''
      ? zone
      : { ...zone, clock: '', dwells: [...zone.dwells, { start: zone.clock, stop: when }] };
}
