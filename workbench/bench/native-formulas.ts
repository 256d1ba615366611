import { coherentKind, show, take } from '../../src/quantity/systems';
import { accessKinds } from '../../src/rules/access-kinds';
import { constants, type ConstantId } from '../../src/rules/constants';
import { factors as table, type FactorId } from '../../src/rules/factors';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { Engine, placeKey, type EngineCell, type EngineSheet } from '../engine/engine';
import { cellAddress, columnLetters } from '../xlsx/address';
import type { CellValue } from '../xlsx/cell-value';
import type { ZoneTotals } from './bare-loop';

// The model as an estimator would build it in a spreadsheet without functions of their own: a formula a row and
// quantity, a line a zone with each set of cleaners for its masked masonry, and factors, constants and materials in cells. US units throughout. In a formula a heading in brackets stands for the cell of its
// own line, and `Sheet[Heading]` for a whole column, or `Sheet[From:To]` for columns side by side.

type Formulas = Readonly<Record<string, string>>;

const LEVELS = [1, 2, 3, 4];
const CLASSES = [0, 1, 2, 3] as const;
// Few cleaners first, then gentle ones.
const SETS = ['0', '1', '2', '3', '01', '02', '12', '03', '13', '23', '012', '013', '023', '123', '0123'];
const ALL_SETS = `[Set ${SETS[0] ?? ''}]:[Set ${SETS.at(-1) ?? ''}]`;
const NEVER = '1E+99';
const GUARD = '(1-1E-9)';

const f = (id: FactorId): string => `Factors!$B$${table.findIndex((row) => row.id === id) + 1}`;
const c = (id: ConstantId): string => `Constants!$B$${Object.keys(constants).indexOf(id) + 1}`;
const SUCTION = String(show(take(1, 'suction', 'US'), 'massPerArea', 'US'));
const TEAM = f('team.size');
const HOUR = `(60*${f('working.share')})`;

const materialColumns = ['Ceiling', 'Suction', 'Pressure', 'Masonry', 'Rough', 'Glass'] as const;
const ofMaterial = (column: (typeof materialColumns)[number]): string =>
  `VLOOKUP([Material],Materials!$A$1:$G$99,${materialColumns.indexOf(column) + 2},FALSE)`;
const byResidue = (light: string, moderate: string, heavy: string): string =>
  `IF([Residue]="heavy",${heavy},IF(OR([Residue]="light",AND([Residue]="",OR([Brushed]="yes",[Brushed]="priced"))),${light},${moderate}))`;
const effort = (['M', 'S', 'O'] as const).reduce(
  (rest, type) =>
    `IF([Mortar]="${type}",(${f(`mortar.${type}.strength`)}/${f('mortar.N.strength')})^${f('mortar.effortExponent')},${rest})`,
  '1',
);
const usualAccess = `CHOOSE(${f('access.kind')}+1,${accessKinds.map((kind) => `"${kind}"`).join(',')})`;
const byAccess = accessKinds.reduce(
  (rest, kind) => `IF([Reached]="${kind}",${f(`access.factor.${kind}`)},${rest})`,
  '1',
);
const ofZone = (heading: string): string => `INDEX(Zones[${heading}],[Zone line])`;
const ofLevel = (heading: string): string =>
  `INDEX(Zones[${heading} 0:${heading} 4],[Zone line],IF([Level]="",0,[Level])+1)`;
const byClass = (of: (cleanerClass: (typeof CLASSES)[number]) => string): string =>
  `CHOOSE([Class]+1,${CLASSES.map(of).join(',')})`;
const picked = (heading: string): string => byClass((of) => `[${heading} ${of}]`);

