import { addedQuantities, hourParts, quantityIds, washHours } from '../../src/estimate/quantities';
import { coherentKind, show, take } from '../../src/quantity/systems';
import { accessKinds } from '../../src/rules/access-kinds';
import { constants, type ConstantId } from '../../src/rules/constants';
import { factors as table, type FactorId } from '../../src/rules/factors';
import { methods, type MethodId } from '../../src/rules/methods';
import { mortarTypes } from '../../src/rules/mortars';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { Engine, placeKey, type EngineCell, type EngineSheet } from '../engine/engine';
import { cellAddress, columnLetters } from '../xlsx/address';
import type { CellValue } from '../xlsx/cell-value';
import type { ZoneTotals } from './bare-loop';
import { sheetFormula } from './sheet-formula';

// The model as an estimator would build it in a spreadsheet without functions of their own: a formula a row and
// quantity, a line a zone with each set of cleaners for its masked masonry, and factors, constants and materials in cells.
// US units throughout. Arithmetic is printed from the table of rules; which case holds, what is looked up and what is
// summed is written here. In a formula a heading in brackets stands for the cell of its own line, and `Sheet[Heading]` for
// a whole column, or `Sheet[From:To]` for columns side by side. A printed column is headed by the symbol of its rule.

type Formulas = Readonly<Record<string, string>>;

/** A rule whose entry says how it is worked out. */
type PrintedId = {
  [Id in MethodId]: (typeof methods)[Id] extends { readonly is: string } ? Id : never;
}[MethodId];

const LEVELS = [1, 2, 3, 4];
const CLASSES = [0, 1, 2, 3] as const;
// Few cleaners first, then gentle ones.
const SETS = ['0', '1', '2', '3', '01', '02', '12', '03', '13', '23', '012', '013', '023', '123', '0123'];
const ALL_SETS = `[Set ${SETS[0] ?? ''}]:[Set ${SETS.at(-1) ?? ''}]`;
const NEVER = '1E+99';
const GUARD = '(1-1E-9)';

const f = (id: FactorId): string => `Factors!$B$${table.findIndex((row) => row.id === id) + 1}`;
const c = (id: ConstantId): string => `Constants!$B$${Object.keys(constants).indexOf(id) + 1}`;
const factorIds = new Map(table.map(({ id }) => [id.replaceAll('.', '_'), id]));
const SUCTION = String(show(take(1, 'suction', 'US'), 'massPerArea', 'US'));

const materialColumns = ['Ceiling', 'Suction', 'Pressure', 'Masonry', 'Rough', 'Glass'] as const;
const ofMaterial = (column: (typeof materialColumns)[number]): string =>
  `VLOOKUP([Material],Materials!$A$1:$G$99,${materialColumns.indexOf(column) + 2},FALSE)`;
const ofZone = (heading: string): string => `INDEX(Zones[${heading}],[Zone line])`;
const ofLevel = (heading: string): string =>
  `INDEX(Zones[${heading} 0:${heading} 4],[Zone line],IF([Level]="",0,[Level])+1)`;
const byClass = (of: (cleanerClass: string) => string): string =>
  `CHOOSE([Class]+1,${CLASSES.map((each) => of(String(each))).join(',')})`;
const usualAccess = `CHOOSE(${f('access.kind')}+1,${accessKinds.map((kind) => `"${kind}"`).join(',')})`;

const byWord = (
  heading: string,
  words: readonly string[],
  of: (word: string) => string,
  rest: string,
): string => words.reduce((others, word) => `IF([${heading}]="${word}",${of(word)},${others})`, rest);

/** How a sheet tells which factor of several holds for a row, by what an expression has in braces. */
const choices: Readonly<Record<string, (of: (value: string) => string) => string>> = {
  class: byClass,
  kind: (of) => byWord('Reached', accessKinds, of, '1'),
  residue: (of) =>
    byWord(
      'Residue',
      ['light', 'heavy'],
      of,
      `IF(AND([Residue]="",OR([Brushed]="yes",[Brushed]="priced")),${of('light')},${of('moderate')})`,
    ),
  texture: (of) => `IF(${ofMaterial('Rough')}=1,${of('rough')},${of('smooth')})`,
  type: (of) => byWord('Mortar', mortarTypes, of, of('N')),
};
const CHOICE = new RegExp(String.raw`\$(${Object.keys(choices).join('|')})(?![a-z])`);

const symbolOf = (rule: PrintedId): string => methods[rule].symbol.replace(/\W$/, '');
const bySymbol = (...rules: PrintedId[]): Map<string, PrintedId> =>
  new Map(rules.map((rule) => [symbolOf(rule), rule]));

