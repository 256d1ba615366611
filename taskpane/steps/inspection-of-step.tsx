import type { JSX } from 'preact';
import { RECLEAN } from '../../src/actuals/task';
import type { System } from '../../src/quantity/systems';
import {
  addPunchItem,
  agreedWords,
  agreeOnSample,
  closePunchItem,
  dropSecondClean,
  punchList,
  secondCleansOf,
  type Signed,
} from '../../src/site/inspection';
import type { StepId } from '../../src/site/step';
import type { ZoneProgress } from '../../src/site/step-progress';
import type { Recorded } from '../actuals/recorded';
import type { Reading } from '../shared/use-reading';
import { AgreedSampleForm } from './agreed-sample';
import { cleanKeyOf, keptCleanDraft, secondCleanNote, type Offered, type OfferKey } from './offers';
import { PunchList } from './punch-list';
import { SecondCleans } from './second-cleans';

/** What the inspection of a zone works on. */
export interface InspectionProps {
  readonly step: StepId;
  readonly progress: ZoneProgress;
  readonly system: System;
  readonly recorded: Reading<Recorded>;
  readonly offer: (key: OfferKey, of: Offered) => void;
  /** The form of an entry that is offered, with what is to be done once it is written. */
  readonly form: (key: OfferKey, written?: () => void) => JSX.Element | undefined;
  /** Who does it, and now; undefined where no name was given, which is said. */
  readonly sign: () => Signed | undefined;
  readonly change: (to: (zone: ZoneProgress) => ZoneProgress, done: string) => void;
  readonly say: (sentence: string) => void;
}

/**
 * What a step records beside its tick: the sample what was agreed on its panel, the inspection the punch list and
 * second cleans.
 * @param props what it works on
 * @returns the fields; nothing for other steps
 */
export function InspectionOfStep(props: InspectionProps) {
  const { step, progress, system, recorded, offer, form, sign, change, say } = props;
  const { zone, walls, agreed } = progress;
  const signed = (to: (by: Signed) => (of: ZoneProgress) => ZoneProgress, done: string): boolean => {
    const by = sign();
    if (by) change(to(by), done);
    return by !== undefined;
  };
  if (step === 'sample') {
    return (
      <AgreedSampleForm
        agreed={agreed}
        record={(agreement) =>
          signed((by) => agreeOnSample({ ...agreement, ...by }), 'The acceptance of the sample is recorded.')
        }
        say={say}
      />
    );
  }
  if (step !== 'look') return null;
  return (
    <>
      <section class="inspection">
        <h4>Agreed on the sample panel</h4>
        <p>{agreed ? agreedWords(agreed) : 'Nothing is recorded. Record it under Sample area.'}</p>
      </section>
      <PunchList
        items={punchList(progress)}
        walls={walls}
        add={(found) => signed((by) => addPunchItem({ ...found, ...by }), 'The item is on the punch list.')}
        close={(item, done) => {
          signed(
            (by) => closePunchItem(item, done ? by : undefined),
            done ? 'The item is done.' : 'The item is open again.',
          );
        }}
        clean={
          recorded.is === 'ready'
            ? (item) => {
                const by = sign();
                const note = by && secondCleanNote(by.who, item.what);
                if (note !== undefined) offer(cleanKeyOf(item), { secondClean: { wall: item.wall, note } });
              }
            : undefined
        }
        formOf={(item) => form(cleanKeyOf(item))}
        say={say}
      />
      {recorded.is === 'ready' && (
        <SecondCleans
          entries={recorded.value.entries.filter(
            (entry) => entry.task === RECLEAN && entry.zone?.name === zone,
          )}
          kept={secondCleansOf(progress)}
          system={system}
          add={() => {
            const by = sign();
            if (by) offer('second clean', { secondClean: { note: secondCleanNote(by.who, '') } });
          }}
          record={(clean) => {
            offer(cleanKeyOf(clean), { secondClean: keptCleanDraft(clean) });
          }}
          formOf={(clean) =>
            form(cleanKeyOf(clean), () => {
              change(dropSecondClean(clean), 'The second clean stands in the recorded work.');
            })
          }
        >
          {form('second clean')}
        </SecondCleans>
      )}
    </>
  );
}
