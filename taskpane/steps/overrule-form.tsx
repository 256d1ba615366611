import { useId, useState } from 'preact/hooks';
import { Disclosure } from '../shared/disclosure';

/**
 * Lets somebody overrule the condition that holds a step: whoever does signs for it and says why.
 * @param props the step
 * @param props.title title of the step
 * @param props.refuse says what is missing
 * @param props.overrule takes down who overrules, and why
 * @returns a button that opens the form
 */
export function OverruleForm({
  title,
  refuse,
  overrule,
}: {
  title: string;
  refuse: (reason: string) => void;
  overrule: (who: string, why: string) => void;
}) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const [who, setWho] = useState('');
  const [why, setWhy] = useState('');
  return (
    <div class="overrule not-printed">
      <Disclosure
        title="Overrule this condition"
        open={open}
        toggle={() => {
          setOpen(!open);
        }}
      >
        <form
          aria-label={`Overrule: ${title}`}
          onSubmit={(event) => {
            event.preventDefault();
            if (who.trim() === '' || why.trim() === '')
              refuse('Nothing is overruled without the name of the person who signs, and a reason.');
            else overrule(who.trim(), why.trim());
          }}
        >
          <p>Whoever overrules it is responsible for the result. Name and reason are saved and printed.</p>
          <p class="field">
            <label for={`${id}-who`}>Name of the person who signs</label>
            <input
              id={`${id}-who`}
              autocomplete="name"
              value={who}
              onInput={(event) => {
                setWho(event.currentTarget.value);
              }}
            />
          </p>
          <p class="field">
            <label for={`${id}-why`}>Reason</label>
            <textarea
              id={`${id}-why`}
              rows={2}
              value={why}
              onInput={(event) => {
                setWhy(event.currentTarget.value);
              }}
            />
          </p>
          <button type="submit">Overrule it</button>
        </form>
      </Disclosure>
    </div>
  );
}