/** Rules without a column of their own: they are written within the formulas that take them. */
const within = new Map([
  ...bySymbol('sorptivity', 'rinsePressure', 'nozzleFlow', 'applyTime', 'leftToBrush', 'timeToDry'),
  ...bySymbol('beforeBelow', 'belowWork', 'helpersExcess', 'belowPerArea', 'prewetWater', 'mist'),
  ...bySymbol('rinsePerArea', 'fixtureArea', 'positions', 'aboveGround'),
]);

const ofItsClass = (symbol: string, ofWater = `[${symbol} 0]`): string =>
  byClass((of) => (of === '0' ? ofWater : `[${symbol} ${of}]`));

/** What stands for a symbol: its cell, or its rule. Without a mark of row or zone it is a factor, a constant or of the job. */
function cellOf(marked: string, own: Formulas): string {
  const symbol = marked.replace(/\$$/, '');
  const { [symbol]: given } = own;
  if (given !== undefined) return given;
  const [mark = '', name = ''] = CHOICE.exec(symbol) ?? [];
  const choose = choices[name];
  if (choose) {
    return choose((value) => {
      const id = factorIds.get(symbol.replace(mark, value));
      // Clear water, say, has no dilution.
      return id === undefined ? '0' : f(id);
    });
  }
  const id = factorIds.get(symbol);
  if (id !== undefined) return f(id);
  if (symbol in constants) return c(symbol as ConstantId);
  const rule = within.get(symbol);
  if (rule !== undefined) return `(${by(rule, own)})`;
  return symbol === marked ? `Job[${symbol}]` : `[${symbol}]`;
}

const text = (expression: string, own: Formulas = {}): string =>
  sheetFormula(expression, (symbol) => cellOf(symbol, own));

/** The formula of a rule; `own` says what stands for symbols, and for what is in braces, where that is no cell. */
function by(rule: PrintedId, own: Formulas = {}): string {
  return text(methods[rule].is, own);
}

/** Columns of rules, each headed by the symbol of its rule. */
function printed(
  rules: readonly PrintedId[],
  own: Formulas = {},
  how = (formula: string) => formula,
): Formulas {
  return Object.fromEntries(rules.map((rule) => [symbolOf(rule), how(by(rule, own))]));
}

const cleaned = (formula: string): string => `IF([Cleaned]=1,${formula},0)`;
const freeInOneRinse = text('(team_size - onePerson) * rinseTime#');

const cycleRules = ['washPasses', 'scrubPass', 'patch', 'paced', 'wait', 'cycle', 'helpersFree'] as const;
const classRules = ['scrub', 'wettedBelow', 'teamTime'] as const;

/** What a class would take of a row; team-time on an area, and labor-hours of the row. */
function atClass(of: (typeof CLASSES)[number]): Formulas {
  const own: Formulas = {
    ...Object.fromEntries(
      [...cycleRules, ...classRules].map(symbolOf).map((name) => [name, `[${name} ${of}]`]),
    ),
    left_$class: f(`left.${of}`),
    load_$residue: '[load]',
    $slower: '[slower]',
    $quicker: text('min(applyTime#, rinseTime#)'),
    ...(of === 0 && { prewetWork: '0' }),
  };
  const water: Formulas = { ...printed(['oneRinse', 'clearWaterCycle'], own), free: freeInOneRinse };
  const all: Formulas = {
    ...printed(classRules, own),
    ...(of === 0 ? water : printed(cycleRules, own)),
    hours: `IF(OR(${of}>[Limit],[washPasses ${of}]>${f('cleaner.mostApplications')}),${NEVER},[Masonry]*${by('hoursAtClass', own)})`,
  };
  return Object.fromEntries(Object.entries(all).map(([symbol, formula]) => [`${symbol} ${of}`, formula]));
}

const sum = (headings: readonly string[]): string => headings.map((heading) => `[${heading}]`).join('+');
const hours = (work: string): string =>
  text('bareArea# * {work} * slowed# / minPerHour / working_share', { $work: `(${work})` });
const ofCycle: Formulas = Object.fromEntries(
  ['patch', 'paced', 'wait'].map((symbol) => [symbol, ofItsClass(symbol, '0')]),
);

