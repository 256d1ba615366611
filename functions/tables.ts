import { show, unitOf } from '../src/quantity/systems';
import { factors as factorTable } from '../src/rules/factors';
import { readFactors, shownStart } from '../src/rules/read-factors';
import { sources } from '../src/rules/sources';
import { FACTORS } from './arguments';
import { heading } from './cells';
import type { CellValue, WorksheetFunction } from './worksheet-function';

/** The factors in force. */
export const factorsFunction: WorksheetFunction = {
  name: 'FACTORS',
  description:
    'Spills every factor in force with unit, source and kind of source; your own values are marked override.',
  parameters: [FACTORS],
  result: 'matrix',
  unit: 'text',
  rule: 'the table of factors, the values of your own on top',
  example: '=WASH.FACTORS(Factors[#All])',
  run: ([range]) => {
    const inForce = readFactors(range);
    const { system } = inForce;
    const lines = factorTable.map((factor): CellValue[] => {
      const own = inForce.overridden(factor.id);
      const source = own ? sources.factors : sources[factor.source];
      return [
        factor.id,
        show(inForce.value(factor.id), factor.kind, system),
        unitOf(factor.kind, system),
        own ? 'override' : factor.sourceKind,
        shownStart(factor, system),
        factor.meaning,
        source.document,
      ];
    });
    const chosen = inForce.chosenClass;
    return [
      ['Factor', 'Value', 'Unit', 'Kind of source', 'Starting value', 'Meaning', 'Source'],
      [
        'units',
        system,
        '',
        'input',
        'US',
        'units of the wall rows, the factors and the results: US or SI',
        '',
      ],
      [
        'cleaner.class',
        chosen ?? 'by need',
        '1',
        chosen === undefined ? 'published' : 'override',
        'by need',
        'cleaner class of your own choice, never above the ceiling; by need: the gentlest that does the work',
        chosen === undefined ? sources.tn20.document : sources.factors.document,
      ],
      ...lines,
    ];
  },
};

/** The materials in force. */
export const materialsFunction: WorksheetFunction = {
  name: 'MATERIALS',
  description: 'Spills every material in force; your own values are marked override.',
  parameters: [FACTORS],
  result: 'matrix',
  unit: 'text',
  rule: 'the table of materials, the values of your own on top',
  example: '=WASH.MATERIALS(Factors[#All])',
  run: ([range]) => {
    const { materials, system } = readFactors(range);
    return [
      [
        'Code',
        'Material',
        'Ceiling',
        heading('Suction', 'suction', system),
        heading('Pressure', 'pressure', system),
        'Kind of source',
        'Override',
        'Why',
      ],
      ...materials.map((row) => [
        row.code,
        row.name,
        row.ceiling,
        show(row.suction, 'suction', system),
        show(row.pressure, 'pressure', system),
        row.kind,
        row.overridden.join(', '),
        row.why,
      ]),
    ];
  },
};

/** The sources. */
export const sourcesFunction: WorksheetFunction = {
  name: 'SOURCES',
  description: 'Spills every source that a rule, factor or material rests on.',
  parameters: [],
  result: 'matrix',
  unit: 'text',
  rule: 'the table of sources',
  example: '=WASH.SOURCES()',
  run: () => [
    ['Source', 'Document', 'Edition', 'Section', 'Used for', 'Kind of source'],
    ...Object.entries(sources).map(([id, { document, edition, section, used, kind }]) => [
      id,
      document,
      edition,
      section,
      used,
      kind,
    ]),
  ],
};
