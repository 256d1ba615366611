import { inspectionOf } from './inspection-text';
import { listOf, objectOf, textOf, textsOf, timeOf, unreadable, yesOrNoOf } from './kept-values';
import { stepIds } from './step';
import type { Overruled, Progress, StepRecord, TimedDwell, ZoneProgress } from './step-progress';

const FORM = 1;

/**
 * The progress as a text that a workbook keeps.
 * @param progress the progress
 * @returns JSON
 */
export function progressText(progress: Progress): string {
  return JSON.stringify({ form: FORM, zones: progress.zones });
}

/**
 * The progress that a text holds. A text that cannot be read whole is refused, so that nothing of it gets lost by
 * writing the rest back.
 * @param text what the workbook kept
 * @returns the progress
 * @throws {WashdownError} saying which part cannot be read
 */
export function readProgress(text: string): Progress {
  let raw: unknown;
  try {
    raw = JSON.parse(text);
  } catch {
    throw unreadable('it is not JSON text');
  }
  const whole = objectOf(raw, 'the whole');
  if (whole['form'] !== FORM) {
    throw unreadable(
      `its form is ${JSON.stringify(whole['form'] ?? null)}, this version reads ${String(FORM)}`,
    );
  }
  return { zones: listOf(whole['zones'], 'zones').map(zoneOf) };
}

function zoneOf(raw: unknown, index: number): ZoneProgress {
  const at = `zone ${String(index + 1)}`;
  const zone = objectOf(raw, at);
  const clock = textOf(zone['clock'], `${at}, clock`);
  return {
    zone: textOf(zone['zone'], `${at}, zone`),
    walls: textsOf(zone['walls'], `${at}, walls`),
    records: listOf(zone['records'], `${at}, records`).map((record, place) =>
      recordOf(record, `${at}, record ${String(place + 1)}`),
    ),
    dwells: listOf(zone['dwells'], `${at}, dwells`).map((dwell, place) =>
      dwellOf(dwell, `${at}, dwell ${String(place + 1)}`),
    ),
    clock: clock === '' ? '' : timeOf(clock, `${at}, clock`),
    ...inspectionOf(zone, at),
  };
}

function recordOf(raw: unknown, at: string): StepRecord {
  const record = objectOf(raw, at);
  const step = stepIds.find((id) => id === record['step']);
  if (step === undefined) throw unreadable(`${at} has the step ${JSON.stringify(record['step'] ?? null)}`);
  return {
    step,
    done: yesOrNoOf(record['done'], `${at}, done`),
    who: textOf(record['who'], `${at}, who`),
    when: timeOf(record['when'], `${at}, when`),
    note: textOf(record['note'], `${at}, note`),
    decidedOn: textsOf(record['decidedOn'], `${at}, decidedOn`),
    ...(record['overruled'] === undefined ? {} : { overruled: overruledOf(record['overruled'], at) }),
  };
}

function overruledOf(raw: unknown, of: string): Overruled {
  const at = `${of}, overruled`;
  const overruled = objectOf(raw, at);
  return {
    hold: textOf(overruled['hold'], `${at}, hold`),
    who: textOf(overruled['who'], `${at}, who`),
    when: timeOf(overruled['when'], `${at}, when`),
    why: textOf(overruled['why'], `${at}, why`),
  };
}

function dwellOf(raw: unknown, at: string): TimedDwell {
  const dwell = objectOf(raw, at);
  return { start: timeOf(dwell['start'], `${at}, start`), stop: timeOf(dwell['stop'], `${at}, stop`) };
}
