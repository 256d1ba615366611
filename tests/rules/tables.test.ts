import { describe, expect, it } from 'vitest';
import { comparable } from '../../src/quantity/cell';
import { cleanerClasses } from '../../src/rules/cleaner-classes';
import { factors, type Factor } from '../../src/rules/factors';
import { materials } from '../../src/rules/materials';
import { sources, type Source } from '../../src/rules/sources';

const rows: readonly Factor[] = factors;
const valueOf = (id: string): number | undefined => rows.find((row) => row.id === id)?.value;

describe('the table of factors', () => {
  it('has the 28-day strengths of ASTM C270: M 2500, S 1800, N 750, O 350 psi', () => {
    expect(['M', 'S', 'N', 'O'].map((type) => valueOf(`mortar.${type}.strength`))).toEqual([
      2500, 1800, 750, 350,
    ]);
  });

  it('has a starting value that its own range accepts', () => {
    for (const { id, value, least, most, positive, whole } of rows) {
      expect(value >= least && value <= most, id).toBe(true);
      expect(positive === true && value === 0, id).toBe(false);
      expect(whole === true && !Number.isInteger(value), id).toBe(false);
    }
  });

  it('is of the kind that its source is, and never dressed as better', () => {
    for (const { id, source, sourceKind } of rows) expect(sourceKind, id).toBe(sources[source].kind);
  });

  it('names a source of the table in each bracket, but for one figure whose document is not at hand', () => {
    const named = (text: string): boolean =>
      [...text.matchAll(/\(([^)]+)\)/g)].some(([, inside = '']) =>
        inside.split(';').every((name) => {
          // The first words of the document, as far as they tell it from others.
          const words = comparable((name.trim().split(/ (?=[\d])|, /)[0] ?? '').trim());
          return Object.values<Source>(sources).some(({ document }) => comparable(document).includes(words));
        }),
      );
    const without = rows.filter(({ bracket }) => bracket !== undefined && !named(bracket));
    expect(without.map(({ id }) => id)).toEqual(['cleaner.coverage']);
  });

  it('has each id once', () => {
    expect(new Set(rows.map(({ id }) => comparable(id))).size).toBe(rows.length);
  });
});

describe('the table of materials', () => {
  it('has each code and name once, so that a cell means one material', () => {
    const names = materials.flatMap(({ code, name }) => [...new Set([comparable(code), comparable(name)])]);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has classes that are offered', () => {
    const offered = cleanerClasses.map((row) => row.class);
    expect(offered).toEqual([0, 1, 2, 3]);
    for (const { ceiling, name } of materials) expect(offered, name).toContain(ceiling);
  });

  it('lets no acid touch what acid dissolves: limestone, marble and metal', () => {
    // Class 2 is the gentlest acid.
    const soluble = ['limestone', 'marble', 'finished-aluminum', 'galvanized-steel', 'copper'];
    for (const code of soluble)
      expect(materials.find((row) => row.code === code)?.ceiling, code).toBeLessThan(2);
  });

  it('keeps limestone below the 1200 psi that its producers publish', () => {
    expect(materials.find(({ code }) => code === 'limestone')?.pressure).toBeLessThanOrEqual(1200);
  });
});