/** What a class would take of a row, on an area; minutes of the team. */
function atClass(of: (typeof CLASSES)[number]): Formulas {
  const cleaned: Formulas = {
    [`Passes ${of}`]: `MAX(1,${f('cleaner.applications')},[Scrub ${of}]/(${f('dwell.most')}/${f('patch.least')}-[Slower]))`,
    [`Each ${of}`]: `[Scrub ${of}]/[Passes ${of}]`,
    [`Patch ${of}`]: `MIN(${f('dwell.most')}/([Slower]+[Each ${of}]),${f('patch.most')})`,
    [`Paced ${of}`]: `MAX([Quicker],[Slower]-(${f('dwell.most')}-${f('dwell.least')})/[Patch ${of}])`,
    [`Cycle ${of}`]: `[Passes ${of}]*([Slower]+[Paced ${of}]+MAX(0,${f('dwell.least')}/[Patch ${of}]-[Paced ${of}]-[Each ${of}]))`,
    [`Change ${of}`]: `[Passes ${of}]*${f('patch.change')}/[Patch ${of}]`,
  };
  const rinsed: Formulas = { 'Passes 0': '1', 'Cycle 0': '[Rinse time]', 'Change 0': '0' };
  const prewet = of === 0 ? '0' : '[Pre-wet]';
  const steps = `[Cycle ${of}]+[Change ${of}]+[Scrub ${of}]`;
  const free = `(${TEAM}-1)*[Cycle ${of}]`;
  return {
    [`Scrub ${of}`]: `MAX(${f('scrub.least')},${f(`left.${of}`)}*[Load])/${f('scrub.full')}*60/${TEAM}`,
    ...(of === 0 ? rinsed : cleaned),
    [`Wetted ${of}`]: `(${steps}+MAX(0,${prewet}-${free})/${TEAM})/${f('below.interval')}*[Strip]`,
    [`Time ${of}`]: `${steps}+MAX(0,${prewet}+[Wetted ${of}]/${f('rate.below')}-${free})/${TEAM}`,
    [`Minutes ${of}`]: `IF(OR(${of}>[Limit],[Passes ${of}]>${f('cleaner.mostApplications')}),${NEVER},[Time ${of}]*[Washed area]*[Slowed])`,
  };
}

const hours = (work: string): string => `[Net]*[Slowed]*(${work})/${HOUR}`;
const partHeadings = ['Pre-wet', 'Apply', 'Scrub', 'Rinse', 'Tend', 'Change', 'Below'].map(
  (part) => `${part} hours`,
);
const plus = (headings: readonly string[]): string => headings.map((heading) => `[${heading}]`).join('+');

