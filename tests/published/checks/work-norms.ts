import { call, lines, number, numberIn } from '../../properties/call';
import { exact, factor, perLaborHour, printed, type PublishedCheck, type SourceChecks } from '../check';

type Wall = Readonly<Record<string, unknown>>;
const walls = (wall: Wall): unknown[][] => [
  ['Wall', ...Object.keys(wall)],
  ['A', ...Object.values(wall)],
];
const brick = { Material: 'Red clay brick', Area: 1000, Height: 12, Residue: 'light' };

const part = (name: string, wall: Wall, factors: unknown[][] = []): number =>
  number('LABORHOURS', walls(wall), null, factors, name);
const wash = (wall: Wall, factors: unknown[][] = []): number =>
  ['prewet', 'apply', 'scrub', 'rinse', 'tend', 'change', 'below'].reduce(
    (sum, name) => sum + part(name, wall, factors),
    0,
  );

const MASKED = { Material: 'Painted or anodized aluminum', Area: 900, Height: 30, Masked: 'only' };
const maskedArea = (): number => number('MASKING', walls(MASKED));
const WINDOWS = { ...brick, Openings: 400, 'Opening perimeter': 200 };
const breaks = 'ours includes the breaks of a 50-minute hour';

interface Bound {
  readonly what: string;
  readonly relation: 'at least' | 'at most';
  readonly laborHoursPerM2: number;
  readonly because: string;
  readonly ours: () => number;
}
const bound = ({ laborHoursPerM2, ...rest }: Bound): PublishedCheck => ({
  value: perLaborHour(laborHoursPerM2),
  unit: 'ft2 per labor-hour',
  mark: 'published',
  within: 0.5,
  ...rest,
});

function inSchedule(heading: string, wall: Wall, factors: unknown[][]): number {
  return numberIn(lines('SCHEDULE', walls(wall), null, factors)[0], heading);
}
const SI = [
  ['units', 'SI'],
  ['reclean.share', 0],
];
const concentrateOf = (of: 1 | 3): number =>
  inSchedule('Concentrate', { ...brick, Height: 4 }, [...SI, ['cleaner.class', of]]) / 1000;

/** Hours and goods of single tasks in the federal cost system of Brazil. */
export const sinapiTasks: SourceChecks = {
  document: "SINAPI, Brazil's federal cost system, finishing cleaning",
  edition: '10/2025',
  section: 'items 99813, 99814, 99805, 99820, 99821, 106171',
  checks: [
    bound({
      what: 'the brush alone on light residue, against a tiled wall with all its steps (99813)',
      relation: 'at least',
      laborHoursPerM2: 0.1047,
      because: 'a part is quicker than the whole job',
      ours: () => 1000 / part('scrub', brick),
    }),
    bound({
      what: 'masking taken off, against a protective sheet taken off (106171)',
      relation: 'at most',
      laborHoursPerM2: 0.0709,
      because: breaks,
      ours: () => maskedArea() / part('unmask', MASKED),
    }),
    bound({
      what: 'final clean of glass, against glass alone (99820)',
      relation: 'at most',
      laborHoursPerM2: 0.086,
      because: breaks,
      ours: () => 400 / part('glass', WINDOWS),
    }),
    bound({
      what: 'final clean of glass, against a framed window (99821)',
      relation: 'at least',
      laborHoursPerM2: 0.1806,
      because: 'theirs cleans the frame too',
      ours: () => 400 / part('glass', WINDOWS),
    }),
    {
      what: 'share of its time on site that the wand runs, jet alone (99814: 0.0117 h of 0.0342 h)',
      value: 0.0117 / (0.0117 + 0.0225),
      unit: '1',
      mark: 'computed',
      relation: 'at least',
      within: 1e-9,
      because: 'theirs waits for more than moves and set-up; ours keeps the wand busier',
      ours: () => {
        const jet = [
          ['cleaner.class', 0],
          ['load.light', 0],
          ['scrub.least', 1e-6],
          ['rate.scrape.light', 100000],
          ['sample.hours', 0],
          ['reclean.share', 0],
          ['team.size', 2],
        ];
        // One person holds the lance; both are on site all the time.
        const running = part('rinse', brick, jet) * factor('working.share');
        return running / (number('LABORHOURS', walls(brick), null, jet) / 2);
      },
    },
    {
      what: 'detergent on a square meter, class 1 (99813)',
      value: 0.0063,
      unit: 'L/m2',
      mark: 'published',
      relation: 'at least',
      within: 1e-9,
      because: 'ours is mixed stronger, 1:64, against mortar',
      ours: () => concentrateOf(1),
    },
    {
      what: 'acid on a square meter, class 3 (99805, muriatic acid)',
      value: 0.0345,
      unit: 'L/m2',
      mark: 'published',
      relation: 'at least',
      within: 1e-9,
      because: 'ours is a buffered acid of less strength',
      ours: () => concentrateOf(3),
    },
  ],
};

