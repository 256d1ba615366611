import type { ComponentChildren } from 'preact';
import { useErrorBoundary } from 'preact/hooks';
import { messageOf } from '../workbook/message-of';

/**
 * Keeps a failure of one panel from taking the others down.
 * @param props what it keeps
 * @param props.children the panel
 * @returns the panel, or word of its failure
 */
export function Guarded({ children }: { children: ComponentChildren }) {
  const [error, retry] = useErrorBoundary() as [unknown, () => void];
  if (error === undefined) return <>{children}</>;
  return (
    <section class="notice" aria-label="A failure">
      <p>This panel has failed: {messageOf(error, 'no reason is known')}.</p>
      <button type="button" onClick={retry}>
        Try again
      </button>
    </section>
  );
}