/** What is worked out for each row; what is read from its wash stands among it. */
const rowFormulas: Formulas = {
  Masonry: ofMaterial('Masonry'),
  Ceiling: ofMaterial('Ceiling'),
  Out: 'IF(OR([Masked]="only",AND([Masked]="yes",[Masonry]=0)),1,0)',
  Covered: 'IF(OR([Masked]="only",[Masked]="yes"),1,0)',
  Net: 'IF([Out]=1,0,[Area]-[Openings])',
  'Washed area': '[Net]*[Masonry]',
  First: 'IF(AND([Covered]=0,[Net]>0),1,0)',
  Later: 'IF(AND([Masked]="yes",[Washed area]>0),1,0)',
  'Zone line': 'MATCH([Zone],Zones[Name],0)',
  Limit: `MIN([Ceiling],${ofZone('Limit')})`,
  'Row height': `IF([Height]="",${f('access.lift')},[Height])`,
  Foot: ofLevel('Foot'),
  Strip: ofLevel('Strip'),
  Reached: `IF([Access]="",${usualAccess},[Access])`,
  Slow: byAccess,
  Slowed: `[Slow]*IF(${ofMaterial('Rough')}=1,${f('texture.factor.rough')},${f('texture.factor.smooth')})`,
  Effort: effort,
  Load: `${byResidue(f('load.light'), f('load.moderate'), f('load.heavy'))}*[Effort]`,
  'Rinse time': `${f('rinse.perArea')}/(${f('nozzle.number')}*${c('ratedFlow')}*SQRT(MIN(${f('nozzle.pressure')},${ofMaterial('Pressure')})/${c('ratedPressure')}))`,
  Slower: `MAX(1/${f('rate.apply')},[Rinse time])`,
  Quicker: `MIN(1/${f('rate.apply')},[Rinse time])`,
  Suck: `IF([Suction]="",${ofMaterial('Suction')},[Suction]*${SUCTION})/${f('water.density')}*${f('prewet.fieldShare')}`,
  'Full after': `IF([Suck]=0,0,(${f('prewet.capacity')}/[Suck])^2)`,
  'Wet before': `IF([Suck]=0,0,IF(Job!$B$1<=0,[Full after],MIN([Full after],(MAX(0,${f('dwell.least')}-(Job!$B$1/[Suck])^2)/(2*Job!$B$1/[Suck]))^2)))`,
  Wettings: `MIN(${f('prewet.mostPasses')},MAX(${f('prewet.leastPasses')},ROUNDUP([Wet before]/${f('prewet.passContact')}-1E-9,0)))`,
  'Pre-wet': `[Wettings]/${f('rate.wet')}`,
  ...Object.assign({}, ...CLASSES.map(atClass)),
  ...Object.fromEntries(
    SETS.map((set) => [`Set ${set}`, `IF([Later]=1,MIN(${set.replace(/./g, ',[Minutes $&]').slice(1)}),0)`]),
  ),
  'Least later': `INDEX(${ALL_SETS},${ofZone('Best set')})`,
  Class: `IF([Later]=1,${[0, 1, 2].reduceRight((rest, of) => `IF(AND(ISNUMBER(FIND("${of}",${ofZone('Best name')})),[Minutes ${of}]<=[Least later]*(1+1E-9)),${of},${rest})`, '3')},${ofZone('Class')})`,
  Cleaned: 'IF(AND([Masonry]=1,[Class]>0),1,0)',
  Passes: `IF([Masonry]=1,${picked('Passes')},1)`,
  Time: `IF([Masonry]=1,${picked('Time')},[Rinse time])`,
  Wetted: `[Masonry]*${picked('Wetted')}`,
  'Pre-wet hours': hours('[Cleaned]*[Pre-wet]'),
  'Apply hours': hours(`[Cleaned]*[Passes]/${f('rate.apply')}`),
  'Scrub hours': hours(`[Masonry]*${picked('Scrub')}*${TEAM}`),
  'Rinse hours': hours('[Passes]*[Rinse time]'),
  'Change hours': hours(`[Masonry]*${picked('Change')}*${TEAM}`),
  'Below hours': hours(`[Wetted]/${f('rate.below')}`),
  'Tend hours': `${hours(`[Time]*${TEAM}`)}-${partHeadings
    .filter((heading) => heading !== 'Tend hours')
    .map((heading) => `[${heading}]`)
    .join('-')}`,
  'Re-clean hours': `(${plus(partHeadings)})*${f('reclean.share')}`,
  'Scrape hours': `[Washed area]/${byResidue(f('rate.scrape.light'), f('rate.scrape.moderate'), f('rate.scrape.heavy'))}*[Effort]*[Slowed]/${f('working.share')}`,
  'Move hours': `[Net]/(${f('access.dropWidth')}*${f('access.lift')})*(${f('access.groundMove')}+(${f('access.move')}-${f('access.groundMove')})*MIN(1,MAX(0,[Foot]+[Row height]-${f('access.ground')})/[Row height]))*${TEAM}/60/${f('working.share')}`,
  High: `MIN(1,MAX(0,[Foot]+[Row height]-${f('scaffold.low')})/[Row height])`,
  'Scaffold hours': `IF([Reached]="scaffold",${f('scaffold')}*[Area]*((1-[High])/${f('rate.scaffold.low')}+[High]/${f('rate.scaffold.high')}),0)`,
  'Brush hours': `IF([Brushed]="priced",[Washed area]/${f('rate.brush')}/${f('working.share')},0)`,
  'Glass hours': `IF([Masked]="only",0,IF(${ofMaterial('Glass')}=1,[Area],[Openings]))/${f('rate.glass')}/${f('working.share')}`,
  Shown: 'MAX([Later],1-[Covered])',
  Perimeter:
    '[Covered]*IF([Height]="",4*SQRT([Area]),2*([Area]/[Height]+[Height]))+[Shown]*IF([Opening perimeter]="",4*SQRT([Openings]),[Opening perimeter])',
  'To cover': '[Shown]*[Fixtures]',
  Lapped: `IF([Covered]=1,[Area],[Openings])+[Perimeter]*${f('mask.lap')}`,
  Masking: `[Lapped]+[To cover]*${f('fixture.film')}`,
  'Film to buy': `[Masking]*(1+${f('film.waste')})`,
  Tape: `[Perimeter]*(1+${f('tape.waste')})`,
  'Mask hours': `([Lapped]/${f('rate.maskOn')}+[To cover]*${f('fixture.cover')}/60)*[Slow]/${f('working.share')}`,
  'Unmask hours': `[Masking]/${f('rate.maskOff')}*[Slow]/${f('working.share')}`,
  Taken: `[Net]*[Cleaned]*MIN(${f('prewet.capacity')},[Suck]*SQRT([Wettings]*${f('prewet.passContact')}))`,
  'Water taken up': `[Taken]*(1+${f('reclean.share')})`,
  'Pre-wet water': `[Taken]+[Net]*[Cleaned]*[Wettings]*${f('prewet.runoffPerPass')}`,
  'Water below': `[Net]*[Wetted]*${f('below.water')}`,
  'Mist water': '[Net]*[Cleaned]*[Passes]*Job!$B$3',
  'Rinse water': `[Net]*[Passes]*${f('rinse.perArea')}`,
  'Re-clean water': `([Pre-wet water]+[Water below]+[Mist water]+[Rinse water])*${f('reclean.share')}`,
  'Mixed cleaner': `[Net]*[Cleaned]*[Passes]/${f('cleaner.coverage')}*(1+${f('reclean.share')})`,
  Concentrate: `[Mixed cleaner]/(1+${byClass((of) => (of === 0 ? '0' : f(`cleaner.dilution.${of}`)))})`,
  'Cleaner price': `[Concentrate]*${byClass((of) => (of === 0 ? '0' : f(`price.cleaner.${of}`)))}`,
  'Mix water': '[Mixed cleaner]-[Concentrate]',
  Water: '[Pre-wet water]+[Water below]+[Mist water]+[Mix water]+[Rinse water]+[Re-clean water]',
  Runoff: `([Water]+[Concentrate]-[Water taken up])*${f('runoff.captured')}`,
  Acid: `[Concentrate]*${byClass((of) => (of < 2 ? '0' : `${f(`acid.${of as 2 | 3}.density`)}*${f(`acid.${of as 2 | 3}.fraction`)}`))}/${c('molarMassHCl')}*${f('runoff.captured')}`,
  'Sodium bicarbonate': `[Acid]*(1-${f('neutralizer.sodaAsh')})/${c('acidPerNaHCO3')}*${c('molarMassNaHCO3')}`,
  'Soda ash': `[Acid]*${f('neutralizer.sodaAsh')}/${c('acidPerNa2CO3')}*${c('molarMassNa2CO3')}`,
  Neutralizer: '[Sodium bicarbonate]+[Soda ash]',
};

