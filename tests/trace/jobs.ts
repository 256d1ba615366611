import { libraryUs } from '../../workbench/demo/library-us';
import { WALL_HEADINGS, type Job as DemoJob } from '../../workbench/demo/wall-line';
import { workshopSi } from '../../workbench/demo/workshop-si';

/** Walls and factors, as a workbook holds them. */
export interface Job {
  readonly walls: unknown[][];
  readonly factors: unknown[][];
}

// Every column is used; zones: a mixed one whose rinse runs over another, one that governs down to clear water, one of
// block and strong mortar, one where all is masked, and rows without a zone.
const mixedRows: unknown[][] = [
  ['A-1', 'Street front', 1, 'Red clay brick', 640, 12, 80, 72, 2, 'N', 'moderate', 'yes', 21, 'no', '', ''],
  [
    'A-2',
    'Street front',
    1,
    'Red clay brick',
    410,
    12,
    60,
    48,
    '',
    'S',
    'heavy',
    'no',
    5,
    '',
    27.5,
    'ladder',
  ],
  ['A-3', 'Street front', 2, 'limestone', 120, 4, '', '', 1, '', '', 'yes', 30, 'no', '', ''],
  ['A-4', 'Street front', 2, 'Coated glass', 200, 9, '', '', '', '', '', '', '', 'yes', '', ''],
  ['A-5', 'Street front', 3, 'Granite', 75, '', 5, 12, 3, 'O', '', 'no', 60, 'never', 0.4, ''],
  ['B-1', 'Atrium', 1, 'Marble', 300, 10, 20, 18, 1, 'N', 'light', 'yes', 90, 'no', '', 'suspended'],
  ['B-2', 'Atrium', 2, 'Dark clay brick', 260, 8, '', '', '', 'M', 'heavy', 'no', 90, 'no', '', ''],
  ['C-1', 'Yard (east)', '', 'Split-face block', 900, 9, 110, 96, 6, 'S', '', '', 14, 'no', '', 'lift'],
  [
    'C-2',
    'Yard (east)',
    '',
    'Plain concrete block',
    350,
    0,
    40,
    30,
    '',
    'M',
    'moderate',
    'no',
    14,
    'no',
    '',
    '',
  ],
  ['C-3', 'Yard (east)', '', 'Galvanised steel', 45, '', '', '', 2, '', '', '', '', 'yes', '', ''],
  ['D-1', 'Canopy', 1, 'Copper', 60, 3, 10, 14, 2, '', '', '', '', 'yes', '', ''],
  ['D-2', 'Canopy', 2, 'Timber', 0, 3, '', '', '', '', '', '', '', 'yes', '', ''],
  ['E-1', '', 1, 'House brick', 150, 6, 12, 16, 1, 'N', 'heavy', 'yes', 28, 'no', '', ''],
  ['F-1', 'Porch', 1, 'Stucco', 90, 3, '', '', '', 'N', 'light', 'yes', 40, 'no', '', '', 'street front'],
];
const HEADINGS = [...WALL_HEADINGS.filter((heading) => heading !== 'Access'), 'Access', 'Receives'];

/** Twelve rows and more in US units, with overrides of every sort. */
export const mixedUs: Job = {
  walls: [HEADINGS, ...mixedRows],
  factors: [
    ['units', 'US'],
    ['team.size', 3],
    ['teams', 2],
    ['access.kind', 'scaffold'],
    ['scaffold', 'yes'],
    ['mobilize.hours', 6],
    ['setup.zone', 1.5],
    ['price.mobilization', 850],
    ['price.supervision', 6],
    ['price.minimum', 90000],
    ['mask.lap', 8],
    ['scrub.full', 16],
    ['weather.air', 61],
    ['weather.wind', 7],
    ['prewet.runoffPerPass', 1.2],
    ['acid.2.fraction', 6.5],
    ['neutralizer.sodaAsh', 40],
    ['runoff.captured', 85],
    ['material.limestone.ceiling', 2],
    ['material.split-face-block.suction', 13],
    ['material.House brick.ceiling', 3],
    ['material.House brick.suction', 18],
    ['material.House brick.pressure', 700],
    ['price.labor', 58],
    ['price.cleaner.2', 31.5],
    ['price.cleaner.3', 36],
    ['price.water', 0.02],
    ['price.film', 0.18],
    ['price.tape', 0.11],
    ['price.equipment', 140],
    ['price.access', 260],
    ['price.bicarbonate', 0.9],
    ['price.sodaAsh', 0.8],
    ['price.disposal', 0.35],
    ['price.contingency', 5],
    ['price.overhead', 11],
    ['price.profit', 8],
  ],
};