/** What is worked out for each row; what is read from its wash stands among it. */
const rowFormulas: Formulas = {
  Masonry: ofMaterial('Masonry'),
  Ceiling: ofMaterial('Ceiling'),
  Out: 'IF(OR([Masked]="only",AND([Masked]="yes",[Masonry]=0)),1,0)',
  Covered: 'IF(OR([Masked]="only",[Masked]="yes"),1,0)',
  bareArea: `IF([Out]=1,0,${by('bareArea')})`,
  washedArea: '[bareArea]*[Masonry]',
  First: 'IF(AND([Covered]=0,[bareArea]>0),1,0)',
  Later: 'IF(AND([Masked]="yes",[washedArea]>0),1,0)',
  'Zone line': 'MATCH([Zone],Zones[Name],0)',
  Limit: `MIN([Ceiling],${ofZone('Limit')})`,
  rowHeight: `IF([Height]="",${by('rowHeightAssumed')},${by('rowHeight')})`,
  foot: ofLevel('Foot'),
  stripBelow: ofLevel('Strip'),
  Reached: `IF([Access]="",${usualAccess},[Access])`,
  load: cellOf('load_$residue', {}),
  rinseTime: by('rinseTime', { $limit: ofMaterial('Pressure') }),
  fieldS: by('fieldSuction', { $suction: `IF([Suction]="",${ofMaterial('Suction')},[Suction]*${SUCTION})` }),
  prewetTime: `IF([fieldS]=0,0,IF(Job[spare]<=0,${text('(prewet_capacity / fieldS#)^2')},${by('prewetTime')}))`,
  ...printed(['accessOfRow', 'slowed', 'mortarEffort', 'slowerStep', 'passes', 'prewetWork']),
  ...Object.assign({}, ...CLASSES.map(atClass)),
  ...Object.fromEntries(
    SETS.map((set) => [`Set ${set}`, `IF([Later]=1,MIN(${set.replace(/./g, ',[hours $&]').slice(1)}),0)`]),
  ),
  'Least later': `INDEX(${ALL_SETS},${ofZone('Best set')})`,
  Class: `IF([Later]=1,${[0, 1, 2].reduceRight((rest, of) => `IF(AND(ISNUMBER(FIND("${of}",${ofZone('Best name')})),[hours ${of}]<=[Least later]*(1+1E-9)),${of},${rest})`, '3')},${ofZone('Class')})`,
  Cleaned: 'IF(AND([Masonry]=1,[Class]>0),1,0)',
  washPasses: `IF([Masonry]=1,${ofItsClass('washPasses')},1)`,
  wetted: `[Masonry]*${ofItsClass('wetted')}`,
  free: `IF([Masonry]=1,${ofItsClass('free')},${freeInOneRinse})`,
  prewetHours: hours('[Cleaned]*[prewetWork]'),
  applyHours: hours(cleaned(by('applyWork'))),
  scrubHours: hours(`[Masonry]*${by('scrubWork', { scrubTime: ofItsClass('scrubTime') })}`),
  rinseHours: hours(by('rinseWork')),
  tendHours: hours(by('tend', { prewetWork: '[Cleaned]*[prewetWork]', held: cleaned(by('held', ofCycle)) })),
  changeHours: hours(cleaned(by('changeWork', ofCycle))),
  belowHours: hours(by('belowWork')),
  ...printed(['reclean'], { $parts: sum(washHours) }),
  scaffoldHours: `IF([Reached]="scaffold",${by('scaffoldHours')},0)`,
  brushHours: `IF(AND([Brushed]="priced",[washedArea]>0),${by('brushDown')},0)`,
  glassHours: `IF([Masked]="only",0,${by('glass', { $surface: `IF(${ofMaterial('Glass')}=1,[Area],[Openings])` })})`,
  Shown: 'MAX([Later],1-[Covered])',
  perimeter: by('perimeter', {
    $edges: `[Covered]*IF([Height]="",${by('edgeFromArea')},${by('edgeFromHeight')})+[Shown]*IF([Opening perimeter]="",${by('openingsEdge')},[Opening perimeter])`,
  }),
  fixtures: '[Shown]*[Fixtures]',
  masked: by('masked', { $surface: 'IF([Covered]=1,[Area],[Openings])' }),
  ...printed(['scrape', 'moveHours', 'highScaffold']),
  ...printed(['lapArea', 'masking', 'film', 'tape', 'maskOn', 'maskOff']),
  ...printed(['absorbed', 'preWetWater', 'mistWater', 'cleanerMix'], {}, cleaned),
  ...printed(['absorbedWater', 'belowWater', 'rinseWater', 'recleanWater', 'mixWater', 'water', 'runoff']),
  ...printed(['concentrate', 'priceCleaner', 'acid', 'bicarbonate', 'sodaAsh', 'neutralizer']),
};

/** What holds for the whole job, a cell each in its sheet. */
const jobFormulas: Formulas = {
  ...printed(['spare', 'evaporation', 'jobHours', 'jobDays', 'hireDays', 'shortOfMinimum']),
  mistings: `IF(Job[evaporation]<=0,0,${by('mistings')})`,
  jobOwnHours: 'SUM(Zones[ownHours])',
  jobSampleHours: by('samplePanels', { $panels: 'SUM(Materials!$H$1:$H$99)' }),
  jobPrice: 'SUM(Zones[priceBefore])',
};

