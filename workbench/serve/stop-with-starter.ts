// The server is started by a script that makes everything ready, and that one by npm.
const LOOK_AGAIN = 500;

/**
 * Ends this process when the one that started it is gone, however that ended.
 * @param starter the process that started this one
 */
export function stopWithStarter(starter = process.ppid): void {
  setInterval(() => {
    if (process.ppid !== starter) process.exit();
  }, LOOK_AGAIN).unref();
}
