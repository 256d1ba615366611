import { useState } from 'preact/hooks';
import { expressionInWords, nameOf, partName } from '../../src/review/trace-words';
import { citationOf, type TraceLine } from '../../src/trace/recorder';
import { traceNode, type TraceNode } from '../../src/trace/trace-tree';
import { methods } from '../../src/rules/methods';
import { sources, type Source } from '../../src/rules/sources';
import { GoThere } from '../shared/go-there';
import { SHOWN_AT_ONCE, ShowMore } from '../shared/show-more';
import type { Place, WorkbookPort } from '../workbook/port';
import { amountText } from './amount-text';
import type { AskedNumber } from './asked-number';
import { cellOf, wallCell } from './leaf-place';

/** What a branch of the tree works with. */
export interface BranchProps {
  readonly number: AskedNumber;
  readonly port: WorkbookPort;
  readonly say: (sentence: string) => void;
}

interface NodeProps extends BranchProps {
  readonly node: TraceNode;
  /** Symbol of the number that it is a part of; left out at the top. */
  readonly whole?: string;
  /** Whether it is open at first. */
  readonly open: boolean;
}

const SUM = methods.sum.rule;
const byCitation = new Map<string, Source>(
  Object.values(sources).map((source: Source) => [citationOf(source), source]),
);

/**
 * A number that opens into the parts that it is made up of, each of which opens likewise.
 * @param props the number
 * @returns the number with its amount, and when it is open what it is made of
 */
export function TraceBranch(props: NodeProps) {
  const { number, node, whole, open } = props;
  const [isOpen, setOpen] = useState(open);
  const { line } = node;
  const name = whole === undefined ? nameOf(number.rec, line.symbol) : partName(number.rec, line, whole);
  if (node.made === 'nothing') return <Leaf {...props} name={name} />;
  return (
    <details
      class="branch"
      open={isOpen}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>
        <Named name={name} line={line} />
      </summary>
      {isOpen && <Inside {...props} />}
    </details>
  );
}

function Named({ name, line }: { name: string; line: TraceLine }) {
  return (
    <>
      <span>{name}</span> <span class="number">{amountText(line)}</span>
    </>
  );
}

/** What a number is made of: how, and the parts. */
function Inside({ number, node, whole, port, say }: NodeProps) {
  const { line, made, parts } = node;
  const nodes = parts.flatMap((part) => traceNode(number.rec, part) ?? []);
  const counted = made === 'sum' ? nodes.filter((part) => part.line.value !== 0) : nodes;
  const zero = made === 'sum' ? nodes.filter((part) => part.line.value === 0) : [];
  const wall =
    line.row !== undefined && line.row !== (whole && number.rec.lineOf(whole)?.row)
      ? wallCell(number, line.row, 'wall')
      : undefined;
  const list = { number, port, say, whole: line.symbol };
  return (
    <>
      {wall && (
        <p>
          Wall {line.where}: <ToCell place={wall} port={port} say={say} />
        </p>
      )}
      {made === 'sum' ? (
        <p>{parts.length === 1 ? 'The same as:' : `Sum of ${String(parts.length)} parts:`}</p>
      ) : (
        <p>= {expressionInWords(number.rec, line)}</p>
      )}
      <Parts {...list} nodes={counted} />
      {zero.length > 0 && (
        <details class="branch">
          <summary>{zero.length === 1 ? 'One part is 0' : `${String(zero.length)} parts are 0`}</summary>
          <Parts {...list} nodes={zero} />
        </details>
      )}
      {line.rule !== SUM && <Reason line={line} />}
    </>
  );
}

function Parts({
  nodes,
  whole,
  ...rest
}: BranchProps & { readonly nodes: readonly TraceNode[]; readonly whole: string }) {
  const [shown, show] = useState(SHOWN_AT_ONCE);
  return (
    <>
      <ul>
        {nodes.slice(0, shown).map((part) => (
          <li key={part.line.symbol}>
            <TraceBranch {...rest} node={part} whole={whole} open={nodes.length === 1} />
          </li>
        ))}
      </ul>
      <ShowMore count={nodes.length} shown={shown} show={show} />
    </>
  );
}

/** A value that is made of nothing else: a cell, a factor, a constant, or what the rule itself gives. */
function Leaf({ number, node, name, port, say }: NodeProps & { readonly name: string }) {
  const { line, stated, asStated } = node;
  const place = stated && cellOf(number, stated);
  return (
    <div class="leaf">
      <p>
        <Named name={name} line={asStated} />
      </p>
      {asStated !== line && <p>Counts as {amountText(line)}.</p>}
      <p>
        {stands(node, place)} {place && <ToCell place={place} port={port} say={say} />}
      </p>
      <Reason line={asStated} />
    </div>
  );
}

function stands({ stated, line, asStated }: TraceNode, place: Place | undefined): string {
  if (stated === undefined) return `${line.rule}.`;
  if (stated.by === 'cell') return place ? `Cell of wall ${line.where}:` : `Blank for wall ${line.where}.`;
  if (stated.by === 'constant') return 'Constant.';
  if (asStated.kind === 'override') return place ? 'Your factor:' : 'Your factor.';
  return place ? 'Starting value, left blank in your factors:' : 'Starting value, not in your factors.';
}

function ToCell({ place, port, say }: { place: Place } & Pick<BranchProps, 'port' | 'say'>) {
  return (
    <GoThere port={port} place={place} say={say}>
      {place.sheet}!{place.address}
    </GoThere>
  );
}

/** The rule of a line, and the entry of the table of sources that it rests on. */
function Reason({ line: { rule, source, kind } }: { readonly line: TraceLine }) {
  const entry = byCitation.get(source);
  return (
    <details class="reason">
      <summary>Rule and source</summary>
      <p>{rule}.</p>
      <dl>
        <dt>Source</dt>
        <dd>{entry?.document ?? source}</dd>
        {entry !== undefined && entry.edition !== '' && (
          <>
            <dt>Edition</dt>
            <dd>{entry.edition}</dd>
          </>
        )}
        {entry !== undefined && entry.section !== '' && (
          <>
            <dt>Section</dt>
            <dd>{entry.section}</dd>
          </>
        )}
        {entry?.address !== undefined && (
          <>
            <dt>Address</dt>
            <dd>{entry.address}</dd>
          </>
        )}
        <dt>Kind</dt>
        <dd>{kind}</dd>
      </dl>
    </details>
  );
}
