import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import type { Entry } from '../../src/actuals/entry';
import { dayWords } from '../../src/quantity/day-words';
import type { System } from '../../src/quantity/systems';
import { amount } from '../../src/site/amount';
import type { SecondClean } from '../../src/site/inspection';
import { timeText } from '../shared/time-text';

const ZONE = 'The whole zone';

/** What the second cleans of a zone show and do. */
export interface SecondCleansProps {
  /** Those of the zone in the recorded work. */
  readonly entries: readonly Entry[];
  /** Those that were kept in Steps and do not stand in the recorded work yet. */
  readonly kept: readonly SecondClean[];
  readonly system: System;
  /** Offers an entry for a new one. */
  readonly add: () => void;
  /** Offers the entry of one that was kept. */
  readonly record: (clean: SecondClean) => void;
  /** The form of a kept one, where its entry is offered. */
  readonly formOf: (clean: SecondClean) => ComponentChildren;
  /** The form of a new one, where its entry is offered. */
  readonly children: ComponentChildren;
}

/**
 * The second cleans of a zone as the recorded work has them, and what records another one there.
 * @param props what it shows and does
 * @returns the list, and the forms that are open
 */
export function SecondCleans(props: SecondCleansProps) {
  const { entries, kept, system, add, record, formOf, children } = props;
  const id = useId();
  return (
    <section class="inspection" aria-labelledby={`${id}-title`}>
      <h4 id={`${id}-title`}>Second clean</h4>
      {entries.length === 0 && <p>None is in the recorded work.</p>}
      <ul>
        {entries.map(({ row, wall, hours, date }) => (
          <li key={row}>
            {wall?.wall ?? ZONE}: {amount(hours, 'laborHours', system)}
            {date !== undefined && `, ${dayWords(date)}`}
          </li>
        ))}
      </ul>
      {kept.length > 0 && (
        <>
          <p>Kept here, and not in the recorded work yet:</p>
          <ul>
            {kept.map((clean) => (
              <li key={`${clean.when}${clean.wall}`}>
                {clean.wall === '' ? ZONE : clean.wall}: {amount(clean.hours, 'laborHours', system)}.{' '}
                {clean.why}. {clean.who}, {timeText(clean.when)}{' '}
                {formOf(clean) ?? (
                  <button
                    type="button"
                    class="not-printed"
                    onClick={() => {
                      record(clean);
                    }}
                  >
                    Record this one
                  </button>
                )}
              </li>
            ))}
          </ul>
        </>
      )}
      {children ?? (
        <button type="button" class="not-printed" onClick={add}>
          Record a second clean
        </button>
      )}
    </section>
  );
}
