import { useState } from 'preact/hooks';
import type { Block, Place, WorkbookPort } from '../workbook/port';
import { messageOf } from '../message-of';

/** What is to be written, and what is said once it is. */
export interface Order {
  readonly blocks: readonly Block[];
  /** What was written and where, a sentence each. */
  readonly says: readonly string[];
  /** Where to look at it. */
  readonly place: Place;
  /** Called once it is written. */
  readonly then?: () => void;
}

/** How far a writing is. */
export type Writing =
  | { readonly is: 'none' }
  | { readonly is: 'asking'; readonly filled: readonly Place[]; readonly order: Order }
  | { readonly is: 'written'; readonly order: Order }
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
} {
  const [writing, setWriting] = useState<Writing>({ is: 'none' });
  const refuse = (message: string) => {
    setWriting({ is: 'failed', message });
    say(message);
  };
  const fail = (error: unknown) => {
    refuse(`Nothing was written. ${messageOf(error, '')} Is the workbook or the sheet protected?`);
  };
  const write = async (order: Order) => {
    await port.write(order.blocks);
    if (order.blocks.some(({ rows }) => rows.flat().some((content) => typeof content === 'object'))) {
      const { rememberWritten } = await import(/* webpackChunkName: "review" */ '../review/remember-written');
      await rememberWritten(port, order.blocks);
    }
    setWriting({ is: 'written', order });
    say(`Written. ${order.says[0] ?? ''}`);
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
    drop: () => {
      setWriting({ is: 'none' });
      say('Nothing was written.');
    },
  };
}