/** Film, nets, scaffold and hand work at Sao Paulo. */
export const cdhuTasks: SourceChecks = {
  document: 'CDHU, Sao Paulo, price bulletin of public works',
  edition: 'bulletin 202',
  section: 'items 02.03.030, 02.03.060, 01.23.020; facade scaffold',
  checks: [
    bound({
      what: 'masking put on, against film on surfaces (02.03.030)',
      relation: 'at most',
      laborHoursPerM2: 0.1,
      because: breaks,
      ours: () => maskedArea() / part('mask', MASKED),
    }),
    bound({
      what: 'masking put on, against a net on a facade (02.03.060)',
      relation: 'at least',
      laborHoursPerM2: 0.9,
      because: 'theirs is a net on a whole facade; ours is film on openings and fittings',
      ours: () => maskedArea() / part('mask', MASKED),
    }),
    ...(['light', 'moderate', 'heavy'] as const).map((residue) =>
      bound({
        what: `scraping ${residue} residue, against steel brushed free of cement by hand (01.23.020)`,
        relation: 'at least',
        laborHoursPerM2: 0.3,
        because: 'theirs is steel covered with cement; ours scrapes what sticks out here and there',
        ours: () => 1000 / part('scrape', { ...brick, Residue: residue }),
      }),
    ),
    {
      what: 'film bought beyond the masking area (02.03.030)',
      value: 1.1,
      unit: '1',
      mark: 'published',
      ...exact,
      ours: () => inSchedule('Film to buy', MASKED, []) / inSchedule('Masking', MASKED, []),
    },
    ...(
      [
        ['to 10 m', 20, 0.48],
        ['above 10 m', 90, 1.28],
      ] as const
    ).map(([where, height, laborHoursPerM2]): PublishedCheck => ({
      what: `scaffold erected and dismantled, ${where}`,
      value: laborHoursPerM2,
      unit: 'labor-h/m2',
      mark: 'published',
      relation: 'at least',
      within: 0.005,
      because: 'our rates are rounded down to whole ft2',
      ours: () => {
        const wall = { ...brick, Height: height, Access: 'scaffold' };
        const all = part('scaffold', wall, [['scaffold', 'yes']]);
        if (height <= 30) return all / (1000 * 0.09290304);
        // The lowest 30 ft of 90 go at the rate of a low scaffold: a third.
        const low = part('scaffold', { ...wall, Area: 1000 / 3, Height: 20 }, [['scaffold', 'yes']]);
        return (all - low) / ((1000 * 2 * 0.09290304) / 3);
      },
    })),
  ],
};

/** Liquid applied to facades by hand, by access and texture. */
export const table6219: SourceChecks = {
  document: 'Repair unit rates (Russia), thin liquids applied to facades',
  edition: 'as stored',
  section: 'table 62-19, labor-h per 100 m2: scaffold 11.05, ladder 15.56, suspended 29.79; rough 13.5% more',
  checks: [
    bound({
      what: 'applying cleaner, against the whole job of a thin liquid from a scaffold',
      relation: 'at least',
      laborHoursPerM2: 0.1105,
      because: 'a part is quicker than the whole job, and ours is sprayed',
      ours: () => 1000 / part('apply', brick),
    }),
    ...(
      [
        ['ladder', 15.56],
        ['suspended', 29.79],
      ] as const
    ).map(([access, hours]): PublishedCheck => ({
      what: `hours of the wash from ${access === 'ladder' ? 'a ladder' : 'suspended access'} to those from a scaffold`,
      value: hours / 11.05,
      unit: '1',
      mark: 'computed',
      ...printed(2),
      ours: () => wash({ ...brick, Access: access }) / wash({ ...brick, Access: 'scaffold' }),
    })),
    {
      what: 'hours of the wash of a rough face to those of a smooth one',
      value: 1.135,
      unit: '1',
      mark: 'published',
      ...exact,
      // Split-face block is plain block but for its face.
      ours: () => wash({ ...brick, Material: 'Split-face block' }) / wash({ ...brick, Material: 'CMU' }),
    },
  ],
};

