import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { cautionTopics, LABEL_FIRST, type CautionTopic } from '../../src/rules/cautions';
import { classInWords } from '../../src/rules/cleaner-classes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { siteSources } from '../../src/rules/site-sources';
import type { AppliedCaution } from '../../src/site/caution-sheet';
import { agreedWords, punchList } from '../../src/site/inspection';
import type { StandingStep } from '../../src/site/step-gates';
import { Elevation } from '../pictures/elevation';
import { PrintActions } from '../shared/print-actions';
import { putOnNewSheet } from '../shared/sheet-out';
import { dateText } from '../shared/time-text';
import type { WorkbookPort } from '../workbook/port';
import type { CrewPageData } from './crew-page-data';
import { overruledText } from './condition-text';
import { crewRows } from './crew-rows';
import { punchWords } from './punch-words';
import { tickWords } from './tick-words';

const SHEET = 'Washdown crew page';
// Part, number, done, what, value, source.
const WIDTHS = [13, 5, 6, 44, 24, 20];

/** What the crew's page shows and does. */
export interface CrewPageProps {
  readonly data: CrewPageData;
  readonly factors: FactorsInForce;
  readonly port: WorkbookPort;
  /** Labels of the walls chosen for today; none, where all are meant. */
  readonly chosen: readonly string[];
  readonly choose: (walls: readonly string[]) => void;
  readonly back: () => void;
  readonly say: (sentence: string) => void;
}

/**
 * The page that goes to the wall with the crew of a zone: picture, walls of today, what to bring, steps to tick,
 * cautions, no price.
 * @param props what it shows and does
 * @returns the page
 */
export function CrewPage({ data, factors, port, chosen, choose, back, say }: CrewPageProps) {
  const { zone, today, bring, progress, steps, cautions } = data;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { system } = factors;
  const items = punchList(progress);
  const copy = () => {
    const print = {
      held: 'upright',
      paper: system === 'US' ? 'letter' : 'a4',
      repeatsFirstRow: true,
    } as const;
    return putOnNewSheet(port, SHEET, crewRows(data), WIDTHS, print);
  };
  return (
    <section class="crew-page" aria-label="Crew's page">
      <Sheets head={`Crew's page: ${zone.zone.name}`}>
        <h3 tabIndex={-1} ref={heading}>
          Crew's page: {zone.zone.name}
        </h3>
        <PrintActions what="The crew's page is" copy={copy} say={say} main>
          <button type="button" onClick={back}>
            Back to the steps
          </button>
        </PrintActions>
        <fieldset class="not-printed">
          <legend>Today's walls (all, unless you choose)</legend>
          {zone.zone.rows.map(({ wall }) => (
            <label class="choice" key={wall}>
              <input
                type="checkbox"
                checked={chosen.includes(wall)}
                onChange={(event) => {
                  choose(
                    event.currentTarget.checked
                      ? [...chosen, wall]
                      : chosen.filter((label) => label !== wall),
                  );
                }}
              />{' '}
              {wall}
            </label>
          ))}
        </fieldset>
        <p class="to-fill print-only">Date: ______________ Foreman: ______________________________</p>
        <p class="first-line">{LABEL_FIRST}</p>
        <p>
          {zone.classToUse === undefined
            ? 'No first wash: every wall is masked.'
            : `Washed with ${classInWords(zone.classToUse)}.`}{' '}
          {zone.laterClasses.length > 0 &&
            `Masked masonry afterwards, with ${[...new Set(zone.laterClasses)].map((of) => classInWords(of)).join(', ')}.`}
        </p>
        <h4>Today's walls</h4>
        <ul class="today">
          {today.map(({ wall, row }) => (
            <li key={row}>{wall}</li>
          ))}
        </ul>
        <Elevation zone={zone} system={system} onPaper={new Set(today)} />
        <h4>Bring for these walls, rounded up</h4>
        {bring.length === 0 && <p>{zone.finding ?? 'Nothing.'}</p>}
        <ul class="bring">
          {bring.map(({ label, value }) => (
            <li key={label}>
              <Box /> {label}: <strong>{value}</strong>
            </li>
          ))}
        </ul>
        <h4>Agreed on the sample panel</h4>
        <p>
          {progress.agreed
            ? agreedWords(progress.agreed)
            : 'No acceptance is recorded. Accepted by: ______________ Date: __________ Distance: ________ Light: ________ Dry: ____'}
        </p>
        <h4>Steps</h4>
        <p>Numbers are those of the whole zone. Tick a step when it is done.</p>
        <ol class="crew-steps">
          {steps.map((standing, index) => (
            <CrewStep key={standing.step.id} standing={standing} number={index + 1} />
          ))}
        </ol>
        <h4>Punch list</h4>
        <ul class="bring">
          {items.map((item) => (
            <li key={`${item.when}${item.wall}${item.what}`}>
              <Box done={item.closed !== undefined} /> {punchWords(item)}
            </li>
          ))}
          {BLANKS.map((blank) => (
            <li key={blank} class="print-only">
              <Box /> Wall: ________________ What: ______________________________________________ Photo:
              ________
            </li>
          ))}
        </ul>
        <h4>Cautions</h4>
        {(Object.keys(cautionTopics) as CautionTopic[]).map((topic) => (
          <CrewCautions
            key={topic}
            topic={topic}
            zone={zone.zone.name}
            cautions={cautions.filter((caution) => caution.topic === topic)}
          />
        ))}
      </Sheets>
    </section>
  );
}

