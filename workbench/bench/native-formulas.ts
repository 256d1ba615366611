import { coherentKind, show, take } from '../../src/quantity/systems';
import { constants, type ConstantId } from '../../src/rules/constants';
import { factors as table, type FactorId } from '../../src/rules/factors';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { Engine, placeKey, type EngineCell, type EngineSheet } from '../engine/engine';
import { cellAddress, columnLetters } from '../xlsx/address';
import type { CellValue } from '../xlsx/cell-value';
import type { ZoneTotals } from './bare-loop';

// The model as an estimator would build it in a spreadsheet without functions of their own: a formula a row and
// quantity, sums a zone, and factors, constants and materials in cells. US units throughout. In a formula a heading in
// brackets stands for the cell of its own row, one in double brackets for the whole column of the walls.

type Formulas = Readonly<Record<string, string>>;

const LEVELS = [1, 2, 3, 4];

const f = (id: FactorId): string => `Factors!$B$${table.findIndex((row) => row.id === id) + 1}`;
const c = (id: ConstantId): string => `Constants!$B$${Object.keys(constants).indexOf(id) + 1}`;
const SUCTION = String(show(take(1, 'suction', 'US'), 'massPerArea', 'US'));

const ofMaterial = (column: number): string => `VLOOKUP([Material],Materials!$A$1:$C$99,${column},FALSE)`;
const byResidue = (light: string, moderate: string, heavy: string): string =>
  `IF([Residue]="heavy",${heavy},IF(OR([Residue]="light",AND([Residue]="",[Brushed]="yes")),${light},${moderate}))`;
const effort = (['M', 'S', 'O'] as const).reduce(
  (rest, type) =>
    `IF([Mortar]="${type}",(${f(`mortar.${type}.strength`)}/${f('mortar.N.strength')})^${f('mortar.effortExponent')},${rest})`,
  '1',
);

/** What is worked out for each row; what is read from its zone stands in front. */
const rowFormulas: Formulas = {
  'Zone line': 'MATCH([Zone],Zones!$A$2:$A$99,0)',
  'Class of zone': 'INDEX(Zones!$E$2:$E$99,[Zone line])',
  'Contact of zone': 'INDEX(Zones!$G$2:$G$99,[Zone line])',
  'Run-off of zone': 'INDEX(Zones!$H$2:$H$99,[Zone line])',
  'Dilution of zone': 'INDEX(Zones!$I$2:$I$99,[Zone line])',
  'Acid of zone': 'INDEX(Zones!$J$2:$J$99,[Zone line])',
  Ceiling: ofMaterial(2),
  Sorptivity: `IF([Suction]="",${ofMaterial(3)},[Suction]*${SUCTION})/${f('water.density')}`,
  Need: `MIN(3,${byResidue(f('need.light'), f('need.moderate'), f('need.heavy'))}+IF(OR([Mortar]="M",[Mortar]="S"),${f('need.strongMortar')},0))`,
  Length: 'IF([Height]>0,[Area]/[Height],0)',
  'Washed area': 'IF([Masked]="yes",0,[Area]-[Openings])',
  'Water taken up': '[Washed area]*[Sorptivity]*SQRT([Contact of zone])',
  'Pre-wet water': '[Water taken up]+[Washed area]*[Run-off of zone]',
  'Rinse water': '[Washed area]*Job!$B$1',
  'Mixed cleaner': `IF([Class of zone]=0,0,[Washed area]/${f('cleaner.coverage')}*${f('cleaner.applications')})`,
  Concentrate: '[Mixed cleaner]/(1+[Dilution of zone])',
  'Mix water': '[Mixed cleaner]-[Concentrate]',
  Water: '[Pre-wet water]+[Mix water]+[Rinse water]',
  Runoff: `([Water]+[Concentrate]-[Water taken up])*${f('runoff.captured')}`,
  'Sodium bicarbonate': `[Concentrate]*[Acid of zone]*(1-${f('neutralizer.sodaAsh')})/${c('acidPerNaHCO3')}*${c('molarMassNaHCO3')}`,
  'Soda ash': `[Concentrate]*[Acid of zone]*${f('neutralizer.sodaAsh')}/${c('acidPerNa2CO3')}*${c('molarMassNa2CO3')}`,
  Neutralizer: '[Sodium bicarbonate]+[Soda ash]',
  Perimeter:
    'IF([Masked]="yes",IF([Height]>0,2*([Area]/[Height]+[Height]),4*SQRT([Area])),[Opening perimeter])',
  Covered: 'IF([Masked]="yes",0,[Fixtures])',
  Lapped: `IF([Masked]="yes",[Area],[Openings])+[Perimeter]*${f('mask.lap')}`,
  Masking: `[Lapped]+[Covered]*${f('fixture.film')}`,
  'Film to buy': `[Masking]*(1+${f('film.waste')})`,
  Tape: `[Perimeter]*(1+${f('tape.waste')})`,
  'Mask hours': `[Lapped]/${f('rate.maskOn')}+[Covered]*${f('fixture.cover')}/60`,
  'Unmask hours': `[Masking]/${f('rate.maskOff')}`,
  'Scrape hours': `[Washed area]/${byResidue(f('rate.scrape.light'), f('rate.scrape.moderate'), f('rate.scrape.heavy'))}*${effort}`,
  'Scrub hours': `[Washed area]/${f('rate.scrub')}*MAX(0,[Need]-[Class of zone])`,
};

