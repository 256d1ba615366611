import { useId, useRef, useState } from 'preact/hooks';
import { takesCleaner } from '../../src/hazards/washed';
import { knownZones, type NamedWalls } from '../../src/site/known-zones';
import { openItems } from '../../src/site/open-items';
import { patchesToWash } from '../../src/site/patch-times';
import { stepChecklist } from '../../src/site/step-checklist';
import { standingSteps, type Present, type StandingStep } from '../../src/site/step-gates';
import {
  changeZone,
  progressByZone,
  progressLeftOver,
  overrule,
  startClock,
  stopClock,
  strikeDwell,
  takeDown,
  withdrawOverruled,
  type Progress,
  type ZoneProgress,
} from '../../src/site/step-progress';
import { zoneStanding } from '../../src/site/zone-standing';
import { siteWashes } from '../../src/site/washes';
import { useRecorded } from '../actuals/use-recorded';
import type { PanelProps } from '../shared/panel-props';
import { PrintActions } from '../shared/print-actions';
import { putOnNewSheet } from '../shared/sheet-out';
import { timeText } from '../shared/time-text';
import { useJob, type Job } from '../shared/use-job';
import { CrewPage } from './crew-page';
import { crewPageData } from './crew-page-data';
import { DwellClock } from './dwell-clock';
import { dwellLimits } from './dwell-limits';
import { InspectionOfStep } from './inspection-of-step';
import { ProgressNotices } from './progress-notices';
import { StepItem } from './step-item';
import { stepRows } from './step-rows';
import { CrewProgress } from './crew-progress';
import { patchKey, type Drafts, type Offers } from './offers';
import { offersOf } from './offers-of-zone';
import { useNow } from './use-now';
import { useProgress, type KeptProgress } from './use-progress';
import { ZoneChoice } from './zone-choice';
import { ZoneHead } from './zone-head';

const SHEET = 'Washdown steps';
// A wait of days may end while the pane is open.
const MS_A_MINUTE = 60_000;
// Zone, step, what, value, source, kind, standing, who, when, note.
const WIDTHS = [16, 20, 50, 16, 32, 16, 24, 16, 20, 30];

/**
 * The checklist of each zone with its own numbers, its gates and its dwell clock. The workbook keeps how far it is.
 * @param props what the panel works on
 * @returns the panel
 */
export function StepsPanel(props: PanelProps) {
  const state = useJob(props.port, props.source);
  const kept = useProgress(props.port);
  // Kept here, so that they outlast a time in which the walls cannot be read.
  const choices = useChoices();
  return (
    <article class="steps printed">
      <h2>Steps</h2>
      <ProgressNotices kept={kept} port={props.port} say={props.say} />
      {state.is === 'failed' && (
        <p class="notice">The steps cannot be shown, because the walls cannot be read. {state.message}</p>
      )}
      {(state.is === 'reading' || kept.state.is === 'reading') && <p>Reading the workbook…</p>}
      {state.is === 'failed' && kept.state.is === 'ready' && <RunningClocks progress={kept.state.progress} />}
      {state.is === 'ready' && kept.state.is === 'ready' && (
        <Checklist {...props} {...choices} job={state.job} kept={kept} progress={kept.state.progress} />
      )}
    </article>
  );
}

/** What the user has chosen and given. */
function useChoices() {
  const [chosen, choose] = useState<NamedWalls>();
  const [who, setWho] = useState('');
  const [shown, show] = useState<Readonly<Record<string, boolean>>>({});
  const [crewPage, showCrewPage] = useState(false);
  const [today, setToday] = useState<readonly string[]>([]);
  const [offers, setOffers] = useState<Offers>({});
  // No state: what is typed into a form is shown by the form itself.
  const drafts = useRef<Drafts>(new Map()).current;
  return {
    chosen,
    choose,
    who,
    setWho,
    shown,
    show,
    crewPage,
    showCrewPage,
    today,
    setToday,
    offers,
    setOffers,
    drafts,
  };
}

interface ChecklistProps extends PanelProps, ReturnType<typeof useChoices> {
  readonly job: Job;
  readonly kept: KeptProgress;
  readonly progress: Progress;
}