/** What holds for the whole job, in column B of its sheet. */
const jobFormulas: readonly string[] = [
  `1/${f('cleaner.coverage')}-${f('weather.film')}`,
  `${c('evaporationCoefficient')}*MAX(0,MAX(0,${f('weather.surface')}+18)^2.5-${f('weather.humidity')}*MAX(0,${f('weather.air')}+18)^2.5)*(${f('weather.wind')}+4)`,
  `MAX(0,${f('dwell.most')}*B2/(${f('weather.film')}*${f('water.density')}*60)-1)*${f('weather.mist')}`,
  `SUM(Materials!$H$1:$H$99)*${f('sample.hours')}`,
  `SUM(Zones[Own hours])+B4+${f('mobilize.hours')}+${f('protect.hours')}`,
  `MAX(${f('hire.least')},ROUNDUP(B5/(${TEAM}*${f('teams')}*(${f('shift')}-${f('setup.perDay')}))-1E-9,0))*${f('teams')}`,
  `MAX(0,${f('price.minimum')}-SUM(Zones[Before minimum]))`,
];

const below = (level: number, of: (level: number) => string): string =>
  LEVELS.filter((next) => level > 0 && next > level)
    .map(of)
    .join('+') || '0';

const least = (of: number): string =>
  `IF([Minutes ${of}]>=[Least ${of - 1}]*${GUARD},[Least ${of - 1}],[Minutes ${of}])`;

/** How a zone stands, and what its rows are washed with. */
const decisionFormulas: Formulas = {
  Limit: 'MINIFS(Walls[Ceiling],Walls[Zone],[Name],Walls[First],1)',
  ...Object.fromEntries(
    LEVELS.flatMap((level) => [
      [`Height ${level}`, `MAXIFS(Walls[Row height],Walls[Zone],[Name],Walls[Level],${level})`],
      [`Masonry ${level}`, `SUMIFS(Walls[Washed area],Walls[Zone],[Name],Walls[Level],${level})`],
    ]),
  ),
  ...Object.fromEntries(
    [0, ...LEVELS].map((level) => [`Foot ${level}`, below(level, (of) => `[Height ${of}]`)]),
  ),
  ...Object.fromEntries(
    [0, ...LEVELS].map((level) => [
      `Strip ${level}`,
      below(level, (of) => `MIN(${f('access.dropWidth')}*[Height ${of}],[Masonry ${of}])`),
    ]),
  ),
  ...Object.fromEntries(
    CLASSES.map((of) => [`Minutes ${of}`, `SUMIFS(Walls[Minutes ${of}],Walls[Zone],[Name],Walls[First],1)`]),
  ),
  'Least 0': '[Minutes 0]',
  'Least 1': least(1),
  'Least 2': least(2),
  'Least 3': least(3),
  Class: 'IF([Least 3]<[Least 2],3,IF([Least 2]<[Least 1],2,IF([Least 1]<[Least 0],1,0)))',
  ...Object.fromEntries(
    SETS.map((set) => [
      `Set ${set}`,
      `SUMIFS(Walls[Set ${set}],Walls[Zone],[Name])+${set.length}*${f('setup.zone')}*${HOUR}/(1+${f('reclean.share')})`,
    ]),
  ),
  'Best set': `MATCH(MIN(${ALL_SETS}),${ALL_SETS},0)`,
  'Best name': `CHOOSE([Best set],${SETS.map((set) => `"${set}"`).join(',')})`,
};