/** What holds for the whole job, in column B of its sheet. */
const jobFormulas: readonly string[] = [
  `${f('nozzle.number')}*${c('ratedFlow')}*SQRT(${f('nozzle.pressure')}/${c('ratedPressure')})/${f('rate.rinse')}*${f('rinse.count')}`,
  `${c('evaporationCoefficient')}*MAX(0,MAX(0,${f('weather.surface')}+18)^2.5-${f('weather.humidity')}*MAX(0,${f('weather.air')}+18)^2.5)*(${f('weather.wind')}+4)`,
  `MIN(${f('dwell.most')},IF(B2>0,${f('weather.film')}*${f('water.density')}/B2*60,${f('dwell.most')}))`,
  `MIN(${f('rate.apply')},${f('rate.rinse')})`,
  `MAX(${f('rate.apply')},${f('rate.rinse')})`,
  `MIN(B3*B4,(B3-${f('dwell.least')})/(1/B4-1/B5))`,
  `MAX(0,${f('dwell.least')}-B6/B5)`,
];
const PATCH = 'Job!$B$6';
const WAIT = 'Job!$B$7';

const sum = (heading: string): [string, string] => [heading, `SUMIFS([[${heading}]],[[Zone]],[Name])`];
const summed = (...headings: string[]): Formulas => Object.fromEntries(headings.map(sum));
const hours = (minutes: string): string => `${minutes}*${f('crew')}/60`;
const byClass = (of: (cleanerClass: 1 | 2 | 3) => FactorId): string =>
  `IF([Class]=0,0,CHOOSE([Class],${([1, 2, 3] as const).map((one) => f(of(one))).join(',')}))`;
const lengths = LEVELS.map((level) => `SUMIFS([[Length]],[[Zone]],[Name],[[Level]],${level})`).join(',');

