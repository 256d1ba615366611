import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { className } from '../../../src/rules/cleaner-classes';
import { classLine, factorLines, type FactorLine } from '../../../src/rules/factor-lines';
import { factorWriting, systemOf, writeFactors } from '../../shared/factor-writing';
import { hasNotes, type FactorRows } from '../../shared/factor-rows';
import { failureText } from '../../shared/failure-text';
import { GoThere } from '../../shared/go-there';
import { useReading } from '../../shared/use-reading';
import { placeOf, readFactorRange, type Reference, type WallSource } from '../../shared/wall-source';
import type { Place, WorkbookPort } from '../../workbook/port';
import { Written } from '../../shared/written-notice';
import type { SetUpProps } from '../set-up-props';
import { cellsOf, changesOf, refusals, standingOf, type Change, type Edit, type Edits } from './factor-edits';
import { FactorField } from './factor-field';
import { formulasIn } from './formulas-in';

interface Table {
  readonly rows: FactorRows;
  readonly place: Place;
}

/** A cell that is to change, and the formula that stands in it. */
type Asked = Change & { readonly formula?: string };

type Writing =
  | { readonly is: 'none' }
  | { readonly is: 'asking'; readonly asked: readonly Asked[]; readonly changes: readonly Change[] }
  | { readonly is: 'written'; readonly says: readonly string[] }
  | { readonly is: 'failed'; readonly message: string };

const OPEN_AT_FIRST = 0;

/**
 * The factors in force as a form: what is typed is looked over by the reader of the formulas and written into the table.
 * @param props what it works on
 * @returns the form
 */
export function FactorForm(props: SetUpProps & { readonly source: WallSource }) {
  const { factors } = props.source;
  if (!factors) {
    return (
      <p class="notice">
        These walls were chosen without a table of factors, so starting values are in force. Choose the walls
        again below, and a table is added.
      </p>
    );
  }
  return <FormOf {...props} factors={factors} />;
}

function FormOf({ port, say, factors }: SetUpProps & { factors: Reference }) {
  // What was written may bring no event.
  const [written, setWritten] = useState(0);
  const read = useCallback(async (): Promise<Table> => {
    const place = await placeOf(port, factors);
    return { rows: await readFactorRange(port, factors), place };
  }, [port, factors, written]);
  const reading = useReading(port, read);
  switch (reading.is) {
    case 'reading':
      return <p>Reading the factors…</p>;
    case 'failed':
      return <p class="notice">The factors cannot be read. {reading.message}</p>;
    case 'ready':
      return (
        <Form
          {...{ port, say, factors }}
          table={reading.value}
          wrote={() => {
            setWritten(written + 1);
          }}
        />
      );
  }
}