function Checklist(props: ChecklistProps) {
  const { port, say, job, kept, progress, chosen, choose, who, setWho, shown, show } = props;
  const { crewPage, showCrewPage, today, setToday, offers, setOffers, drafts } = props;
  const id = useId();
  const whoField = useRef<HTMLInputElement>(null);
  useNow(true, MS_A_MINUTE);
  const recorded = useRecorded(port, job);
  const zones = job.zones.map(({ zone }) => ({
    zone: zone.name,
    walls: zone.rows.map(({ wall }) => wall),
  }));
  const zone = job.zones.find(({ zone }) => zone.name === nameOf(chosen, zones)) ?? job.zones[0];
  if (zone === undefined) return <p>There is no wall in the table yet.</p>;
  const list = stepChecklist(zone, job.zones, job.factors);
  const all = progressByZone(progress, zones);
  const ofZone = all.get(list.zone);
  if (ofZone === undefined) return null;
  const present = {
    now: Date.now(),
    timeOf: Date.parse,
    timeText: (time: number) => timeText(new Date(time)),
  };
  const steps = standingSteps(list, ofZone, present);
  const standings = new Map(
    job.zones.map((each) => {
      const { name } = each.zone;
      const of = each === zone ? steps : stepsOf(each, job, all, present);
      return [name, zoneStanding(of, openItems(all.get(name) ?? {}).length)] as const;
    }),
  );
  const patches = patchesToWash(siteWashes(zone));
  const next = standings.get(list.zone)?.next;
  const progressShown = shown['progress'] ?? false;
  const { offer, drop, form } = offersOf({
    ...{ port, say, recorded, offers, setOffers, drafts },
    zone: list.zone,
  });
  const change = (to: (zone: ZoneProgress) => ZoneProgress, done: string, then?: () => void) => {
    kept
      .change((now) => changeZone(now, zones, list.zone, to))
      .then(
        (isKept) => {
          say(isKept ? done : `${done} The workbook did not save it.`);
          then?.();
        },
        () => {
          say('The workbook could not be changed. Try again.');
        },
      );
  };
  const sign = () => {
    if (who.trim() !== '') return { who: who.trim(), when: new Date().toISOString() };
    say('Enter your name first: each tick records who and when.');
    whoField.current?.focus();
    return undefined;
  };
  const tick = ({ step, standing }: StandingStep, done: boolean, note: string) => {
    const signed = sign();
    if (signed === undefined) return;
    const record = {
      step: step.id,
      done,
      ...signed,
      note: note.trim(),
      decidedOn: step.decidedOn ?? [],
    };
    change(takeDown(record), `${step.title}: ${done ? 'done' : 'undone'}.`, () => {
      if (!done) drop(step.id);
      // Who keeps another note has done nothing more.
      else if (standing !== 'done') offer(step.id, step.id);
    });
  };
  if (crewPage) {
    return (
      <CrewPage
        data={crewPageData(zone, job, ofZone, steps, today)}
        factors={job.factors}
        port={port}
        chosen={today}
        choose={setToday}
        back={() => {
          showCrewPage(false);
        }}
        say={say}
      />
    );
  }
  return (
    <>
      <ZoneChoice zones={zones} standings={standings} zone={list.zone} choose={choose} />
      <p class="actions">
        <button
          type="button"
          onClick={() => {
            showCrewPage(true);
          }}
        >
          Crew's page to print
        </button>
      </p>
      <OtherClocks all={all} here={list.zone} />
      <CrewProgress
        recorded={recorded}
        zone={list.zone}
        standings={standings}
        open={progressShown}
        toggle={() => {
          show({ ...shown, progress: !progressShown });
        }}
        go={(name) => {
          choose(zones.find((candidate) => candidate.zone === name));
        }}
        recordOther={() => {
          offer('other', 'other');
        }}
      >
        {form('other')}
      </CrewProgress>
      <ZoneHead zone={zone} notice={list.notice} factors={job.factors} />
      {takesCleaner(zone) && (
        <DwellClock
          progress={ofZone}
          limits={dwellLimits(zone, job.factors)}
          patches={patches}
          held={clockHeld(steps)}
          start={() => {
            change(startClock(new Date().toISOString()), 'The dwell clock is running.');
          }}
          stop={() => {
            const patch = { start: ofZone.clock, stop: new Date().toISOString(), patches };
            change(stopClock(patch.stop), 'The dwell clock is stopped.', () => {
              offer(patchKey(patch.start), patch);
            });
          }}
          strike={(start) => {
            change(strikeDwell(start), `The patch of ${timeText(start)} is deleted.`, () => {
              drop(patchKey(start));
            });
          }}
          say={say}
        />
      )}
      {ofZone.dwells.map(({ start }) => form(patchKey(start)))}
      <p class="field">
        <label for={`${id}-who`}>Your name, for each tick</label>
        <input
          id={`${id}-who`}
          ref={whoField}
          autocomplete="name"
          value={who}
          onInput={(event) => {
            setWho(event.currentTarget.value);
          }}
        />
      </p>
      <ol class="step-list">
        {steps.map((standing, index) => {
          const key = `${list.zone}\n${standing.step.id}`;
          const open = shown[key] ?? standing === next;
          return (
            <StepItem
              key={key}
              standing={standing}
              number={index + 1}
              open={open}
              toggle={() => {
                show({ ...shown, [key]: !open });
              }}
              takeDown={(done, note) => {
                tick(standing, done, note);
              }}
              refuse={say}
              overrule={(by, why) => {
                const overruled = { hold: standing.condition, who: by, when: new Date().toISOString(), why };
                change(overrule(standing.step.id, overruled), `${standing.step.title}: overruled by ${by}.`);
              }}
              withdraw={() => {
                change(withdrawOverruled(standing.step.id), `${standing.step.title}: no longer overruled.`);
              }}
              inspection={
                <InspectionOfStep
                  step={standing.step.id}
                  progress={ofZone}
                  system={job.factors.system}
                  recorded={recorded}
                  offer={offer}
                  form={form}
                  sign={sign}
                  change={change}
                  say={say}
                />
              }
            >
              {form(standing.step.id)}
            </StepItem>
          );
        })}
      </ol>
      <PrintActions
        what="The steps are"
        copy={() => putOnNewSheet(port, SHEET, stepRows(ofZone, steps, timeText), WIDTHS)}
        say={say}
      />
      <LeftOver left={progressLeftOver(progress, zones)} />
    </>
  );
}

