import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import { siteSources } from '../../src/rules/site-sources';
import type { StepFact } from '../../src/site/step';
import type { StandingStep } from '../../src/site/step-gates';
import { timeText } from '../shared/time-text';
import { overruledText } from './condition-text';
import { Disclosure } from '../shared/disclosure';
import { OverruleForm } from './overrule-form';

/** What a step shows and does. */
export interface StepItemProps {
  readonly standing: StandingStep;
  /** Its number in the list, from 1. */
  readonly number: number;
  readonly open: boolean;
  readonly toggle: () => void;
  /** Takes down that the step is done or not, with a note. */
  readonly takeDown: (done: boolean, note: string) => void;
  /** Called where the step is held back. */
  readonly refuse: (reason: string) => void;
  /** Lets it go on against its condition, in the name of somebody and with a reason. */
  readonly overrule: (who: string, why: string) => void;
  /** Takes that back. */
  readonly withdraw: () => void;
  /** What it records beside its tick, shown where it is open. */
  readonly inspection: ComponentChildren;
  /** What belongs to it for the time being, such as an entry that is offered. */
  readonly children?: ComponentChildren;
}

/**
 * One step: its tick, who ticked it, what to do, its numbers and where they come from.
 * @param props what it shows and does
 * @returns the list item
 */
export function StepItem(props: StepItemProps) {
  const {
    standing: of,
    number,
    open,
    toggle,
    takeDown,
    refuse,
    overrule,
    withdraw,
    inspection,
    children,
  } = props;
  const { step, standing, reason, record } = of;
  const id = useId();
  const [note, setNote] = useState<string>();
  const kept = record?.note ?? '';
  const written = note ?? kept;
  return (
    <li class={`step ${standing}`}>
      <div class="step-head">
        <input
          type="checkbox"
          checked={standing === 'done'}
          aria-label={`Done: ${step.title}`}
          aria-disabled={standing === 'held'}
          aria-describedby={`${id}-standing`}
          onChange={(event) => {
            // The tick follows what the workbook keeps, not the click.
            event.currentTarget.checked = standing === 'done';
            if (standing === 'held') refuse(`${step.title}: ${reason}`);
            else takeDown(standing !== 'done', written);
          }}
        />
        <div class="step-name">
          <Disclosure
            title={
              <>
                {number}. {step.title}
                {step.decidedOn && <span class="gate"> gate</span>}
              </>
            }
            open={open}
            toggle={toggle}
          >
            <ul class="todo">
              {step.todo.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
            {step.facts.length > 0 && <Facts facts={step.facts} />}
            <p class="source">{sourcesOf(of)}</p>
            {inspection}
            <p class="note-field">
              <label for={`${id}-note`}>Note</label>
              <textarea
                id={`${id}-note`}
                rows={2}
                value={written}
                onInput={(event) => {
                  setNote(event.currentTarget.value);
                }}
              />
              {record && written !== kept && (
                <button
                  type="button"
                  onClick={() => {
                    takeDown(record.done, written);
                  }}
                >
                  Save the note
                </button>
              )}
            </p>
          </Disclosure>
          <p class="standing" id={`${id}-standing`}>
            {standingText(of)}
          </p>
          {record?.overruled && (
            <p class="overruled">
              {overruledText(record.overruled)}{' '}
              <button
                type="button"
                class="not-printed"
                aria-label={`Withdraw: ${step.title}`}
                onClick={withdraw}
              >
                Withdraw
              </button>
            </p>
          )}
          {of.condition !== '' && <OverruleForm title={step.title} refuse={refuse} overrule={overrule} />}
          {children}
        </div>
      </div>
    </li>
  );
}

function Facts({ facts }: { facts: readonly StepFact[] }) {
  return (
    <dl class="facts">
      {facts.map(({ label, value, kind }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>
            {value}
            {kind !== 'computed' && kind !== 'input' && <small> {kind}</small>}
          </dd>
        </div>
      ))}
    </dl>
  );
}

function standingText({ standing, reason, record }: StandingStep): string {
  const signed = record ? `${record.who}, ${timeText(record.when)}` : '';
  const note = record?.note ? `: ${record.note}` : '';
  switch (standing) {
    case 'done':
      return `✓ Done. ${signed}${note}${reason === '' ? '' : `. ${reason}`}`;
    case 'again':
      return `${reason} Last done by ${signed}${note}`;
    case 'held':
      return reason;
    case 'open':
      // A condition may be overruled before the step is ever ticked.
      return record && record.when !== record.overruled?.when ? `Undone by ${signed}${note}` : 'To do';
  }
}

function sourcesOf({ step }: StandingStep): string {
  const ids = new Set([step.source, ...step.facts.map(({ source }) => source)]);
  return `Sources: ${[...ids].map((source) => siteSources[source].document).join('; ')}.`;
}
