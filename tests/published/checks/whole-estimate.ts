import { lines, number, numberIn } from '../../properties/call';
import { perLaborHour, type PublishedCheck, type SourceChecks } from '../check';

const HEAD = ['Wall', 'Material', 'Area', 'Height', 'Residue'];
/** 4,000 ft2 of one material, two stories high, nothing to mask. */
const face = (material: string, residue: string): unknown[][] => [HEAD, ['A', material, 4000, 20, residue]];

/** Area per labor-hour of the whole job, moves and set-up included. */
function yieldOf(walls: unknown[][], factors: unknown[][] = []): number {
  return numberIn(lines('SCHEDULE', walls, null, factors)[0], 'Area per labor-hour');
}

// Nothing to scrape or brush, no sample and nothing done once more: what is left is the rinse, moves and set-up.
const ONCE = [
  ['sample.hours', 0],
  ['reclean.share', 0],
];
const JET = [
  ...ONCE,
  ['cleaner.class', 0],
  ['load.light', 0],
  ['scrub.least', 1e-6],
  ['rate.scrape.light', 100000],
];
const DETERGENT = [...ONCE, ['cleaner.class', 1], ['rate.scrape.light', 100000]];

const jetAlone = (): number => yieldOf(face('Granite', 'light'), JET);
const detergent = (): number => yieldOf(face('Granite', 'light'), DETERGENT);
const wholeJob = (residue: string): number => yieldOf(face('Red clay brick', residue));

function bracket(
  what: string,
  relation: 'at least' | 'at most',
  laborHoursPerM2: number,
  because: string,
  ours: () => number,
): PublishedCheck {
  return {
    what,
    value: perLaborHour(laborHoursPerM2),
    unit: 'ft2 per labor-hour',
    mark: 'published',
    relation,
    within: 0.05,
    because,
    ours,
  };
}

/** The federal cost system of Brazil: jet, brush and acid. */
export const sinapiWhole: SourceChecks = {
  document: "SINAPI, Brazil's federal cost system, finishing cleaning",
  edition: '10/2025',
  section: 'items 99814, 99813, 99805',
  checks: [
    bracket(
      'jet alone, against a floor or wall by jet (99814, 0.0683 labor-h/m2)',
      'at most',
      0.0683,
      'theirs is any floor or wall near the ground, ours a facade with its moves; a lower wall comes out a few percent quicker than theirs',
      jetAlone,
    ),
    bracket(
      'detergent and brush, against a tiled wall by hand (99813, 0.1047 labor-h/m2)',
      'at most',
      0.1047,
      'theirs is tile, marble or granite, brushed with detergent; ours is masonry, wetted first, washed within a dwell and rinsed by jet',
      detergent,
    ),
    bracket(
      'detergent and brush, against a floor with acid (99805, 0.4302 labor-h/m2)',
      'at least',
      0.4302,
      'theirs is a floor, washed with acid; ours is a wall, washed with detergent',
      detergent,
    ),
    ...(['light', 'moderate', 'heavy'] as const).map((residue) =>
      bracket(
        `whole job on red brick, ${residue} residue, against a floor with acid (99805, 0.4302 labor-h/m2)`,
        'at least',
        0.4302,
        'theirs is a floor of tile or stone; ours is mortar on a new wall, scraped, washed by patches and rinsed by jet',
        () => wholeJob(residue),
      ),
    ),
  ],
};

/** The one norm found that names a facade. */
export const fdeWhole: SourceChecks = {
  document: 'FDE, Sao Paulo, unit prices of school buildings',
  edition: '04/2022',
  section: 'item 16.11.020, facade cleaned by water jet',
  checks: [
    bracket(
      'jet alone, against a facade by jet (0.20 labor-h/m2)',
      'at least',
      0.2,
      'theirs cleans the facade and does not say what is removed; ours is one rinse of a face with nothing left on it',
      jetAlone,
    ),
  ],
};

/** Jet on a rigid surface, and a jet that finishes. */
export const cdhuWhole: SourceChecks = {
  document: 'CDHU, Sao Paulo, price bulletin of public works',
  edition: 'bulletin 202',
  section: 'items 55.01.140 and 55.01.030',
  checks: [
    bracket(
      'jet alone, against a jet on a rigid surface (55.01.140, 0.33 labor-h/m2)',
      'at least',
      0.33,
      'theirs cleans the surface and does not say what is removed; ours only rinses',
      jetAlone,
    ),
    bracket(
      'jet alone, against a complementary jet (55.01.030, 0.20 labor-h/m2)',
      'at least',
      0.2,
      'theirs comes on top of another clean and does not say which; ours only rinses',
      jetAlone,
    ),
  ],
};

/** A whole clean of a facade, windows shielded. */
export const gesnrWhole: SourceChecks = {
  document: 'GESNr-2022, federal norms of repair work (Russia)',
  edition: '2022',
  section: '61-02-009-01, facade blasted with sand, window shields set, 15.8 labor-h per 100 m2',
  checks: (['light', 'moderate', 'heavy'] as const).map((residue) =>
    bracket(
      `whole job on red brick, ${residue} residue`,
      'at most',
      0.158,
      'theirs blasts with sand, which needs no dwell; ours wets, applies, scrubs and rinses, with sample, scraping and re-clean',
      () => wholeJob(residue),
    ),
  ),
};

/** Steam on old masonry: time of one nozzle. */
export const navfacWhole: SourceChecks = {
  document: 'NAVFAC MO-913, Historic Structures Preservation Manual',
  edition: 'September 1991',
  section: 'wet cleaning: steam, average working time 1 min/ft2',
  checks: [
    {
      what: 'team time of one wand on a square foot, acid wash of red brick with moderate residue, breaks left out',
      value: 1,
      unit: 'min/ft2',
      mark: 'published',
      relation: 'at most',
      within: 1e-9,
      because: 'theirs is steam on old soiling; ours is acid on fresh mortar',
      ours: () => {
        const walls = face('Red clay brick', 'moderate');
        const wash = ['prewet', 'apply', 'scrub', 'rinse', 'tend', 'change', 'below'];
        const factors = [
          ['working.share', 1],
          ['team.size', 2],
        ];
        const hours = wash.reduce((sum, part) => sum + number('LABORHOURS', walls, null, factors, part), 0);
        return (hours * 60) / 2 / 4000;
      },
    },
  ],
};
