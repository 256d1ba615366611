import { describe, expect, it } from 'vitest';
import { findMaterial } from '../../src/rules/material-names';
import { readFactors } from '../../src/rules/read-factors';
import { call, number, refusal } from '../functions/call';

const refused = (...rows: unknown[][]): string => refusal(() => readFactors(rows)).message;
const slate = [
  ['material.slate.ceiling', 1],
  ['material.slate.suction', 3],
  ['material.slate.pressure', 500],
];
const walls = (material: string): unknown[][] => [
  ['Wall', 'Material', 'Area'],
  ['Base', material, 100],
];

describe('a material of the user', () => {
  it('is known once ceiling, suction and pressure are given', () => {
    expect(call('GOVERNING', walls('Slate'), null, slate)).toBe(1);
    expect(call('GOVERNOR', walls('SLATE'), null, slate)).toBe('slate');
    const material = findMaterial(readFactors(slate).materials, 'slate');
    // 3 g on 30 in2 and 500 psi.
    expect(material?.suction).toBeCloseTo(0.003 / 0.0193548, 9);
    expect(material?.pressure).toBeCloseTo(500 * 6.894757, 3);
  });

  it('takes up water by its own suction', () => {
    // Two passes of 2 min, a field share of a half: 100 m2 x (0.5 x 0.155 kg/m2 x sqrt 4 + 2 L/m2).
    const si = [
      ['units', 'SI'],
      ['material.slate.ceiling', 1],
      ['material.slate.suction', 0.155],
      ['material.slate.pressure', 3400],
    ];
    expect(number('WATER', walls('slate'), null, si, 'prewet')).toBeCloseTo(100 * (0.5 * 0.155 * 2 + 2), 9);
  });

  it.each([0, 1, 2])('with value %i missing is refused, the nearest known ones offered', (left) => {
    expect(refused(...slate.toSpliced(left, 1))).toMatch(
      /^Row 1, column 1: the material "slate", which the table does not have, cannot be used\. Accepted: ceiling, suction and pressure all three for a material of your own, or a known one\. Did you mean [a-z-]+, [a-z-]+, [a-z-]+\?$/,
    );
  });

  it('that is a misspelt one of the table is refused with that one offered', () => {
    expect(refused(['material.limestne.ceiling', 2])).toContain('Did you mean limestone, ');
  });

  it('is unknown to the walls while it is not given', () => {
    expect(refusal(() => call('WATER', walls('slate'))).message).toContain('"slate" cannot be used');
  });
});

describe('a material of the table', () => {
  it('may be named by code or name in a factor id', () => {
    for (const id of ['material.limestone.ceiling', 'Material.Limestone.Ceiling'])
      expect(call('GOVERNING', walls('Limestone'), null, [[id, 2]])).toBe(2);
    expect(call('GOVERNING', walls('Red clay brick'), null, [['material.Red clay brick.ceiling', 1]])).toBe(
      1,
    );
  });

  it('keeps what is not overridden', () => {
    const material = findMaterial(readFactors([['material.limestone.ceiling', 2]]).materials, 'Limestone');
    expect(material?.suction).toBeCloseTo((6 * 0.001) / 0.0193548, 9);
    expect(material?.overridden).toEqual(['ceiling']);
  });

  it.each<[string, unknown, string, string]>([
    ['ceiling', 4, '4', 'a whole number from 0 to 3'],
    ['ceiling', 1.5, '1.5', 'a whole number from 0 to 3'],
    ['suction', 201, '201', 'a number from 0 to 200 g per 30 in²'],
    ['suction', -1, '-1', 'a number from 0 to 200 g per 30 in²'],
    ['pressure', '600', '"600" (a number stored as text)', 'a number from 0 to 5000 psi'],
  ])('has no %s of %j', (property, value, seen, accepted) => {
    const id = `material.limestone.${property}`;
    expect(refused([id, value])).toBe(
      `Row 1 (${id}), column value: ${seen} cannot be used. Accepted: ${accepted}.`,
    );
  });

  it('has no other properties', () => {
    expect(refused(['material.limestone.colour', 2])).toContain(
      'the factor "material.limestone.colour" cannot be used',
    );
  });
});