/** The same walls with the numbers of a metric bid. */
export const mixedSi: Job = {
  walls: mixedUs.walls.map((cells, index) =>
    index === 0
      ? cells
      : cells.map((cell, place) => {
          if (typeof cell !== 'number') return cell;
          const heading = HEADINGS[place];
          if (heading === 'Area' || heading === 'Openings') return cell * 0.1;
          if (heading === 'Height' || heading === 'Opening perimeter') return cell * 0.3;
          return heading === 'Suction' ? cell / 20 : cell;
        }),
  ),
  factors: [
    ['units', 'SI'],
    ['team.size', 2],
    ['cleaner.class', 2],
    ['mask.lap', 150],
    ['weather.surface', 26],
    ['weather.wind', 12],
    ['weather.film', 0.08],
    ['mortar.S.strength', 14000],
    ['material.marble.ceiling', 1],
    ['material.House brick.ceiling', 3],
    ['material.House brick.suction', 0.9],
    ['material.House brick.pressure', 5000],
    ['price.labor', 46],
    ['price.cleaner.1', 5.25],
    ['price.film', 2.1],
    ['price.tape', 0.32],
    ['price.profit', 6],
  ],
};

/** The smallest patch takes longer to apply than the dwell allows, and the user insists on a cleaner. */
export const noWindow: Job = {
  walls: mixedUs.walls,
  factors: [
    ...mixedUs.factors,
    ['cleaner.class', 2],
    ['dwell.least', 0.5],
    ['dwell.most', 1],
    ['patch.least', 20],
  ],
};

/** No row has any suction, and applying goes as fast as rinsing. */
export const dryFaces: Job = {
  walls: [
    ['Wall', 'Material', 'Area', 'Residue'],
    ['G-1', 'Plain glass', 100, 'light'],
    ['G-2', 'Coated glass', 40, 'heavy'],
    ['G-3', 'Plain glass', 0, ''],
  ],
  factors: [
    ['rate.apply', 8],
    ['material.coated-glass.ceiling', 1],
    ['prewet.leastPasses', 0],
  ],
};

/** Nothing evaporates in saturated air, and more rows stand in a zone than one line of a sum holds. */
export const longDamp: Job = {
  walls: [
    ['Wall', 'Material', 'Area', 'Height', 'Level'],
    ...Array.from({ length: 45 }, (_, row) => [
      row + 1,
      row % 2 === 0 ? 'Red clay brick' : 'cast-stone',
      30 + row,
      4,
      1 + (row % 3),
    ]),
  ],
  factors: [['weather.humidity', 100]],
};

function ofDemo({ walls, factors }: DemoJob): Job {
  return {
    walls: [[...WALL_HEADINGS], ...walls.map((line) => [...line])],
    factors: factors.map(([id, value]) => [id, value]),
  };
}

/** The jobs that the traces are replayed on, by name. */
export const jobs: Readonly<Record<string, Job>> = {
  'mixed, US units': mixedUs,
  'mixed, SI units': mixedSi,
  'no contact window': noWindow,
  'faces without suction': dryFaces,
  'long zone in damp air': longDamp,
  'demo workbook, US units': ofDemo(libraryUs),
  'demo workbook, SI units': ofDemo(workshopSi),
};
