import { useState } from 'preact/hooks';
import type { PanelProps } from '../shared/panel-props';
import { Disclosure } from '../shared/disclosure';
import { useJob } from '../shared/use-job';
import { RatesList } from './rates-list';

/**
 * For whoever runs the job: the rates that its recorded work shows, to be used in the estimate of what remains.
 * @param props what it works on
 * @returns a heading that opens it
 */
export function RatesSection(props: PanelProps) {
  const [open, setOpen] = useState(false);
  return (
    <section class="rates" aria-label="Rates">
      <Disclosure
        title="Rates from recorded work"
        open={open}
        toggle={() => {
          setOpen(!open);
        }}
      >
        {open && <Rates {...props} />}
      </Disclosure>
    </section>
  );
}

function Rates(props: PanelProps) {
  const state = useJob(props.port, props.source);
  switch (state.is) {
    case 'reading':
      return <p>Reading the walls…</p>;
    case 'failed':
      return <p class="notice">The walls cannot be read. {state.message}</p>;
    case 'ready':
      return <RatesList {...props} job={state.job} />;
  }
}
