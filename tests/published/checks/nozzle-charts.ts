import { fanWidth, reactionForce } from '../../../src/estimate/nozzle';
import { fromBase, toBase } from '../../../src/quantity/conversions';
import { plain, printed, type PublishedCheck, type SourceChecks } from '../check';
import { byFormula } from '../second-library';

const flow = (nozzle: number, psi: number): number => plain('Flow', 'NOZZLE', nozzle, psi, null, null, 'US');

// nozzle, psi, gal/min
const chart = [
  [2, 500, 0.71],
  [3, 1500, 1.84],
  [4, 1000, 2],
  [4, 2500, 3.16],
  [5, 2000, 3.54],
  [5.5, 2000, 3.89],
  [6, 3000, 5.2],
  [6.5, 1000, 3.25],
  [7, 1500, 4.29],
  [7.5, 500, 2.65],
  [8, 1000, 4],
  [8, 2500, 6.32],
  [8, 4000, 8],
  [8.5, 1500, 5.21],
] as const;

/** Flow at a pressure. */
export const nozzleSizes: SourceChecks = {
  document: 'Nozzle size selection chart for pressure washers',
  edition: 'as read, not dated',
  section: 'flow in gal/min by nozzle size and pressure',
  checks: [
    ...chart.map(([nozzle, psi, gpm]): PublishedCheck => ({
      what: `flow of nozzle ${String(nozzle)} at ${String(psi)} psi`,
      value: gpm,
      unit: 'gal/min',
      mark: 'published',
      ...printed(2),
      ours: () => flow(nozzle, psi),
    })),
    {
      what: 'nozzle number that gives 5 gal/min at 2500 psi',
      value: 6.32,
      unit: '1',
      mark: 'computed',
      ...printed(2),
      // Flow goes in proportion to the number.
      ours: () => 5 / flow(1, 2500),
      second: byFormula('5 * sqrt(4000 / 2500)'),
    },
  ],
};

// degrees, then the width in inches at 8, 12, 18 and 24 in.
const coverage = [
  [15, 2.1, 3.2, 4.7, 6.3],
  [20, 2.8, 4.2, 6.4, 8.5],
  [25, 3.5, 5.3, 8, 10.6],
  [40, 5.8, 8.7, 13.1, 17.5],
  [50, 7.5, 11.2, 16.8, 22.4],
] as const;
const DISTANCES = [8, 12, 18, 24];

const width = (angle: number, inches: number): number =>
  fromBase(fanWidth(toBase(inches, 'in'), angle), 'in');

/** Width of a fan. */
export const fanWidths: SourceChecks = {
  document: 'Catalogue of spray nozzles, table of theoretical coverage; real fans are narrower',
  edition: 'as read, not dated',
  section: 'theoretical coverage at various spray heights',
  checks: [
    ...coverage.flatMap(([angle, ...widths]) =>
      widths.map((inches, index): PublishedCheck => {
        const distance = DISTANCES[index] ?? NaN;
        return {
          what: `fan of ${String(angle)} degrees at ${String(distance)} in.`,
          value: inches,
          unit: 'in',
          mark: 'published',
          within: 0.1,
          because: 'printed to 1 decimal, not all of it well rounded',
          ours: () => width(angle, distance),
        };
      }),
    ),
    ...(
      [
        [25, 5.32],
        [40, 8.74],
      ] as const
    ).map(([angle, inches]): PublishedCheck => ({
      what: `fan of ${String(angle)} degrees at 12 in., from the formula`,
      value: inches,
      unit: 'in',
      mark: 'computed',
      ...printed(2),
      ours: () => plain('Fan width', 'NOZZLE', 5, 1000, angle, 12, 'US'),
      second: byFormula(`2 * 12 * tan(${String(angle)} / 2 deg)`),
    })),
  ],
};

const WATER_AT_20_C = 998.2;

/** Reaction force of a jet. */
export const jetForce: SourceChecks = {
  document: 'Momentum of a water jet, F = Q sqrt(2 density pressure), in US units 0.0526 Q sqrt(P)',
  edition: '',
  section: 'water of 998.2 kg/m3 at 20 degC',
  checks: [
    {
      what: 'reaction force of 4 gal/min at 1000 psi',
      value: 6.65,
      unit: 'lbf',
      mark: 'computed',
      ...printed(2),
      // Nozzle 8 gives 4 gal/min at 1000 psi.
      ours: () => plain('Reaction force', 'NOZZLE', 8, 1000, null, null, 'US'),
      second: byFormula(
        'number((4 gallon/minute) * sqrt(2 * 998.2 kg/m^3 * 1000 psi), lbf)',
        'mathjs, from density and pressure',
      ),
    },
    {
      what: 'speed of that jet: force by mass flow',
      value: 117.5,
      unit: 'm/s',
      mark: 'computed',
      ...printed(1),
      ours: () => {
        const flowRate = toBase(4, 'gal/min');
        const massFlow = (flowRate / 1000 / 60) * WATER_AT_20_C;
        return reactionForce(flowRate, toBase(1000, 'psi')) / massFlow;
      },
      second: byFormula(
        'number(sqrt(2 * 1000 psi / (998.2 kg/m^3)), m/s)',
        'mathjs, from density and pressure',
      ),
    },
  ],
};
