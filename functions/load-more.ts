import type { moreRuns } from './more-runs';
import type { Run } from './worksheet-function';

type More = typeof moreRuns;

/** Named in the build too. */
const FILE = 'functions-more.js';
const own =
  typeof document === 'undefined' ? undefined : (document.currentScript as HTMLScriptElement | null);
let atHand: More | undefined;
let coming: Promise<void> | undefined;

/**
 * Takes the functions that come later.
 * @param more what they do, by name
 */
export function takeMore(more: More): void {
  atHand = more;
}

/**
 * A function that comes later, once it is there.
 * @param name its name
 * @returns what it does, or undefined where it is not loaded yet
 */
export function moreAtHand(name: keyof More): Run | undefined {
  return atHand?.[name];
}

/**
 * Loads the functions that come later, from beside this script.
 * @returns when they are there
 * @throws {Error} in the promise, where the file cannot be loaded; the next call tries again
 */
export function loadMore(): Promise<void> {
  return (coming ??= new Promise<void>((resolve, reject) => {
    const script = document.createElement('script');
    script.src = new URL(FILE, own?.src ?? document.baseURI).href;
    script.onload = () => {
      resolve();
    };
    script.onerror = () => {
      coming = undefined;
      reject(
        new Error(
          `${script.src} cannot be loaded, so this function has no answer. Recalculate to try again.`,
        ),
      );
    };
    document.head.append(script);
  }));
}
