import { useId, useState } from 'preact/hooks';
import { agreedWords, type AgreedSample } from '../../src/site/inspection';

/** What was agreed, before it is signed. */
export type Agreement = Omit<AgreedSample, 'who' | 'when'>;

const BLANK: Agreement = { approvedBy: '', on: '', distance: '', light: '', dry: true };

const fields = [
  { name: 'approvedBy', label: 'Accepted by' },
  { name: 'on', label: 'Date accepted' },
  { name: 'distance', label: 'Viewed from (distance with its unit)' },
  { name: 'light', label: 'Light' },
] as const;

/**
 * What was agreed on the sample panel, and the fields to record it.
 * @param props what it shows and does
 * @param props.agreed what the workbook keeps; undefined where nothing was recorded
 * @param props.record records what was agreed; false where it was not signed
 * @param props.say speaks a sentence
 * @returns the agreement and its fields
 */
export function AgreedSampleForm({
  agreed,
  record,
  say,
}: {
  agreed: AgreedSample | undefined;
  record: (agreement: Agreement) => boolean;
  say: (sentence: string) => void;
}) {
  const id = useId();
  const [typed, setTyped] = useState<Partial<Agreement>>({});
  const shown: Agreement = { ...BLANK, ...agreed, ...typed };
  const missing = fields.find(({ name }) => shown[name].trim() === '');
  return (
    <section class="inspection" aria-labelledby={`${id}-title`}>
      <h4 id={`${id}-title`}>Agreed on the sample panel</h4>
      <p>{agreed ? agreedWords(agreed) : 'Nothing is recorded yet.'}</p>
      <div class="not-printed">
        {fields.map(({ name, label }) => (
          <p class="field" key={name}>
            <label for={`${id}-${name}`}>{label}</label>
            <input
              id={`${id}-${name}`}
              {...(name === 'on' ? { type: 'date' } : { type: 'text' })}
              value={shown[name]}
              onInput={(event) => {
                setTyped({ ...typed, [name]: event.currentTarget.value });
              }}
            />
          </p>
        ))}
        <label class="choice">
          <input
            type="checkbox"
            checked={shown.dry}
            onChange={(event) => {
              setTyped({ ...typed, dry: event.currentTarget.checked });
            }}
          />{' '}
          The panel was dry
        </label>
        <button
          type="button"
          onClick={() => {
            if (missing) {
              say(`Fill in “${missing.label}” first.`);
              return;
            }
            const { approvedBy, on, distance, light, dry } = shown;
            const agreement = {
              approvedBy: approvedBy.trim(),
              on,
              distance: distance.trim(),
              light: light.trim(),
              dry,
            };
            if (record(agreement)) setTyped({});
          }}
        >
          Record the acceptance
        </button>
      </div>
    </section>
  );
}
