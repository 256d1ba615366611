import { Worker } from 'node:worker_threads';

// Bounds of the command: assumptions, several times what the largest workbook within the other bounds takes.
const MOST_SECONDS = 300;
const MOST_BYTES = 3 * 1024 * 1024 * 1024;
const EVERY = 200;

// Runs beside the work, which may be in the middle of one long step.
const WATCHER = `
  const { workerData } = require('node:worker_threads');
  const { writeSync } = require('node:fs');
  const { seconds, bytes, every } = workerData;
  const start = Date.now();
  setInterval(() => {
    const late = Date.now() - start > seconds * 1000;
    if (!late && process.memoryUsage.rss() < bytes) return;
    const what = late ? 'takes longer than ' + seconds + ' seconds' : 'takes more than ' + Math.round(bytes / 2 ** 20) + ' MB of memory';
    writeSync(2, 'The estimate ' + what + '. It was stopped, and no file was changed. Try a smaller workbook.\\n');
    process.kill(process.pid, 'SIGKILL');
  }, every);
`;

/**
 * Ends this process with a sentence where its work takes too long or too much memory. Files are written at once and
 * last, so that none is half done.
 * @param seconds how long it may take
 * @param bytes how much memory it may have
 * @returns ends the watch
 */
export function watch(seconds = MOST_SECONDS, bytes = MOST_BYTES): () => Promise<unknown> {
  const watcher = new Worker(WATCHER, {
    eval: true,
    workerData: { seconds, bytes, every: EVERY },
    execArgv: [],
  });
  watcher.unref();
  return () => watcher.terminate();
}