function Form({
  port,
  say,
  factors,
  table: { rows, place },
  wrote,
}: Pick<SetUpProps, 'port' | 'say'> & { factors: Reference; table: Table; wrote: () => void }) {
  const [edits, setEdits] = useState<Edits>(new Map());
  const [writing, setWriting] = useState<Writing>({ is: 'none' });
  const question = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (writing.is === 'asking') question.current?.focus();
  }, [writing.is]);
  const system = systemOf(rows);
  const groups = factorLines(system);
  const lines = groups.flatMap((group) => group.lines);
  const before = refusals(rows, lines, new Map());
  const wrong = refusals(rows, lines, edits);
  const changes = changesOf(rows, place, lines, edits);
  const takesNote = hasNotes(rows);

  const change = (id: string, edit: Edit) => {
    setEdits(new Map([...edits, [id, edit]]));
    setWriting({ is: 'none' });
  };
  const fail = (message: string) => {
    setWriting({ is: 'failed', message });
    say(message);
  };
  const write = async (of: readonly Change[]) => {
    const found = factorWriting({ reference: factors, place, rows }, cellsOf(of));
    if ('refused' in found) {
      fail(`Nothing was written. ${found.refused}`);
      return;
    }
    await writeFactors(port, factors, found);
    const says = of.map((each) => sentenceOf(each));
    setEdits(new Map());
    setWriting({ is: 'written', says });
    say(`Written. ${says[0] ?? ''}`);
    wrote();
  };
  const offer = async () => {
    const stops = [...wrong.keys()].find((id) => edits.has(id) || !before.has(id));
    if (stops !== undefined) {
      fail(`Nothing was written. ${stops === '' ? '' : `${stops}: `}${wrong.get(stops) ?? ''}`);
      return;
    }
    if (changes.length === 0) {
      fail('Nothing was written: the table already has these values.');
      return;
    }
    const overwritten = changes.filter(({ from }) => from !== '');
    if (overwritten.length === 0) await write(changes);
    else setWriting({ is: 'asking', asked: await withFormulas(port, overwritten), changes });
  };
  const started = (work: Promise<void>) => {
    work.catch((error: unknown) => {
      fail(failureText(error));
    });
  };
  const other = before.get('');
  return (
    <div class="factor-form">
      <p>
        Units in force: {system}. An empty field means the starting value. Changes are written into the table
        only when you say so.{' '}
        <GoThere port={port} place={factors} say={say}>
          Go to the table
        </GoThere>
      </p>
      {!takesNote && <p>The table has two columns: there is none for notes.</p>}
      {other !== undefined && <p class="notice">{other}</p>}
      {groups.map(({ title, lines: ofGroup }, place) => (
        <Group
          key={title}
          title={title}
          open={place === OPEN_AT_FIRST}
          {...{ ofGroup, rows, edits, wrong, takesNote, change }}
        />
      ))}
      <div class="write">
        <p class="actions">
          <button
            type="button"
            class="main"
            onClick={() => {
              started(offer());
            }}
          >
            {changes.length === 0 ? 'Write the changes' : `Write ${counted(changes.length)}`}
          </button>
        </p>
        {writing.is === 'failed' && <p class="notice">{writing.message}</p>}
        {writing.is === 'asking' && (
          <section class="notice" aria-label="Values are changed">
            <h4 tabIndex={-1} ref={question}>
              {counted(writing.asked.length)} to what stands there
            </h4>
            <ul>
              {writing.asked.map((each) => (
                <li key={each.id + each.of}>{sentenceOf(each)}</li>
              ))}
            </ul>
            <p class="actions">
              <button
                type="button"
                onClick={() => {
                  setWriting({ is: 'none' });
                  say('Nothing was written.');
                }}
              >
                Leave them
              </button>
              <button
                type="button"
                onClick={() => {
                  started(write(writing.changes));
                }}
              >
                Change them
              </button>
            </p>
          </section>
        )}
        {writing.is === 'written' && <Written says={writing.says} />}
      </div>
    </div>
  );
}

function Group({
  title,
  open,
  ofGroup,
  rows,
  edits,
  wrong,
  takesNote,
  change,
}: {
  title: string;
  open: boolean;
  ofGroup: readonly FactorLine[];
  rows: FactorRows;
  edits: Edits;
  wrong: ReadonlyMap<string, string>;
  takesNote: boolean;
  change: (id: string, edit: Edit) => void;
}) {
  const [shown, setShown] = useState(open);
  const own = ofGroup.filter(({ id }) => (edits.get(id)?.value ?? standingOf(rows, id).value) !== '').length;
  return (
    <details
      open={shown}
      onToggle={(event) => {
        setShown(event.currentTarget.open);
      }}
    >
      <summary>
        {title}
        {own > 0 && <small> {own} of your own</small>}
      </summary>
      {shown &&
        ofGroup.map((line) => (
          <FactorField
            key={line.id}
            line={line}
            standing={standingOf(rows, line.id)}
            edit={edits.get(line.id)}
            refusal={wrong.get(line.id)}
            takesNote={takesNote}
            change={(edit) => {
              change(line.id, edit);
            }}
          />
        ))}
    </details>
  );
}

async function withFormulas(port: WorkbookPort, changes: readonly Change[]): Promise<Asked[]> {
  const formulas = await formulasIn(
    port,
    changes.flatMap(({ place }) => (place ? [place] : [])),
  );
  return changes.map((change) => {
    const formula = change.place && formulas.get(change.place.address);
    return formula === undefined ? change : { ...change, formula };
  });
}

function sentenceOf({ id, of, from, to, formula }: Asked): string {
  const what = of === 'note' ? `The note on ${id}` : id;
  const shown = (text: string): string => {
    if (of === 'note') return text === '' ? 'none' : text;
    if (id === classLine.id)
      return text === '' ? String(classLine.start) : `${text} (${className(Number(text))})`;
    return text === '' ? 'the starting value' : text;
  };
  const was = formula === undefined ? shown(from) : `${shown(from)} by the formula ${formula}`;
  return `${what}: ${was} → ${shown(to)}`;
}

function counted(changes: number): string {
  return changes === 1 ? '1 change' : `${String(changes)} changes`;
}
