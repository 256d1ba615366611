import { shownUnit } from '../src/quantity/shown-unit';
import { show, unitOf } from '../src/quantity/systems';
import { classLine, unitsLine } from '../src/rules/factor-lines';
import { factors as factorTable, type Factor, type FactorId } from '../src/rules/factors';
import { readFactors, shownStart } from '../src/rules/read-factors';
import { sources, type Source } from '../src/rules/sources';
import { RULES_VERSION } from '../src/rules/version';
import { heading } from './cells';
import type { CellValue, Run } from './worksheet-function';

/** Spills the factors in force. */
export const runFactors: Run = ([range]) => {
  const inForce = readFactors(range);
  const { system } = inForce;
  const lines = factorTable.map((factor: Factor & { id: FactorId }): CellValue[] => {
    const own = inForce.overridden(factor.id);
    const source = own
      ? inForce.note(factor.id) || sources.factors.document
      : sources[factor.source].document;
    const value = factor.choices
      ? inForce.choice(factor.id)
      : asTyped(show(inForce.value(factor.id), factor.kind, system), factor.kind);
    return [
      factor.id,
      factor.unset && !own ? '' : value,
      factor.choices ? '' : shownUnit(unitOf(factor.kind, system)),
      own ? 'override' : factor.sourceKind,
      shownStart(factor, system),
      factor.meaning,
      source,
      factor.bracket ?? '',
    ];
  });
  const chosen = inForce.chosenClass;
  return [
    [
      'Factor',
      'Value',
      'Unit',
      'Kind of source',
      'Starting value',
      'Meaning',
      `Source (rules ${RULES_VERSION})`,
      'Published for like work',
    ],
    [unitsLine.id, system, '', 'input', unitsLine.start, unitsLine.meaning, '', ''],
    [
      classLine.id,
      chosen ?? classLine.start,
      '1',
      chosen === undefined ? 'assumption' : 'override',
      classLine.start,
      classLine.meaning,
      chosen === undefined
        ? sources.estimate.document
        : inForce.note(classLine.id) || sources.factors.document,
      '',
    ],
    ...lines,
  ];
};

/** A percent between 0 and 1 is a text, so that it is read as such where the spill is a range of factors. */
function asTyped(value: number, kind: Factor['kind']): number | string {
  return kind === 'percent' && value > 0 && value < 1 ? `${String(Number(value.toPrecision(15)))}%` : value;
}

/** Spills the materials in force. */
export const runMaterials: Run = ([range]) => {
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
      'Your names',
      'Also called',
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
      row.yourNames.join(', '),
      row.aliases.join(', '),
    ]),
  ];
};

/** Spills the sources. */
export const runSources: Run = () => [
  ['Source', 'Document', 'Edition', 'Section', 'Used for', 'Kind of source', 'Address'],
  ...Object.entries<Source>(sources).map(([id, { document, edition, section, used, kind, address = '' }]) => [
    id,
    document,
    edition,
    section,
    used,
    kind,
    address,
  ]),
];