const summed = (...headings: string[]): Formulas =>
  Object.fromEntries(headings.map((heading) => [heading, `SUMIFS(Walls[${heading}],Walls[Zone],[Name])`]));
const ofJob = (cell: string): string => `${cell}*[Part]`;
const ownHeadings = [
  ...partHeadings,
  ...['Scrape', 'Mask', 'Unmask', 'Glass', 'Move', 'Scaffold', 'Brush', 'Re-clean', 'Zone set-up'].map(
    (part) => `${part} hours`,
  ),
];
const directHeadings = [
  ...['Labor', 'Cleaner', 'Masking', 'Water', 'Equipment', 'Access', 'Neutralizer', 'Disposal'],
  ...['Mobilization', 'Protection'],
].map((part) => `${part} price`);

/** What is worked out for each zone, from column B on. */
const zoneFormulas: Formulas = {
  ...decisionFormulas,
  ...summed('Washed area', 'Water', 'Pre-wet water', 'Water below', 'Mist water', 'Mix water', 'Rinse water'),
  ...summed('Re-clean water', 'Water taken up', 'Mixed cleaner', 'Concentrate', 'Runoff', 'Neutralizer'),
  ...summed('Sodium bicarbonate', 'Soda ash', 'Masking', 'Film to buy', 'Tape', 'Cleaner price'),
  ...summed(...ownHeadings.filter((heading) => heading !== 'Zone set-up hours')),
  'Zone set-up hours': `(${['Walls[First],1', ...CLASSES.map((of) => `Walls[Later],1,Walls[Class],${of}`)]
    .map((rows) => `IF(COUNTIFS(Walls[Zone],[Name],${rows})>0,1,0)`)
    .join('+')})*${f('setup.zone')}`,
  'Own hours': plus(ownHeadings),
  Part: '[Own hours]/SUM(Zones[Own hours])',
  'Sample hours': ofJob('Job!$B$4'),
  'Mobilize hours': ofJob(f('mobilize.hours')),
  'Protect hours': ofJob(f('protect.hours')),
  Days: `([Own hours]+[Sample hours]+[Mobilize hours]+[Protect hours])/(${TEAM}*${f('teams')}*(${f('shift')}-${f('setup.perDay')}))`,
  'Set-up hours': `[Days]*${f('setup.perDay')}*${TEAM}*${f('teams')}`,
  'Labor-hours': '[Own hours]+[Sample hours]+[Mobilize hours]+[Protect hours]+[Set-up hours]',
  'Crew-hours': `[Labor-hours]/(${TEAM}*${f('teams')})`,
  'Rental days': ofJob('Job!$B$6'),
  'Labor price': `[Labor-hours]*${f('price.labor')}`,
  'Masking price': `[Film to buy]*${f('price.film')}+[Tape]*${f('price.tape')}`,
  'Water price': `[Water]*${f('price.water')}`,
  'Equipment price': `[Rental days]*${f('price.equipment')}`,
  'Access price': `[Rental days]*${f('price.access')}`,
  'Neutralizer price': `[Sodium bicarbonate]*${f('price.bicarbonate')}+[Soda ash]*${f('price.sodaAsh')}`,
  'Disposal price': `[Runoff]*${f('price.disposal')}`,
  'Mobilization price': ofJob(f('price.mobilization')),
  'Protection price': ofJob(f('price.protection')),
  'Fixed sums': ofJob(f('price.fixed')),
  Supervision: `[Labor price]*${f('price.supervision')}`,
  Supervised: `${plus(directHeadings)}+[Fixed sums]+[Supervision]`,
  Contingency: `[Supervised]*${f('price.contingency')}`,
  Overhead: `([Supervised]+[Contingency])*${f('price.overhead')}`,
  Profit: `([Supervised]+[Contingency]+[Overhead])*${f('price.profit')}`,
  'Before minimum': '[Supervised]+[Contingency]+[Overhead]+[Profit]',
  'Added to reach the minimum': ofJob('Job!$B$7'),
  Price: '[Before minimum]+[Added to reach the minimum]',
};

