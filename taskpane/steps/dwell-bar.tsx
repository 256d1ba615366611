import { rounded } from '../../src/site/amount';
import type { DwellLimits } from '../../src/site/dwell-clock';

const WIDTH = 272;
const BAR = 16;
const HEIGHT = 42;
// The bar goes on a little behind its last mark.
const BEYOND = 1.3;

/**
 * The dwell as a bar with marks at least, most, and dry or the first misting, and a pointer at the present. It repeats what is said in words
 * beside it.
 * @param props the dwell
 * @param props.limits what the clock goes by
 * @param props.elapsed minutes since the first stroke
 * @returns the bar
 */
export function DwellBar({ limits, elapsed }: { limits: DwellLimits; elapsed: number }) {
  const { least, most, dries } = limits;
  const end = Math.max(least, most, dries < 2 * most ? dries : 0) * BEYOND;
  const at = (minutes: number) => (Math.min(minutes, end) / end) * WIDTH;
  const marks = [
    { name: 'least', at: least },
    { name: 'most', at: most },
    ...(dries < end ? [{ name: dries < most ? 'mist' : 'dry', at: dries }] : []),
  ];
  return (
    <svg class="dwell-bar" width="100%" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
      <rect class="room" x="0.5" y="0.5" width={WIDTH - 1} height={BAR} />
      <rect class="window" x={at(least)} y="0.5" width={Math.max(0, at(most) - at(least))} height={BAR} />
      {marks.map((mark) => (
        <g key={mark.name}>
          <line x1={at(mark.at)} y1="0" x2={at(mark.at)} y2={BAR + 6} />
          <text x={at(mark.at)} y={mark.name === 'most' ? HEIGHT - 1 : BAR + 14}>
            {mark.name} {rounded(mark.at)}
          </text>
        </g>
      ))}
      <path class="now" d={`M${String(at(elapsed))} ${String(BAR)} l-5 -${String(BAR)} h10 z`} />
    </svg>
  );
}