/** A head that each printed sheet repeats: only that of a table does so in every engine that prints the pane. */
function Sheets({ head, children }: { head: string; children: ComponentChildren }) {
  return (
    <table class="sheets" role="presentation">
      <thead>
        <tr>
          <td>
            <p class="sheet-head">
              <strong>{head}</strong> <span>For the crew at the wall. Printed {dateText(new Date())}</span>
            </p>
          </td>
        </tr>
      </thead>
      <tbody>
        <tr>
          <td>{children}</td>
        </tr>
      </tbody>
    </table>
  );
}

// Room to write on paper.
const BLANKS = [1, 2, 3, 4, 5, 6];

function CrewStep({ standing: of, number }: { standing: StandingStep; number: number }) {
  const { step, standing, reason, record } = of;
  const done = standing === 'done';
  return (
    <li class="crew-step">
      <p class="crew-step-name">
        <Box done={done} />{' '}
        <strong>
          {number}. {step.title}
        </strong>{' '}
        {done && `Done: ${tickWords(record)}`}
        {reason !== '' && !reason.startsWith('Waits for') && <em>{reason}</em>}
      </p>
      {record?.overruled && <p>{overruledText(record.overruled)}</p>}
      <ul class="todo">
        {step.todo.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {step.facts.length > 0 && (
        <dl class="crew-facts">
          {step.facts.map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </li>
  );
}

function CrewCautions({
  topic,
  zone,
  cautions,
}: {
  topic: CautionTopic;
  zone: string;
  cautions: readonly AppliedCaution[];
}) {
  if (cautions.length === 0) return null;
  // A reason is given once under a heading: the page is read on a scaffold.
  const given = new Set<string>();
  const reasonOf = ({ places }: AppliedCaution): string =>
    places
      .map(({ where, why }) => {
        const walls = where === zone ? '' : where.replace(`${zone}: `, '');
        const reason = walls === '' ? why : `${walls}: ${why}`;
        if (reason === '' || given.has(reason)) return '';
        given.add(reason);
        return `${reason}. `;
      })
      .join('');
  return (
    <section>
      <h5>{cautionTopics[topic]}</h5>
      <ul class="caution-lines">
        {cautions.map((caution) => (
          <li key={caution.id} class={caution.stop ? 'stop' : undefined}>
            {caution.stop && <strong>Stop: </strong>}
            {caution.text}{' '}
            <small>
              {reasonOf(caution)}({siteSources[caution.source].document})
            </small>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** A box to tick on paper. */
function Box({ done = false }: { done?: boolean }) {
  return (
    <span class="box" role="img" aria-label={done ? 'done' : 'to do'}>
      {done ? '✓' : ''}
    </span>
  );
}
