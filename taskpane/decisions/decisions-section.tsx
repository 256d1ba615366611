import { useState } from 'preact/hooks';
import type { PanelProps } from '../shared/panel-props';
import { Disclosure } from '../shared/disclosure';
import { useJob } from '../shared/use-job';
import { Alternates } from './alternates';
import { Baseline } from './baseline';
import { Ladder } from './ladder';
import { Ranges } from './ranges';

/**
 * What the estimator decides on: what to mask, which alternates to offer, what changed since a baseline, how sure the price is.
 * @param props what it works on
 * @returns four parts, each under a heading that opens it
 */
export function DecisionsSection(props: PanelProps) {
  const state = useJob(props.port, props.source);
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const part = (title: string, content: preact.ComponentChildren) => (
    <Disclosure
      title={title}
      open={open.has(title)}
      toggle={() => {
        const others = [...open].filter((each) => each !== title);
        setOpen(new Set(open.has(title) ? others : [...others, title]));
      }}
    >
      {content}
    </Disclosure>
  );
  return (
    <section class="decisions" aria-label="Decisions">
      {state.is === 'reading' && <p>Reading the walls…</p>}
      {state.is === 'failed' && <p class="notice">The walls cannot be read. {state.message}</p>}
      {state.is === 'ready' && part('Mask or govern', <Ladder {...props} job={state.job} />)}
      {state.is === 'ready' && part('Alternates', <Alternates {...props} job={state.job} />)}
      {part('Baseline and changes', <Baseline {...props} />)}
      {state.is === 'ready' && part('Ranges', <Ranges {...props} factors={state.job.factors} />)}
    </section>
  );
}