function stepsOf(
  zone: Job['zones'][number],
  job: Job,
  all: ReadonlyMap<string, ZoneProgress>,
  present: Present,
): readonly StandingStep[] {
  const progress = all.get(zone.zone.name);
  return progress ? standingSteps(stepChecklist(zone, job.zones, job.factors), progress, present) : [];
}

/** The chosen zone by its present name: it may have been renamed since. */
function nameOf(chosen: NamedWalls | undefined, zones: readonly NamedWalls[]): string | undefined {
  if (chosen === undefined) return undefined;
  return [...knownZones([chosen], zones).keys()][0];
}

/** The sample is timed too, so the clock waits for the age of the wall alone, and for the weather. */
function clockHeld(steps: readonly StandingStep[]): string {
  const age = steps.find(({ step }) => step.id === 'age');
  const apply =
    steps.find(({ step }) => step.id === 'apply') ?? steps.find(({ step }) => step.id.startsWith('later-'));
  if (age && age.standing !== 'done') return `Waits for "${age.step.title}".`;
  return apply?.overruled === undefined ? (apply?.step.hold ?? '') : '';
}

function OtherClocks({ all, here }: { all: ReadonlyMap<string, ZoneProgress>; here: string }) {
  const running = [...all.values()].filter(({ zone, clock }) => clock !== '' && zone !== here);
  return running.length === 0 ? null : (
    <p class="notice">
      The dwell clock is running in{' '}
      {running.map(({ zone, clock }) => `${zone}, since ${timeText(clock)}`).join('; ')}.
    </p>
  );
}

function RunningClocks({ progress }: { progress: Progress }) {
  return <OtherClocks all={new Map(progress.zones.map((zone) => [zone.zone, zone]))} here="" />;
}

function LeftOver({ left }: { left: readonly ZoneProgress[] }) {
  return left.length === 0 ? null : (
    <p class="notice">
      Progress of zones that are no longer in the workbook:{' '}
      {left
        .map(
          ({ zone, records: { length } }) => `${zone} (${String(length)} ${length === 1 ? 'step' : 'steps'})`,
        )
        .join('; ')}
      .
    </p>
  );
}