const below = (level: number, of: (level: number) => string): string =>
  LEVELS.filter((next) => level > 0 && next > level)
    .map(of)
    .join('+') || '0';

const least = (of: number): string =>
  `IF([hours ${of}]>=[Least ${of - 1}]*${GUARD},[Least ${of - 1}],[hours ${of}])`;

/** How a zone stands, and what its rows are washed with. */
const decisionFormulas: Formulas = {
  Limit: 'MINIFS(Walls[Ceiling],Walls[Zone],[Name],Walls[First],1)',
  ...Object.fromEntries(
    LEVELS.flatMap((level) => [
      [`Height ${level}`, `MAXIFS(Walls[rowHeight],Walls[Zone],[Name],Walls[Level],${level})`],
      [`Masonry ${level}`, `SUMIFS(Walls[washedArea],Walls[Zone],[Name],Walls[Level],${level})`],
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
    CLASSES.map((of) => [`hours ${of}`, `SUMIFS(Walls[hours ${of}],Walls[Zone],[Name],Walls[First],1)`]),
  ),
  'Least 0': '[hours 0]',
  'Least 1': least(1),
  'Least 2': least(2),
  'Least 3': least(3),
  Class: 'IF([Least 3]<[Least 2],3,IF([Least 2]<[Least 1],2,IF([Least 1]<[Least 0],1,0)))',
  ...Object.fromEntries(
    SETS.map((set) => [
      `Set ${set}`,
      `SUMIFS(Walls[Set ${set}],Walls[Zone],[Name])+${set.length}*${f('setup.zone')}/(1+${f('reclean.share')})`,
    ]),
  ),
  'Best set': `MATCH(MIN(${ALL_SETS}),${ALL_SETS},0)`,
  'Best name': `CHOOSE([Best set],${SETS.map((set) => `"${set}"`).join(',')})`,
};

const summed = [...quantityIds.filter((id) => addedQuantities[id].of === 'row'), 'priceCleaner'];
const ownHours = hourParts.filter((id) => addedQuantities[id].of === 'row' || id === 'zonesetupHours');
const WASHES = ['Walls[First],1', ...CLASSES.map((of) => `Walls[Later],1,Walls[Class],${of}`)];
const shared: Formulas = {
  sampleHours: 'jobSampleHours',
  mobilizeHours: 'mobilize_hours',
  protectHours: 'protect_hours',
  hireDays: 'jobHireDays',
  priceMobilization: 'price_mobilization',
  priceProtection: 'price_protection',
  priceFixed: 'price_fixed',
};

/** What is worked out for each zone, from column B on. */
const zoneFormulas: Formulas = {
  ...decisionFormulas,
  ...Object.fromEntries(summed.map((symbol) => [symbol, `SUMIFS(Walls[${symbol}],Walls[Zone],[Name])`])),
  zonesetupHours: by('zoneSetup', {
    $washes: `(${WASHES.map((rows) => `IF(COUNTIFS(Walls[Zone],[Name],${rows})>0,1,0)`).join('+')})`,
  }),
  ownHours: sum(ownHours),
  zoneShare: text('ownHours@ / jobOwnHours'),
  ...Object.fromEntries(Object.entries(shared).map(([of, job]) => [of, text(`${job} * zoneShare@`)])),
  laborHours: text('otherHours@ + setupHours@'),
  ...printed(['otherHours', 'days', 'setupHours', 'crewHours', 'priceLabor', 'priceMasking', 'priceWater']),
  ...printed(['priceEquipment', 'priceAccess', 'priceNeutralizer', 'priceDisposal', 'priceDirect']),
  ...printed(['priceSupervision', 'priceContingency', 'priceOverhead', 'priceProfit', 'priceBefore']),
  ...printed(['priceMinimum', 'price']),
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
    Job: Object.keys(jobFormulas),
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
      .replace(/Job\[([^\]]+)\]/g, (_, of: string) => `Job!$B$${(headings['Job']?.indexOf(of) ?? NaN) + 1}`)
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
  const used = 'IF(COUNTIFS(Walls[Material],A@,Walls[washedArea],">0")>0,1,0)';
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
      cells: Object.values(jobFormulas).map((formula, row) => ({
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
      const valueOf = (symbol: string): number => {
        const column = headings['Zones']?.indexOf(symbol) ?? NaN;
        return Number(results.get(placeKey('Zones', cellAddress(index + 1, column))));
      };
      const totals = quantityIds.map((id): [string, number] => [addedQuantities[id].heading, valueOf(id)]);
      return [name, Object.fromEntries([['Class', valueOf('Class')], ...totals])];
    }),
  );
  return { totals, milliseconds: second - first };
}
