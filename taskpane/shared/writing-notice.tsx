import { useEffect, useRef } from 'preact/hooks';
import { Written } from './written-notice';
import { GoThere } from './go-there';
import type { Place, WorkbookPort } from '../workbook/port';
import type { useWriting } from './use-writing';

const CELLS_NAMED = 12;

/**
 * Asks before filled cells are overwritten, and says afterwards what was written and where.
 * @param props how far the writing is
 * @param props.port the workbook
 * @param props.of the writing
 * @param props.say speaks a sentence
 * @returns a question, a report, or nothing
 */
export function WritingNotice({
  port,
  of: { writing, overwrite, drop },
  say,
}: {
  port: WorkbookPort;
  of: ReturnType<typeof useWriting>;
  say: (sentence: string) => void;
}) {
  const question = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (writing.is === 'asking') question.current?.focus();
  }, [writing.is]);
  switch (writing.is) {
    case 'none':
      return null;
    case 'failed':
      return <p class="notice">{writing.message}</p>;
    case 'asking': {
      const { order, filled } = writing;
      return (
        <section class="notice" aria-label="Cells are filled">
          <h4 tabIndex={-1} ref={question}>
            {filled.length === 1 ? 'A cell is filled' : `${String(filled.length)} cells are filled`}
          </h4>
          <p>{namedCells(filled)}</p>
          <p class="actions">
            <button type="button" onClick={drop}>
              Leave them
            </button>
            <button
              type="button"
              onClick={() => {
                overwrite(order);
              }}
            >
              Overwrite them
            </button>
          </p>
        </section>
      );
    }
    case 'written':
      return (
        <Written says={writing.order.says} wrong={writing.wrong}>
          <GoThere port={port} place={writing.order.place} say={say}>
            Go there
          </GoThere>
        </Written>
      );
  }
}

function namedCells(filled: readonly Place[]): string {
  const named = filled.slice(0, CELLS_NAMED).map(({ sheet, address }) => `${sheet}!${address}`);
  const more = filled.length - named.length;
  return named.join(', ') + (more > 0 ? ` and ${String(more)} more` : '');
}
