import { unit as measure } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { coherentKind, kinds, show, take, unitOf, type Kind } from '../../src/quantity/systems';

const all = Object.keys(kinds) as Kind[];

describe('display systems', () => {
  it.each<[Kind, string, string, number, string, string]>([
    ['area', 'ft2', 'm2', 100, 'sqft', 'm^2'],
    ['length', 'ft', 'm', 100, 'ft', 'm'],
    ['volume', 'gal', 'L', 100, 'gallon', 'L'],
    ['shortLength', 'in', 'mm', 6, 'in', 'mm'],
    ['pressure', 'psi', 'kPa', 400, 'psi', 'kPa'],
    ['flow', 'gal/min', 'L/min', 4, 'gallon/minute', 'L/minute'],
    ['windSpeed', 'mph', 'km/h', 6, 'mile/hour', 'km/hour'],
    ['mass', 'lb', 'kg', 7, 'lb', 'kg'],
    ['force', 'lbf', 'N', 6.65, 'lbf', 'N'],
  ])('%s is typed in %s and shown in %s as a general library has it', (kind, us, si, value, from, to) => {
    expect([unitOf(kind, 'US'), unitOf(kind, 'SI')]).toEqual([us, si]);
    const theirs = measure(value, from).toNumber(to);
    expect(show(take(value, kind, 'US'), kind, 'SI') / theirs).toBeCloseTo(1, 9);
  });

  it.each(all)('%s: what is taken is what is shown', (kind) => {
    for (const system of ['US', 'SI'] as const)
      expect(show(take(12.5, kind, system), kind, system)).toBeCloseTo(12.5, 9);
  });

  it.each(all)('%s is computed in a kind that is coherent itself', (kind) => {
    expect(coherentKind(coherentKind(kind))).toBe(coherentKind(kind));
  });
});