/** Sheets on scaffolds in Spain. */
export const andalusiaTasks: SourceChecks = {
  document: 'Cost base of Andalusia (Spain)',
  edition: '01/2024',
  section: 'sheets and nets on scaffolds, kept and taken down, 0.30 and 0.23 h/m2',
  checks: ([0.3, 0.23] as const).map((laborHoursPerM2) =>
    bound({
      what: `masking taken off, against ${laborHoursPerM2 === 0.3 ? 'a sheet' : 'a mesh'} kept and taken down`,
      relation: 'at least',
      laborHoursPerM2,
      because: 'theirs hangs on a scaffold and is kept up too',
      ours: () => maskedArea() / part('unmask', MASKED),
    }),
  ),
};

const ROW_FLOW = (): number => {
  const spilled = call('NOZZLE', factor('nozzle.number'), factor('nozzle.pressure'), null, null, 'US');
  return Number((spilled as unknown[][])[0]?.[1]);
};

/** Flows of the rinse in trade texts. */
export const rinseFlows: SourceChecks = {
  document: 'Flows of the rinse: Good Practice for Cleaning New Brickwork; Masonry Magazine, July 2006',
  edition: 'as stored',
  section: '3 to 8 gal/min; 5, 5 to 7, 6 to 8 gal/min (pages 42 and 43)',
  checks: (
    [
      ['at least', 3],
      ['at most', 8],
    ] as const
  ).map(([relation, value]) => ({
    what: `starting flow of the rinse, ${relation}`,
    value,
    unit: 'gal/min',
    mark: 'published' as const,
    relation,
    within: 1e-9,
    because: 'ours is an assumption within all of them but the last',
    ours: ROW_FLOW,
  })),
};

/** Detergent by hand. */
export const navfacDetergent: SourceChecks = {
  document: 'NAVFAC MO-913, Historic Structures Preservation Manual',
  edition: 'September 1991',
  section: 'wet cleaning: 1 or 2 tablespoons of detergent per gallon',
  checks: [
    {
      what: 'detergent in the mix of class 1, by volume, against 2 tablespoons per gallon',
      // A gallon holds 256 tablespoons.
      value: 2 / 258,
      unit: '1',
      mark: 'computed',
      relation: 'at least',
      within: 1e-9,
      because: 'theirs is for dirt on old masonry; ours is for fresh mortar',
      ours: () => {
        const one = [...SI, ['cleaner.class', 1]];
        return inSchedule('Concentrate', brick, one) / inSchedule('Mixed cleaner', brick, one);
      },
    },
  ],
};

/** Dwell and area in another country's practice. */
export const australianPractice: SourceChecks = {
  document: 'Cleaning of clay masonry, Australian practice',
  edition: 'May 2002, as stored',
  section: 'hints 7 and 8: about 1 m2 at a time; 3 to 6 min before scrubbing',
  checks: [
    {
      what: 'smallest area worth washing at one time',
      reading: true,
      value: 1,
      unit: 'm2',
      mark: 'published',
      relation: 'at most',
      within: 1e-9,
      because: 'theirs is an example of a small area',
      ours: () => factor('patch.least', 'SI'),
    },
    {
      what: 'minimum dwell',
      reading: true,
      value: 3,
      unit: 'min',
      mark: 'published',
      relation: 'at least',
      within: 1e-9,
      because: 'a bound',
      ours: () => factor('dwell.least'),
    },
    {
      what: 'maximum dwell, scrubbing within it',
      reading: true,
      value: 6,
      unit: 'min',
      mark: 'published',
      relation: 'at most',
      within: 1e-9,
      because: 'a bound; theirs is before scrubbing',
      ours: () => factor('dwell.most'),
    },
  ],
};
