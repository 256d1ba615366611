import { useState } from 'preact/hooks';
import { hasNotes } from '../shared/factor-rows';
import { factorWriting, writeFactors } from '../shared/factor-writing';
import { failureText } from '../shared/failure-text';
import { messageOf } from '../workbook/message-of';
import type { Reference } from '../shared/wall-source';
import type { WorkbookPort } from '../workbook/port';
import { isSame, readFactorTable, type FactorChange, type SeenFactor } from './seen-factors';

/** A change with what the table held when it was shown. */
export interface AskedChange {
  readonly change: FactorChange;
  readonly seen: SeenFactor;
  /** Whether the cells have changed since they were last shown. */
  readonly changed: boolean;
}

/** How far the writing of rates is. */
export type RatesWriting =
  | { readonly is: 'none' }
  | { readonly is: 'asking'; readonly asked: readonly AskedChange[]; readonly keepsNotes: boolean }
  | { readonly is: 'written'; readonly says: readonly string[] }
  | { readonly is: 'failed'; readonly message: string };

/**
 * Writes rates into the factor table: first it shows what stands there, then it looks again and writes only where that
 * is still so.
 * @param port the workbook
 * @param reference where the factor table stands; undefined where there is none
 * @param say speaks a sentence
 * @returns how far it is, and what asks, writes and drops
 */
export function useRates(
  port: WorkbookPort,
  reference: Reference | undefined,
  say: (sentence: string) => void,
): {
  readonly writing: RatesWriting;
  readonly ask: (changes: readonly FactorChange[]) => void;
  readonly write: (asked: readonly AskedChange[]) => void;
  readonly drop: () => void;
} {
  const [writing, setWriting] = useState<RatesWriting>({ is: 'none' });
  const refuse = (message: string) => {
    setWriting({ is: 'failed', message });
    say(message);
  };
  const show = async (of: Reference, changes: readonly FactorChange[]) => {
    const table = await readFactorTable(port, of);
    const asked = changes.map((change) => ({ change, seen: table.of(change.id), changed: false }));
    setWriting({ is: 'asking', asked, keepsNotes: hasNotes(table.rows) });
  };
  const put = async (of: Reference, asked: readonly AskedChange[]) => {
    const table = await readFactorTable(port, of);
    const now = asked.map(({ change, seen }) => {
      const present = table.of(change.id);
      return { change, seen: present, changed: !isSame(seen, present) };
    });
    if (now.some(({ changed }) => changed)) {
      setWriting({ is: 'asking', asked: now, keepsNotes: hasNotes(table.rows) });
      say('Nothing was written: the factor table has changed since it was shown. Check again.');
      return;
    }
    const changes = asked.map(({ change }) => change);
    const found = factorWriting(table, changes);
    if ('refused' in found) {
      refuse(`Nothing was written. ${found.refused}`);
      return;
    }
    await writeFactors(port, of, found);
    const says = changes.map(({ id, value, note }) => `${id} is ${String(value)} now, ${note}.`);
    setWriting({ is: 'written', says });
    say(`Written. ${says.join(' ')}`);
  };
  const start = (work: (of: Reference) => Promise<void>, failed: (error: unknown) => string) => {
    if (reference === undefined) {
      refuse('This workbook has no factor table to write to. Choose or make one under Set up.');
      return;
    }
    work(reference).catch((error: unknown) => {
      refuse(failed(error));
    });
  };
  return {
    writing,
    ask: (changes) => {
      start(
        (of) => show(of, changes),
        (error) => messageOf(error, 'The factor table cannot be read.'),
      );
    },
    write: (asked) => {
      start((of) => put(of, asked), failureText);
    },
    drop: () => {
      setWriting({ is: 'none' });
      say('Nothing was written.');
    },
  };
}
