import { useState } from 'preact/hooks';
import type { Block, Place, WorkbookPort } from '../workbook/port';
import { failureText } from './failure-text';

/** What is to be written, and what is said once it is. */
export interface Order {
  readonly blocks: readonly Block[];
  /** What was written and where, a sentence each. */
  readonly says: readonly string[];
  /** Where to look at it. */
  readonly place: Place;
  /** Looks at what was written, and says what is wrong with it; undefined where nothing is. */
  readonly look?: () => Promise<string | undefined>;
  /** Called once it is written. */
  readonly then?: () => void;
}

/** How far a writing is. */
export type Writing =
  | { readonly is: 'none' }
  | { readonly is: 'asking'; readonly filled: readonly Place[]; readonly order: Order }
  | { readonly is: 'written'; readonly order: Order; readonly wrong: string | undefined }
  | { readonly is: 'failed'; readonly message: string };

/**
 * Writes to the workbook, after asking where cells are filled.
 * @param port the workbook
 * @param say speaks a sentence
 * @returns how far the writing is, and what starts, confirms and drops it
 */
export function useWriting(
  port: WorkbookPort,
  say: (sentence: string) => void,
): {
  readonly writing: Writing;
  readonly offer: (order: Order) => void;
  readonly overwrite: (order: Order) => void;
  readonly refuse: (message: string) => void;
  readonly drop: () => void;
  /** Takes back what was said of the last writing, once something else is wanted. */
  readonly clear: () => void;
} {
  const [writing, setWriting] = useState<Writing>({ is: 'none' });
  const refuse = (message: string) => {
    setWriting({ is: 'failed', message });
    say(message);
  };
  const fail = (error: unknown) => {
    refuse(failureText(error));
  };
  const write = async (asked: Order) => {
    const looks = await port.write(asked.blocks);
    // From here on it is written, whatever else goes wrong.
    const also = await afterwards(port, asked.blocks);
    const order = { ...asked, says: [...asked.says, ...looks, ...also] };
    const wrong = await asked.look?.().catch(() => undefined);
    setWriting({ is: 'written', order, wrong });
    say(`Written. ${wrong ?? order.says[0] ?? ''}`);
    order.then?.();
  };
  const ask = async (order: Order) => {
    const filled = await port.filledCells(order.blocks);
    if (filled.length === 0) await write(order);
    else setWriting({ is: 'asking', filled, order });
  };
  return {
    writing,
    offer: (order) => {
      ask(order).catch(fail);
    },
    overwrite: (order) => {
      write(order).catch(fail);
    },
    refuse,
    clear: () => {
      setWriting({ is: 'none' });
    },
    drop: () => {
      setWriting({ is: 'none' });
      say('Nothing was written.');
    },
  };
}

const BY_HAND = 'This workbook is set to manual calculation: press F9 to see the numbers.';
const NOT_REMEMBERED =
  'The list of written formulas could not be saved, so the first review cannot tell which were typed over.';

/** Keeps which formulas were written, and tells what the user should know of them. */
async function afterwards(port: WorkbookPort, blocks: readonly Block[]): Promise<string[]> {
  if (!blocks.some(({ rows }) => rows.flat().some((content) => typeof content === 'object'))) return [];
  const kept = await import(/* webpackChunkName: "review" */ './remember-written')
    .then(({ rememberWritten }) => rememberWritten(port, blocks))
    .then(
      () => true,
      () => false,
    );
  const byHand = await port.calculatesByHand().catch(() => false);
  return [...(kept ? [] : [NOT_REMEMBERED]), ...(byHand ? [BY_HAND] : [])];
}
