import type { ComponentChildren } from 'preact';
import { standingWords, type ZoneStanding } from '../../src/site/zone-standing';
import type { Recorded } from '../actuals/recorded';
import type { ProgressSectionProps } from '../progress/progress-section';
import type { Reading } from '../shared/use-reading';
import { whenShown } from '../shared/when-shown';
import { Disclosure } from '../shared/disclosure';

const ProgressSection = whenShown<ProgressSectionProps>(() =>
  import(/* webpackChunkName: "progress" */ '../progress/progress-section').then(
    (module) => module.ProgressSection,
  ),
);

/** What the crew's progress shows and does. */
export interface CrewProgressProps {
  readonly recorded: Reading<Recorded>;
  readonly zone: string;
  readonly standings: ReadonlyMap<string, ZoneStanding>;
  readonly open: boolean;
  readonly toggle: () => void;
  /** Shows another zone. */
  readonly go: (zone: string) => void;
  /** Offers an entry for what no step and no patch is. */
  readonly recordOther: () => void;
  /** The form of that entry, where it is offered. */
  readonly children: ComponentChildren;
}

/**
 * How the recorded work stands against the estimate, under a heading that opens it; loaded when it is first opened.
 * @param props what it shows and does
 * @returns the heading, and the progress where it is open
 */
export function CrewProgress(props: CrewProgressProps) {
  const { recorded, zone, standings, open, toggle, go, recordOther, children } = props;
  const nexts = [...standings].map(([name, standing]) => ({
    zone: name,
    standing: standingWords(standing),
    step: standing.next?.step.title ?? '',
  }));
  return (
    <>
      {recorded.is === 'failed' && (
        <p class="notice">The recorded work cannot be read, so no entry is offered. {recorded.message}</p>
      )}
      <Disclosure title="Progress against the estimate" open={open} toggle={toggle}>
        {open && recorded.is === 'ready' && (
          <>
            <ProgressSection recorded={recorded.value} zone={zone} nexts={nexts} go={go} />
            {children ?? (
              <p class="actions not-printed">
                <button type="button" onClick={recordOther}>
                  Record other work
                </button>
              </p>
            )}
          </>
        )}
      </Disclosure>
    </>
  );
}
