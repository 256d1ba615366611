import { useEffect, useState } from 'preact/hooks';

const TICK_MS = 250;

/**
 * The present, again and again while something runs.
 * @param running whether it runs
 * @param each ms from one look at the clock to the next
 * @returns ms
 */
export function useNow(running: boolean, each = TICK_MS): number {
  const [now, setNow] = useState(Date.now);
  useEffect(() => {
    if (!running) return undefined;
    setNow(Date.now());
    const ticking = setInterval(() => {
      setNow(Date.now());
    }, each);
    return () => {
      clearInterval(ticking);
    };
  }, [running, each]);
  return now;
}
