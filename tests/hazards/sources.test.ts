import { describe, expect, it } from 'vitest';
import { findingsOf } from '../../src/review/checks';
import { calcareousStones } from '../../src/rules/calcareous';
import { cautions, type CautionNumber } from '../../src/rules/cautions';
import { factors } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { siteSources, type SiteSourceId } from '../../src/rules/site-sources';
import type { Source } from '../../src/rules/sources';
import { checked, wall } from '../review/checked';

const ADDRESS = /^[a-z0-9-]+(\.[a-z0-9-]+)+\/\S+$/i;

/** What a reviewer needs to find a source again. */
function resolves(id: SiteSourceId): void {
  const { document, edition, section, address, kind }: Source = siteSources[id];
  expect(document, id).not.toBe('');
  if (kind !== 'published') return;
  expect([id, edition === '' || edition.startsWith('not ')]).toEqual([id, false]);
  expect([id, section === '']).toEqual([id, false]);
  expect([id, ADDRESS.test(address ?? '')]).toEqual([id, true]);
}

describe('the source of a caution', () => {
  it.each(cautions.map(({ id, source }) => [id, source] as const))('%s', (_, source) => {
    resolves(source);
  });

  it('is no memory where it speaks of a law, a permit or a standard', () => {
    const laws = /CFR|OSHA|permit|corrosive waste|storm drain|sewer|silica|scaffold|energized/i;
    for (const { id, text, kind } of cautions)
      if (laws.test(text)) expect([id, kind]).not.toEqual([id, 'from memory']);
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
