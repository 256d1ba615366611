import { useEffect, useState } from 'preact/hooks';

const TICK_MS = 250;

/**
 * The present, again and again while something runs.
 * @param running whether it runs
 * @returns ms
 */
export function useNow(running: boolean): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    if (!running) return undefined;
    setNow(Date.now());
    const ticking = setInterval(() => {
      setNow(Date.now());
    }, TICK_MS);
    return () => {
      clearInterval(ticking);
    };
  }, [running]);
  return now;
}
