import { lines, numberIn } from '../../properties/call';
import { exact, type SourceChecks } from '../check';

/** Water that a square metre takes up in one pass of so many minutes. */
function uptake(minutes: number): number {
  const [line] = lines(
    'WALLROWS',
    [
      ['Wall', 'Material', 'Area', 'Residue'],
      ['A', 'Red clay brick', 1, 'moderate'],
    ],
    null,
    [
      ['units', 'SI'],
      ['prewet.passContact', minutes],
      ['prewet.leastPasses', 1],
      ['prewet.mostPasses', 1],
      // The unit as in the laboratory: oven-dry, deep, and washed once.
      ['prewet.fieldShare', 1],
      ['prewet.capacity', 200],
      ['reclean.share', 0],
    ],
  );
  return numberIn(line, 'Water taken up');
}

/** Uptake grows with the square root of time. */
export const sqrtTimeLaw: SourceChecks = {
  document:
    'Law of sorptivity: Philip, Soil Science 84; Hall and Hoff, Water Transport in Brick, Stone and Concrete',
  edition: '1957; 2012; as quoted in the encyclopedia article Sorptivity',
  section: 'I = S sqrt(t)',
  checks: [4, 9, 25].map((minutes) => ({
    what: `uptake of ${String(minutes)} min to that of the first minute`,
    value: Math.sqrt(minutes),
    unit: '1',
    mark: 'computed' as const,
    ...exact,
    ours: () => uptake(minutes) / uptake(1),
  })),
};