/** What the formulas came to, and how long the engine took to work each of them out once. */
export interface NativeResult {
  readonly totals: Map<string, ZoneTotals>;
  readonly milliseconds: number;
}

/**
 * Works the model out as ordinary formulas in the workbench's spreadsheet.
 * @param walls a headed range, its headings spelled as ours, with levels from 1 to 4
 * @param factors the factors in force
 * @returns the totals of each zone, and the time
 */
export async function nativeFormulas(
  walls: readonly (readonly unknown[])[],
  factors: FactorsInForce,
): Promise<NativeResult> {
  const [header = [], ...rows] = walls as CellValue[][];
  const names = [...new Set(rows.map((row) => row[header.indexOf('Zone')] as string))];
  const headings: Readonly<Record<string, readonly string[]>> = {
    Walls: [...header.map(String), ...Object.keys(rowFormulas)],
    Zones: ['Name', ...Object.keys(zoneFormulas)],
  };
  const last: Readonly<Record<string, number>> = {
    Walls: walls.length,
    Zones: names.length + 1,
  };
  const filled = (formula: string, sheet: string, row: number): string =>
    formula
      .replace(/(Walls|Zones)\[([^\]:]+):?([^\]]*)\]/g, (_, of: string, from: string, to: string) => {
        const letters = (heading: string): string => columnLetters(headings[of]?.indexOf(heading) ?? NaN);
        return `${of}!$${letters(from)}$2:$${letters(to || from)}$${last[of] ?? NaN}`;
      })
      .replace(/\[([^\]]+)\]/g, (_, heading: string) =>
        cellAddress(row, headings[sheet]?.indexOf(heading) ?? NaN),
      );
  const line = (sheet: string, row: number, values: readonly CellValue[], formulas: Formulas) => [
    ...values.map((value, column): EngineCell => ({ row, column, value })),
    ...Object.values(formulas).map((formula, index): EngineCell => ({
      row,
      column: values.length + index,
      value: null,
      formula: filled(formula, sheet, row),
    })),
  ];
  const used = 'IF(COUNTIFS(Walls[Material],A@,Walls[Washed area],">0")>0,1,0)';
  const sheets: EngineSheet[] = [
    {
      name: 'Walls',
      cells: rows.flatMap((row, index) =>
        line('Walls', index + 1, [...row, ''].slice(0, header.length), rowFormulas),
      ),
    },
    { name: 'Zones', cells: names.flatMap((name, index) => line('Zones', index + 1, [name], zoneFormulas)) },
    {
      name: 'Job',
      cells: jobFormulas.map((formula, row) => ({
        row,
        column: 1,
        value: null,
        formula: filled(formula, 'Job', row),
      })),
    },
    {
      name: 'Factors',
      cells: table.flatMap(({ id, kind }, row) =>
        line('Factors', row, [id, show(factors.value(id), coherentKind(kind), 'US')], {}),
      ),
    },
    {
      name: 'Constants',
      cells: Object.entries(constants).flatMap(([id, { value, kind }], row) =>
        line('Constants', row, [id, show(value, kind, 'US')], {}),
      ),
    },
    {
      name: 'Materials',
      cells: factors.materials.flatMap((of, row) =>
        line(
          'Materials',
          row,
          [
            ...[
              of.name,
              of.ceiling,
              show(of.suction, 'massPerArea', 'US'),
              show(of.pressure, 'pressure', 'US'),
            ],
            ...[of.masonry, of.texture === 'rough', of.group === 'glass'].map(Number),
          ],
          { Used: filled(used.replace('@', String(row + 1)), 'Materials', row) },
        ),
      ),
    },
  ];
  const engine = new Engine(sheets, [], () => null);
  const passes: number[] = [];
  const results = await engine.calculate(() => passes.push(performance.now()));
  engine.dispose();
  const [first = NaN, second = NaN] = passes;
  const totals = new Map(
    names.map((name, index) => {
      const cells = Object.keys(zoneFormulas).map((heading, column): [string, number] => [
        heading,
        Number(results.get(placeKey('Zones', cellAddress(index + 1, column + 1)))),
      ]);
      return [name, Object.fromEntries(cells)];
    }),
  );
  return { totals, milliseconds: second - first };
}