/** What is worked out for each zone, from column B on. */
const zoneFormulas: Formulas = {
  Ceiling: 'MINIFS([[Ceiling]],[[Zone]],[Name],[[Masked]],"no")',
  Need: 'MAXIFS([[Need]],[[Zone]],[Name],[[Masked]],"no")',
  Sorptivity: 'MAXIFS([[Sorptivity]],[[Zone]],[Name],[[Masked]],"no")',
  Class: 'MIN([Ceiling],[Need])',
  Residual: `IF([Sorptivity]=0,99,${f('prewet.residualUptake')}/${f('water.density')}/[Sorptivity])`,
  Contact: `IF([Class]=0,0,MAX(${f('prewet.leastPasses')},ROUNDUP((MAX(0,${f('dwell.most')}-[Residual]^2)/(2*[Residual]))^2/${f('prewet.passContact')}-1E-9,0))*${f('prewet.passContact')})`,
  'Run-off': `[Contact]/${f('prewet.passContact')}*${f('prewet.runoffPerPass')}`,
  Dilution: byClass((one) => `cleaner.dilution.${one}`),
  Acid: `IF([Class]<2,0,IF([Class]=2,${f('acid.2.density')}*${f('acid.2.fraction')},${f('acid.3.density')}*${f('acid.3.fraction')}))/${c('molarMassHCl')}`,
  ...summed('Washed area', 'Water', 'Pre-wet water', 'Mix water', 'Rinse water', 'Water taken up'),
  ...summed('Mixed cleaner', 'Concentrate', 'Runoff', 'Neutralizer', 'Sodium bicarbonate', 'Soda ash'),
  ...summed('Masking', 'Film to buy', 'Tape', 'Scrape hours', 'Mask hours', 'Scrub hours', 'Unmask hours'),
  Patches: `IF([Class]=0,0,ROUNDUP([Washed area]/${PATCH}-1E-9,0))`,
  'Pre-wet hours': hours('[Patches]*[Contact]'),
  'Apply hours': hours(
    `IF([Class]=0,0,[Patches]*(${PATCH}/${f('rate.apply')}*${f('cleaner.applications')}+${WAIT})-MAX(0,[Patches]-1)*MIN([Contact],${WAIT}))`,
  ),
  'Rinse hours': hours(
    `IF([Class]=0,[Washed area],[Patches]*${PATCH})/${f('rate.rinse')}*${f('rinse.count')}`,
  ),
  'Move hours': hours(`ROUNDUP(MAX(${lengths})/${f('access.dropWidth')}-1E-9,0)*${f('access.move')}`),
  'Other hours':
    '[Scrape hours]+[Mask hours]+[Pre-wet hours]+[Apply hours]+[Scrub hours]+[Rinse hours]+[Unmask hours]+[Move hours]',
  Days: `[Other hours]/(${f('crew')}*(${f('shift')}-${f('setup.perDay')}))`,
  'Set-up hours': `[Days]*${f('setup.perDay')}*${f('crew')}`,
  'Crew-hours': '[Other hours]+[Set-up hours]',
  'Labour price': `[Crew-hours]*${f('price.labour')}`,
  'Cleaner price': `[Concentrate]*${byClass((one) => `price.cleaner.${one}`)}`,
  'Masking price': `[Film to buy]*${f('price.film')}+[Tape]*${f('price.tape')}`,
  'Water price': `[Water]*${f('price.water')}`,
  'Equipment price': `[Days]*${f('price.equipment')}`,
  'Access price': `[Days]*${f('price.access')}`,
  'Neutralizer price': `[Sodium bicarbonate]*${f('price.bicarbonate')}+[Soda ash]*${f('price.sodaAsh')}`,
  'Disposal price': `[Runoff]*${f('price.disposal')}`,
  Direct:
    '[Labour price]+[Cleaner price]+[Masking price]+[Water price]+[Equipment price]+[Access price]+[Neutralizer price]+[Disposal price]',
  Contingency: `[Direct]*${f('price.contingency')}`,
  Overhead: `([Direct]+[Contingency])*${f('price.overhead')}`,
  Profit: `([Direct]+[Contingency]+[Overhead])*${f('price.profit')}`,
  Price: '[Direct]+[Contingency]+[Overhead]+[Profit]',
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
  const wallHeadings = [...header.map(String), ...Object.keys(rowFormulas)];
  const zoneHeadings = ['Name', ...Object.keys(zoneFormulas)];
  const names = [...new Set(rows.map((row) => row[header.indexOf('Zone')] as string))];
  const last = walls.length;
  const filled = (formula: string, headings: readonly string[], row: number): string =>
    formula
      .replace(/\[\[([^\]]+)\]\]/g, (_, heading: string) => {
        const letters = columnLetters(wallHeadings.indexOf(heading));
        return `Walls!$${letters}$2:$${letters}$${last}`;
      })
      .replace(/\[([^\]]+)\]/g, (_, heading: string) => cellAddress(row, headings.indexOf(heading)));
  const line = (
    row: number,
    values: readonly CellValue[],
    formulas: Formulas,
    headings: readonly string[],
  ) => [
    ...values.map((value, column): EngineCell => ({ row, column, value })),
    ...Object.values(formulas).map((formula, index): EngineCell => ({
      row,
      column: values.length + index,
      value: null,
      formula: filled(formula, headings, row),
    })),
  ];
  const sheets: EngineSheet[] = [
    {
      name: 'Walls',
      cells: rows.flatMap((row, index) =>
        line(index + 1, [...row, ''].slice(0, header.length), rowFormulas, wallHeadings),
      ),
    },
    {
      name: 'Zones',
      cells: names.flatMap((name, index) => line(index + 1, [name], zoneFormulas, zoneHeadings)),
    },
    {
      name: 'Job',
      cells: jobFormulas.map((formula, row) => ({ row, column: 1, value: null, formula })),
    },
    {
      name: 'Factors',
      cells: table.flatMap(({ id, kind }, row) =>
        line(row, [id, show(factors.value(id), coherentKind(kind), 'US')], {}, []),
      ),
    },
    {
      name: 'Constants',
      cells: Object.entries(constants).flatMap(([id, { value, kind }], row) =>
        line(row, [id, show(value, kind, 'US')], {}, []),
      ),
    },
    {
      name: 'Materials',
      cells: factors.materials.flatMap(({ name, ceiling, suction }, row) =>
        line(row, [name, ceiling, show(suction, 'massPerArea', 'US')], {}, []),
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
