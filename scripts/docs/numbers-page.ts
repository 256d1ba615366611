import { withUnit } from '../../src/quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../../src/quantity/systems';
import { toBase } from '../../src/quantity/conversions';
import { cleanerClasses, classInWords } from '../../src/rules/cleaner-classes';
import { constants, type ConstantId } from '../../src/rules/constants';
import { readFactorValue } from '../../src/rules/factor-value';
import { factors, type Factor, type FactorId } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { methods, type MethodId } from '../../src/rules/methods';
import { DEFAULT_MORTAR, isStrong, mortarTypes } from '../../src/rules/mortars';
import { shownStart } from '../../src/rules/read-factors';
import type { SourceKind } from '../../src/rules/source-kinds';
import { sources, type Source } from '../../src/rules/sources';
import { chapters, type Chapter } from './chapters';
import { expressionOf } from './expressions';
import { digits, page, table } from './markdown';

const KINDS: Readonly<Record<SourceKind, string>> = {
  published: 'read in the source, or in a page that quotes it',
  'common practice': 'what the trade does, without a document to cite',
  'from memory': 'known, but not read in a source at hand',
  assumption: 'our own estimate, to be replaced by yours',
  'yours to state': 'what only you can know; ours is a placeholder',
  computed: 'follows from the others by geometry and arithmetic',
  input: 'stated in a wall row',
  override: 'a value of your own in place of ours',
};

function shown(base: number, kind: Kind, system: System): string {
  return withUnit(digits(show(base, kind, system)), unitOf(kind, system));
}

function startOf(factor: Factor, system: System): string {
  const start = shownStart(factor, system);
  return typeof start === 'string' ? start : withUnit(digits(start), unitOf(factor.kind, system));
}

/** Both systems, or one where they are the same. */
function both(of: (system: System) => string): string {
  const [us, si] = [of('US'), of('SI')];
  return us === si ? us : `${us}; ${si}`;
}

function accepted(factor: Factor, system: System): string {
  const read = readFactorValue({ type: 'text', value: '' }, factor, system);
  return 'accepted' in read ? read.accepted.replace(/^a number /, '') : '';
}

function ruleLines(ids: readonly MethodId[]): string {
  return ids
    .map((id) => {
      const { rule, source, kind } = methods[id];
      const expression = expressionOf(id);
      return [`- ${rule} (${kind}, \`${source}\`)`, ...(expression ? [`  \`${expression}\``] : [])].join(
        '\\\n',
      );
    })
    .join('\n');
}

function factorTable(ids: readonly FactorId[]): string {
  const rows = factors.filter(({ id }) => ids.includes(id));
  return table(
    ['factor', 'meaning', 'starts at', 'accepted', 'kind', 'source', 'published for like work'],
    rows.map((factor: Factor) => [
      `\`${factor.id}\``,
      factor.meaning,
      both((system) => startOf(factor, system)),
      both((system) => accepted(factor, system)),
      factor.sourceKind,
      `\`${factor.source}\``,
      factor.bracket ?? '',
    ]),
  );
}

function constantTable(ids: readonly ConstantId[]): string {
  return table(
    ['constant', 'meaning', 'value', 'kind', 'source'],
    ids.map((id) => {
      const { value, kind, meaning, source, sourceKind } = constants[id];
      return [
        `\`${id}\``,
        meaning,
        both((system) => shown(value, kind, system)),
        sourceKind,
        `\`${source}\``,
      ];
    }),
  );
}

function chapterBlocks(chapter: Chapter): string[] {
  return [
    `## ${chapter.title}`,
    chapter.words,
    ruleLines(chapter.methods),
    chapter.factors.length > 0 ? factorTable(chapter.factors) : '',
    chapter.constants.length > 0 ? constantTable(chapter.constants) : '',
  ];
}

function classAndMaterialBlocks(): string[] {
  return [
    '### Cleaner classes',
    cleanerClasses.map((row) => `- ${classInWords(row.class)}: \`${row.source}\``).join('\n'),
    'Unbuffered acid is not offered. To choose a class yourself, set the factor `cleaner.class`; it never goes above the ceiling.',
    '### Materials',
    'Change a number with the factor `material.<code>.ceiling`, `.suction` or `.pressure`. All three together make a material of your own. The kind shown is that of the least certain number in the row.',
    table(
      ['code', 'material', 'ceiling', 'suction', 'maximum pressure', 'kind', 'why'],
      materials.map(({ code, name, ceiling, suction, pressure, kind, why }) => [
        `\`${code}\``,
        name,
        classInWords(ceiling),
        both((system) => shown(toBase(suction, 'g/30in2'), 'suction', system)),
        both((system) => shown(toBase(pressure, 'psi'), 'pressure', system)),
        kind,
        why,
      ]),
    ),
    '### Mortar',
    `The types of ASTM C270: ${mortarTypes.join(', ')}. Type ${DEFAULT_MORTAR} is assumed where none is stated; ${mortarTypes.filter(isStrong).join(' and ')} count as strong.`,
  ];
}

function sourceTable(): string {
  return table(
    ['source', 'document', 'edition', 'section', 'used for', 'kind', 'address'],
    Object.entries<Source>(sources).map(([id, { document, edition, section, used, kind, address = '' }]) => [
      `\`${id}\``,
      document,
      edition,
      section,
      used,
      kind,
      address,
    ]),
  );
}

function countOfKinds(): string {
  const kinds = (Object.keys(KINDS) as SourceKind[]).flatMap((kind) => {
    const count = factors.filter((factor) => factor.sourceKind === kind).length;
    return count > 0 ? [`${String(count)} ${kind}`] : [];
  });
  return `Of the ${String(factors.length)} factors, by kind: ${kinds.join(', ')}.`;
}

/**
 * The page of the rules, factors, materials, constants and sources.
 * @returns its text
 */
export function freshNumbersPage(): Promise<string> {
  const [first, ...others] = chapters();
  return page('docs/how-the-numbers-are-made.md', [
    '# How the numbers are made',
    'Made by `npm run docs` from the tables in `src/rules/`. In a workbook, `WASH.TRACE` shows the same rules with your own walls, line by line.',
    "**The product's label, its safety data sheet, local codes and licensed practice come before any number here.** Put your own value beside the id of a factor, and it replaces ours.",
    `Every number says what it is based on. ${countOfKinds()}`,
    Object.entries(KINDS)
      .map(([kind, words]) => `- **${kind}**: ${words}`)
      .join('\n'),
    'Below each rule is its formula as a trace writes it. A factor appears by its id, with `_` in place of `.`. Text in braces differs from row to row. `_given` marks a value in its customary unit, before conversion. `0 * x` is a zero with the unit of `x`. Where US units and SI differ, both are given.',
    ...(first ? [...chapterBlocks(first), ...classAndMaterialBlocks()] : []),
    ...others.flatMap(chapterBlocks),
    '## Sources',
    sourceTable(),
  ]);
}
