import { useMemo } from 'preact/hooks';
import { standingByWall, type WallStanding } from '../../src/actuals/by-wall';
import { findingInWords } from '../../src/actuals/finding-words';
import { progressOf } from '../../src/actuals/progress';
import type { System } from '../../src/quantity/systems';
import { amount } from '../../src/site/amount';
import { paceInWords } from '../../src/site/pace-words';
import type { Recorded } from '../actuals/recorded';
import { percentText, ShareBar } from './share-bar';
import { StandingTable } from './standing-table';
import { TaskList } from './task-list';

/** What is next in a zone. */
export interface NextInZone {
  readonly zone: string;
  /** How far its steps are, in words. */
  readonly standing: string;
  /** Title of the next step; empty where none can be done now. */
  readonly step: string;
}

/** What the section shows. */
export interface ProgressSectionProps {
  readonly recorded: Recorded;
  /** The zone to show in full. */
  readonly zone: string;
  readonly nexts: readonly NextInZone[];
  readonly go: (zone: string) => void;
}

/**
 * How the recorded work stands against the estimate, for the crew: what is next, the job, and one zone by task and by
 * wall. It shows no price.
 * @param props what it shows
 * @returns the section
 */
export function ProgressSection({ recorded, zone, nexts, go }: ProgressSectionProps) {
  const { job, entries, budgets } = recorded;
  const { system } = job.factors;
  const lines = useMemo(() => progressOf(entries, job.walls, job.factors), [entries, job]);
  const ofZone = lines.filter((line) => line.zone?.name === zone);
  const whole = ofZone.find(({ task }) => task === undefined);
  const ofJob = lines.find((line) => line.zone === undefined);
  const allowed = budgets.find((each) => each.zone.name === zone);
  const walls = allowed ? standingByWall(entries, allowed) : [];
  const elsewhere = lines.filter(
    (line) => line.task !== undefined && line.zone?.name !== zone && line.findings.length > 0,
  );
  return (
    <div class="progress">
      <h4>What is next</h4>
      <ul class="nexts">
        {nexts.map((next) => (
          <li key={next.zone}>
            {next.zone === zone ? (
              <strong>{next.zone}</strong>
            ) : (
              <button
                type="button"
                class="go"
                onClick={() => {
                  go(next.zone);
                }}
              >
                {next.zone}
              </button>
            )}
            : {next.standing}
            {next.step !== '' && `. Next: ${next.step}`}
          </li>
        ))}
      </ul>
      {entries.length === 0 && (
        <p>Nothing is recorded yet. Tick a step or stop the dwell clock: each offers an entry.</p>
      )}
      {ofJob && (
        <>
          <h4>The whole job</h4>
          <StandingTable line={ofJob} system={system} />
          {ofJob.why !== undefined && <p class="finding">{ofJob.why}</p>}
          {elsewhere.map((line) =>
            line.findings.map((finding) => (
              <p
                key={`${String(line.zone?.name)} ${String(line.task?.name)} ${finding.type}`}
                class="finding"
              >
                {finding.type === 'beyond' ? '' : `${String(line.zone?.name)}, `}
                {line.task?.name}: {findingInWords(finding, system)}
              </p>
            )),
          )}
        </>
      )}
      {whole && (
        <>
          {job.walls.length > 1 && (
            <>
              <h4>Zone {zone}</h4>
              <StandingTable line={whole} system={system} />
              {whole.why !== undefined && <p class="finding">{whole.why}</p>}
            </>
          )}
          <h4>By task</h4>
          <TaskList lines={ofZone.filter(({ task }) => task !== undefined)} system={system} />
          {walls.length > 0 && <ByWall walls={walls} system={system} />}
        </>
      )}
    </div>
  );
}

/** What is booked for the zone as a whole belongs to no wall. */
function ByWall({ walls, system }: { walls: readonly WallStanding[]; system: System }) {
  return (
    <>
      <h4>By wall</h4>
      <ul class="task-list">
        {walls.map(({ wall, hours }) => {
          const share = hours.budget > 0 ? hours.earned / hours.budget : 0;
          return (
            <li key={wall.row}>
              <p>
                <strong>{wall.wall}</strong> {percentText(share)} of{' '}
                {amount(hours.budget, 'laborHours', system)}
              </p>
              <ShareBar share={share} />
              <p>{paceInWords(hours)}.</p>
            </li>
          );
        })}
      </ul>
    </>
  );
}
