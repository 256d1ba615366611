import { useEffect, useRef, useState } from 'preact/hooks';
import type { MaskOption } from '../../src/estimate/options';
import type { WallRow } from '../../src/walls/wall-row';
import { messageOf } from '../workbook/message-of';
import type { PanelProps } from '../shared/panel-props';
import { useWriting } from '../shared/use-writing';
import { WritingNotice } from '../shared/writing-notice';
import { maskedBlocks, maskedCells, type MaskedCell } from './apply-rung';
import { rungName } from './ladder-words';

interface Asked {
  readonly name: string;
  readonly cells: readonly MaskedCell[];
}

/**
 * Sets the Masked cells of a zone as a line of the ladder has them, after asking.
 * @param props what it works on
 * @param props.options the lines of the ladder
 * @param props.rows the rows of the zone as they are marked
 * @param props.zone name of the zone
 * @returns the choice of a line, the question, and what was written
 */
export function ApplyLine({
  port,
  source,
  say,
  options,
  rows,
  zone,
}: PanelProps & { options: readonly MaskOption[]; rows: readonly WallRow[]; zone: string }) {
  const [asked, ask] = useState<Asked>();
  const writing = useWriting(port, say);
  const question = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (asked) question.current?.focus();
  }, [asked]);
  const offered = options.filter(
    (option) => option.class !== undefined && option.estimate !== undefined && differs(option, rows),
  );
  const propose = async (option: MaskOption) => {
    const name = rungName(option);
    const cells = await maskedCells(port, source, rows, option);
    ask({ name, cells });
  };
  const set = ({ name, cells }: Asked) => {
    ask(undefined);
    const [first] = cells;
    if (!first) return;
    writing.overwrite({
      blocks: maskedBlocks(cells),
      says: [
        `${cells.length === 1 ? 'One Masked cell is' : `${String(cells.length)} Masked cells are`} set in ${zone}, for ${name}.`,
        ...cells.map(
          ({ sheet, address, wall, from, to }) => `${wall}: ${shown(from)} → ${to}, ${sheet}!${address}.`,
        ),
      ],
      place: first,
    });
  };
  const fail = (error: unknown) => {
    writing.refuse(messageOf(error, 'The workbook cannot be read.'));
  };
  return (
    <section class="apply" aria-label="Apply a line of the ladder">
      {offered.length === 0 ? (
        <p>No other line can be applied: the walls are already masked that way.</p>
      ) : (
        <>
          <p>Mask the walls of {zone} in the workbook as for:</p>
          <p class="actions">
            {offered.map((option) => (
              <button
                key={String(option.class)}
                type="button"
                onClick={() => {
                  propose(option).catch(fail);
                }}
              >
                {rungName(option)}
              </button>
            ))}
          </p>
        </>
      )}
      {asked && (
        <section class="notice" aria-label="Masked cells would change">
          <h4 tabIndex={-1} ref={question}>
            {asked.name}: {asked.cells.length === 1 ? 'one cell' : `${String(asked.cells.length)} cells`}{' '}
            would change
          </h4>
          <ul>
            {asked.cells.map(({ sheet, address, wall, from, to }) => (
              <li key={address}>
                {wall}: {shown(from)} → {to} ({sheet}!{address})
              </li>
            ))}
          </ul>
          <p class="actions">
            <button
              type="button"
              onClick={() => {
                ask(undefined);
                say('Nothing was written.');
              }}
            >
              Leave them
            </button>
            <button
              type="button"
              onClick={() => {
                set(asked);
              }}
            >
              Set them
            </button>
          </p>
        </section>
      )}
      <WritingNotice port={port} of={writing} say={say} />
    </section>
  );
}

function differs({ rows }: MaskOption, asMarked: readonly WallRow[]): boolean {
  return rows.some(({ mask }, place) => mask !== asMarked[place]?.mask);
}

function shown(content: MaskedCell['from']): string {
  return content === '' ? 'blank' : String(content);
}
