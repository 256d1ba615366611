import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/review/checks';
import { calcareousStones } from '../../src/rules/calcareous';
import { cautions, type CautionNumber } from '../../src/rules/cautions';
import { factors } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { siteSources, type SiteSourceId } from '../../src/rules/site-sources';
import type { SourceKind } from '../../src/rules/source-kinds';
import { sources, type Source } from '../../src/rules/sources';
import { checked, wall } from '../review/checked';

const ADDRESS = /^https:\/\/[a-z0-9-]+(\.[a-z0-9-]+)+\/\S+$/i;
/** What a reader cannot look up: it has no address. */
const WITHOUT_DOCUMENT: readonly SourceKind[] = [
  'common practice',
  'assumption',
  'yours to state',
  'override',
  'input',
  'computed',
];

/** What a reviewer needs to find a source again. */
function resolves(id: SiteSourceId): void {
  const { document, edition, section, address, kind }: Source = siteSources[id];
  expect(document, id).not.toBe('');
  if (kind !== 'published') return;
  expect([id, edition === '' || edition.includes('not at hand')]).toEqual([id, false]);
  expect([id, section === '']).toEqual([id, false]);
  expect([id, ADDRESS.test(address ?? '')]).toEqual([id, true]);
}

describe('the source of a caution', () => {
  it.each(cautions.map(({ id, source }) => [id, source] as const))('%s', (_, source) => {
    resolves(source);
  });

  it('is never a memory: the crew can look each of them up, or is told that it is practice or our own', () => {
    for (const { id, kind, source } of cautions)
      expect([id, kind, source]).not.toEqual([id, 'from memory', source]);
  });
});

describe('the table of sources', () => {
  const rows = Object.entries(siteSources) as [SiteSourceId, Source][];
  const published = rows.filter(([, { kind }]) => kind === 'published').map(([id]) => id);

  it.each(published)('%s can be followed by title, edition, section and address', (id) => {
    resolves(id);
  });

  it('has an address only where there is a document to read, and each by https', () => {
    for (const [id, { kind, address }] of rows) {
      const read = kind === 'published';
      expect([id, address !== undefined, ADDRESS.test(address ?? '')]).toEqual([id, read, read]);
    }
  });

  it('gives a title to every source, and nothing to read where there is nothing', () => {
    for (const [id, { document, edition, section, kind }] of rows) {
      expect([id, document.trim() === '']).toEqual([id, false]);
      if (WITHOUT_DOCUMENT.includes(kind)) expect([id, edition, section]).toEqual([id, '', '']);
    }
  });

  it('has no document and section twice under two ids', () => {
    const passages = rows.map(([, { document, section }]) => `${document}; ${section}`.toLowerCase());
    expect(passages.filter((passage, place) => passages.indexOf(passage) !== place)).toEqual([]);
  });

  it('leads to the text of the law itself where it cites the law', () => {
    const laws = rows.filter(([, { document }]) => / CFR /.test(document));
    const led = laws.map(([id, { document, address }]) => {
      const [, title = '', part = ''] = /^(\d+) CFR ([\d.]+)/.exec(document) ?? [];
      return [id, address === `https://www.ecfr.gov/current/title-${title}/section-${part}`];
    });
    expect(led).toEqual(laws.map(([id]) => [id, true]));
    expect(laws.length).toBeGreaterThan(10);
  });

  it('is the same for the functions as for the site: no id has two meanings', () => {
    for (const [id, source] of Object.entries<Source>(sources))
      expect(siteSources[id as SiteSourceId]).toBe(source);
  });

  it('cites no document from memory: what is remembered has no title to hide behind', () => {
    const memories = rows.filter(([, { kind }]) => kind === 'from memory').map(([id]) => id);
    expect(memories).toEqual(['memory']);
  });
});

describe('the tables that hazards rest on', () => {
  it('have the limits as published: 40 and 90 degF, 7 and 28 days, 50 psi, and a wind that is ours', () => {
    const row = (id: string) => factors.find((factor) => factor.id === id);
    const limits = ['limit.air', 'limit.surface', 'limit.age', 'limit.late', 'apply.pressure', 'limit.wind'];
    expect(limits.map((id) => [row(id)?.value, row(id)?.unit, row(id)?.sourceKind])).toEqual([
      [40, 'degF', 'published'],
      [90, 'degF', 'published'],
      [7, 'd', 'published'],
      [28, 'd', 'published'],
      [50, 'psi', 'published'],
      [10, 'mph', 'assumption'],
    ]);
  });

  it('give the caution on putting cleaner on the pressure of the factor', () => {
    const numbers = cautions.find(({ id }) => id === 'low-pressure')?.numbers as Record<
      string,
      CautionNumber
    >;
    const factor = factors.find(({ id }) => id === 'apply.pressure');
    expect([numbers['most']?.value, numbers['most']?.unit]).toEqual([factor?.value, factor?.unit]);
  });

  it('know the calcareous stones by codes of the table of materials', () => {
    const codes = materials.map(({ code }) => code);
    for (const stone of calcareousStones) expect(codes).toContain(stone);
  });
});

it('what the checks of hazards find can be looked up too', () => {
  const rows = [wall('A', { Age: 60, Material: 'Cast stone', Residue: 'moderate' }), wall('B', { Age: 3 })];
  const findings = findingsOf(
    checked(rows, [
      ['weather.air', 30],
      ['weather.surface', 95],
      ['nozzle.angle', 10],
      ['apply.pressure', 80],
    ]),
  );
  expect(findings.length).toBeGreaterThan(7);
  for (const { source } of findings) resolves(source);
});
