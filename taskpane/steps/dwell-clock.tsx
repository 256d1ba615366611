import { useEffect, useId, useMemo, useRef } from 'preact/hooks';
import { rounded } from '../../src/site/amount';
import { driesAt, readDwellClock, type DwellLimits, type DwellPhase } from '../../src/site/dwell-clock';
import type { ZoneProgress } from '../../src/site/step-progress';
import { timeText } from '../shared/time-text';
import { DwellBar } from './dwell-bar';
import { useNow } from './use-now';

const MS_PER_MINUTE = 60_000;

const phaseNames: Readonly<Record<DwellPhase, string>> = {
  'before least': '◔ Dwelling',
  within: '◑ Within its dwell',
  'over most': '▲ Too long: rinse now',
  dried: '■ Dry: rinse now',
  'set back': 'Clock set back',
};

/** What the dwell clock shows and does. */
export interface DwellClockProps {
  readonly progress: ZoneProgress;
  readonly limits: DwellLimits;
  /** Patches of the zone, each as often as it has passes; NaN or 0 where there are none. */
  readonly patches: number;
  /** Why it may not be started; empty where it may. */
  readonly held: string;
  readonly start: () => void;
  readonly stop: () => void;
  /** Takes a patch off the list, by its start. */
  readonly strike: (start: string) => void;
  /** Speaks where the panel with the clock is not shown. */
  readonly say: (sentence: string) => void;
}

/**
 * The dwell clock of a zone: how long the cleaner of a patch has worked, and what to do now. The workbook keeps its
 * start, so that it goes on when the pane is closed.
 * @param props what it shows and does
 * @returns the clock
 */
export function DwellClock({ progress, limits, patches, held, start, stop, strike, say }: DwellClockProps) {
  const id = useId();
  const section = useRef<HTMLElement>(null);
  const running = progress.clock !== '';
  const now = useNow(running);
  const reading = running ? readDwellClock(Date.parse(progress.clock), now, limits) : undefined;
  const latestStrike = useRef(strike);
  latestStrike.current = strike;
  // The list does not change while the clock ticks.
  const timed = useMemo(
    () => (
      <TimedDwells
        progress={progress}
        limits={limits}
        strike={(begun) => {
          latestStrike.current(begun);
        }}
      />
    ),
    [progress, limits],
  );
  const phase = reading?.phase;
  const spoken = reading?.say;
  useEffect(() => {
    if (phase === undefined || spoken === undefined) return;
    if (section.current?.closest('[hidden]')) say(`${progress.zone}: ${spoken}`);
    // A sentence is spoken when it changes, not at every tick.
  }, [phase, spoken, progress.zone, say]);
  return (
    <section class={`dwell-clock ${phase?.replace(' ', '-') ?? 'still'}`} aria-labelledby={id} ref={section}>
      <h3 id={id}>Dwell clock</h3>
      {reading && (
        <>
          <p class="elapsed">
            <span role="timer" aria-label="Since the first stroke">
              {clockText(reading.elapsed)}
            </span>{' '}
            <strong>{phaseNames[reading.phase]}</strong>
          </p>
          <DwellBar limits={limits} elapsed={reading.elapsed} />
        </>
      )}
      <p class="dwell-say" role="alert">
        {spoken}
      </p>
      {running ? (
        <button type="button" class="main" onClick={stop}>
          Stop: the patch is rinsed
        </button>
      ) : (
        <button
          type="button"
          class="main"
          aria-disabled={held !== ''}
          aria-describedby={held === '' ? undefined : `${id}-held`}
          onClick={() => {
            if (held === '') start();
          }}
        >
          Start: first stroke
        </button>
      )}
      {held !== '' && !running && (
        <p class="reason" id={`${id}-held`}>
          {held}
        </p>
      )}
      <p class="timed">
        Timed so far: {progress.dwells.length}.
        {patches > 0 && ` The zone has ${String(patches)} patches to wash, each pass counted.`}
      </p>
      {timed}
    </section>
  );
}

function TimedDwells({ progress, limits, strike }: Pick<DwellClockProps, 'progress' | 'limits' | 'strike'>) {
  return progress.dwells.length === 0 ? null : (
    <details>
      <summary>Patches timed</summary>
      <ol class="timed-list">
        {progress.dwells.map(({ start, stop }) => {
          const minutes = (Date.parse(stop) - Date.parse(start)) / MS_PER_MINUTE;
          return (
            <li key={start}>
              {timeText(start)}: {rounded(minutes)} min{remark(minutes, limits)}{' '}
              <button
                type="button"
                class="not-printed"
                aria-label={`Delete the patch of ${timeText(start)}`}
                onClick={() => {
                  strike(start);
                }}
              >
                Delete
              </button>
            </li>
          );
        })}
      </ol>
    </details>
  );
}

function remark(minutes: number, limits: DwellLimits): string {
  const { least, most, lastBy } = limits;
  if (minutes >= driesAt(limits)) return ', may have dried';
  if (minutes > (lastBy ?? most)) return ', over the maximum dwell';
  return minutes < least ? ', under the minimum dwell' : '';
}

function clockText(minutes: number): string {
  const seconds = Math.floor(minutes * 60);
  return `${String(Math.floor(seconds / 60))}:${String(seconds % 60).padStart(2, '0')}`;
}
