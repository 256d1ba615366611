import { toBase } from '../../../src/quantity/conversions';
import { lines, numberIn } from '../../properties/call';
import { printed, type SourceChecks } from '../check';
import { one } from '../second-library';

const GRAM_IN_KG_ON_30_IN2 = (): number => one('g/30in2', 'kg/m2') / 30;

/** Water that a square metre takes up in the first minute, its measured suction being 30 g on 30 in2. */
function firstMinute(): number {
  const suction = toBase(30, 'g/30in2');
  const [line] = lines(
    'WALLROWS',
    [
      ['Wall', 'Material', 'Area', 'Residue', 'Suction'],
      ['A', 'Red clay brick', 1, 'moderate', suction],
    ],
    null,
    // One pass of one minute.
    [
      ['units', 'SI'],
      ['prewet.passContact', 1],
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

/** The initial rate of absorption. */
export const astmC67: SourceChecks = {
  document: 'ASTM C67, Sampling and Testing Brick and Structural Clay Tile; ASTM C216-12a, Facing Brick',
  edition: 'definition and limit as quoted in secondary sources',
  section: 'initial rate of absorption',
  checks: [
    {
      what: '30 in2 in cm2',
      value: 194,
      unit: 'cm2',
      mark: 'published',
      ...printed(0),
      ours: () => (0.001 / toBase(1, 'g/30in2')) * 1e4,
    },
    {
      what: '30 g on 30 in2, the rate above which brick is wetted before laying',
      value: 1.55,
      unit: 'kg/m2',
      mark: 'computed',
      ...printed(3),
      ours: () => toBase(30, 'g/30in2'),
      second: { by: 'mathjs', value: () => 30 * GRAM_IN_KG_ON_30_IN2() },
    },
    {
      what: '1 g on 30 in2',
      value: 0.05167,
      unit: 'kg/m2',
      mark: 'computed',
      ...printed(5),
      ours: () => toBase(1, 'g/30in2'),
      second: { by: 'mathjs', value: GRAM_IN_KG_ON_30_IN2 },
    },
    {
      what: 'uptake of the first minute is the initial rate: 30 g on 30 in2',
      value: 1.55,
      unit: 'L/m2',
      mark: 'computed',
      ...printed(3),
      ours: firstMinute,
    },
  ],
};
