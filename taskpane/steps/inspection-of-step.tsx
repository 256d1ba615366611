import {
  addPunchItem,
  agreedWords,
  agreeOnSample,
  closePunchItem,
  punchList,
  recordSecondClean,
  secondCleansOf,
  type Signed,
} from '../../src/site/inspection';
import { secondCleanEntries } from '../../src/site/second-clean-entries';
import type { StepId } from '../../src/site/step';
import type { ZoneProgress } from '../../src/site/step-progress';
import { failureText } from '../shared/failure-text';
import { putOnNewSheet } from '../shared/sheet-out';
import { dayText } from '../shared/time-text';
import type { WorkbookPort } from '../workbook/port';
import { AgreedSampleForm } from './agreed-sample';
import { PunchList } from './punch-list';
import { SecondCleans } from './second-cleans';

const SHEET = 'Washdown second cleans';
// Date, zone, wall, task, area, hours, water, cleaner, note.
const WIDTHS = [12, 18, 24, 10, 8, 8, 8, 8, 50];

/** What the inspection of a zone works on. */
export interface InspectionProps {
  readonly step: StepId;
  readonly progress: ZoneProgress;
  readonly port: WorkbookPort;
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
export function InspectionOfStep({ step, progress, port, sign, change, say }: InspectionProps) {
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
  const cleans = secondCleansOf(progress);
  return (
    <>
      <section class="inspection">
        <h4>Agreed on the sample panel</h4>
        <p>{agreed ? agreedWords(agreed) : 'Nothing is recorded. Record it under Sample area.'}</p>
      </section>
      <PunchList
        items={punchList(progress)}
        walls={walls}
        add={(wall, what) =>
          signed((by) => addPunchItem({ wall, what, ...by }), 'The item is on the punch list.')
        }
        close={(item, done) => {
          signed(
            (by) => closePunchItem(item, done ? by : undefined),
            done ? 'The item is done.' : 'The item is open again.',
          );
        }}
        say={say}
      />
      <SecondCleans
        cleans={cleans}
        walls={walls}
        record={(wall, hours, why) =>
          signed((by) => recordSecondClean({ wall, hours, why, ...by }), 'The second clean is recorded.')
        }
        putOnSheet={() => {
          putOnNewSheet(port, SHEET, secondCleanEntries(zone, cleans, dayText), WIDTHS).then(
            (sheet) => {
              say(`The rows are on the sheet ${sheet}. Copy them into the table of recorded work.`);
            },
            (error: unknown) => {
              say(failureText(error));
            },
          );
        }}
        say={say}
      />
    </>
  );
}
