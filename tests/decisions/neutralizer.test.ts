import { describe, expect, it } from 'vitest';
import { acidMoles, alkaliMass } from '../../src/estimate/neutralizer';
import { column, number, spill } from '../functions/call';
import { expectSame } from '../properties/call';

const GALLON_L = 3.785411784;
const POUND_KG = 0.45359237;

function wall(material: string, area: number, residue: string): unknown[][] {
  return [
    ['Wall', 'Material', 'Area', 'Residue'],
    ['W1', material, area, residue],
  ];
}

/** A round coverage, and nothing done once more. */
const PLAIN = [
  ['cleaner.coverage', 100],
  ['reclean.share', 0],
] as const;

// 100 ft2 at 100 ft2/gal, undiluted: a gallon of concentrate, as strong as the acid of the shops.
const gallon = wall('Red clay brick', 100, 'heavy');
const strong = [
  ...PLAIN,
  ['cleaner.dilution.3', 0],
  ['acid.3.fraction', 31.45],
  ['acid.3.density', 1.16],
] as const;

describe('a gallon of 31.45% HCl of specific gravity 1.160', () => {
  it('is a gallon', () => {
    expectSame(number('CLEANER', gallon, null, strong), 1, 1e-12, 'concentrate');
  });

  it.each([
    ['sodium bicarbonate', 0, 7.015],
    ['soda ash', 100, 4.425],
  ])('takes the published mass of %s', (_, sodaAsh, pounds) => {
    const seen = number('NEUTRALIZER', gallon, null, [...strong, ['neutralizer.sodaAsh', sodaAsh]]);
    expect(Math.abs(seen / pounds - 1)).toBeLessThan(0.002);
  });

  it('takes as many moles of bicarbonate as it holds of acid, and half as many of soda ash', () => {
    // 3.785 411 784 L x 1.160 kg/L x 0.3145 / 0.036461 kg/mol = 37.876 mol.
    const moles = (GALLON_L * 1.16 * 0.3145) / 0.036461;
    expect(moles).toBeCloseTo(37.876, 2);
    const parts = [...strong, ['neutralizer.sodaAsh', 25]] as const;
    const bicarbonate = (moles * 0.75 * 0.084007) / POUND_KG;
    const sodaAsh = ((moles * 0.25) / 2) * (0.105988 / POUND_KG);
    expectSame(number('NEUTRALIZER', gallon, null, parts, 'bicarbonate'), bicarbonate, 1e-9, 'bicarbonate');
    expectSame(number('NEUTRALIZER', gallon, null, parts, 'soda ash'), sodaAsh, 1e-9, 'soda ash');
    expectSame(number('NEUTRALIZER', gallon, null, parts), bicarbonate + sodaAsh, 1e-9, 'both');
  });
});

describe('a mass of HCl', () => {
  it.each([
    ['NaHCO3', 2.304],
    ['Na2CO3', 1.4535],
  ] as const)('takes the published mass of %s', (alkali, published) => {
    // A litre of 1 kg/L at 100% is a kilogram of HCl.
    const mass = alkaliMass(acidMoles(1, 1, 1), alkali);
    expect(Math.abs(mass / published - 1)).toBeLessThan(0.0005);
  });

  it.each([
    [0.1, 1.048, 2.87],
    [0.2, 1.098, 6.02],
    [0.3, 1.149, 9.45],
    [0.32, 1.159, 10.17],
    [0.36, 1.179, 11.64],
  ])('by mass fraction %f and density %f is the published mol/L', (fraction, density, published) => {
    expect(Math.abs(acidMoles(1, density, fraction) / published - 1)).toBeLessThan(0.003);
  });
});

describe('the cleaner of a class', () => {
  it.each([
    // 500 ft2 make 5 gal of mix: 1 part in 9 of 5% and 1.02 kg/L; 1 part in 6 of 15% and 1.07 kg/L.
    ['moderate', 2, (5 / 9) * 1.02 * 0.05],
    ['heavy', 3, (5 / 6) * 1.07 * 0.15],
  ])('%s residue, class %i', (residue, _, acidKgByLitre) => {
    const moles = (acidKgByLitre * GALLON_L) / 0.036461;
    const seen = number('NEUTRALIZER', wall('Red clay brick', 500, residue), null, PLAIN);
    expectSame(seen, (moles * 0.084007) / POUND_KG, 1e-9, 'bicarbonate');
  });

  it.each([
    ['clear water', 'Marble'],
    ['neutral detergent', 'Limestone'],
  ])('%s holds no acid', (_, material) => {
    for (const part of [null, 'bicarbonate', 'soda ash']) {
      expect(number('NEUTRALIZER', wall(material, 500, 'heavy'), null, null, part)).toBe(0);
    }
  });

  it('is reckoned in kilograms in SI', () => {
    // 90 m2 at 2.5 m2/L make 36 L, 1 part in 9: 4 L.
    const seen = number('NEUTRALIZER', wall('Cast stone', 90, 'heavy'), null, [
      ['units', 'SI'],
      ['cleaner.coverage', 2.5],
      ['reclean.share', 0],
    ]);
    expectSame(seen, ((4 * 1.02 * 0.05) / 0.036461) * 0.084007, 1e-9, 'bicarbonate');
  });

  it('counts what the wall uses up as still there, for the share of the runoff that is captured', () => {
    const walls = wall('Red clay brick', 500, 'heavy');
    const whole = (((5 / 6) * GALLON_L * 1.07 * 0.15) / 0.036461) * (0.084007 / POUND_KG);
    for (const percent of [0, 10, 100]) {
      const seen = number('NEUTRALIZER', walls, null, [...PLAIN, ['runoff.captured', percent]]);
      expect(seen).toBeCloseTo((whole * percent) / 100, 9);
    }
  });

  it('adds up over zones and rows', () => {
    const walls = [
      ['Wall', 'Zone', 'Material', 'Area', 'Residue', 'Masked'],
      ['A', 'North', 'Red clay brick', 200, 'heavy', ''],
      ['B', 'North', 'Dark clay brick', 300, 'light', ''],
      ['C', 'Court', 'Cast stone', 500, 'moderate', ''],
      ['D', 'Court', 'Limestone', 40, 'light', 'yes'],
    ];
    const ofClass3 = (((5 / 6) * GALLON_L * 1.07 * 0.15) / 0.036461) * (0.084007 / POUND_KG);
    const ofClass2 = (((5 / 9) * GALLON_L * 1.02 * 0.05) / 0.036461) * (0.084007 / POUND_KG);
    expectSame(number('NEUTRALIZER', walls, null, PLAIN), ofClass3 + ofClass2, 1e-9, 'job');
    const rows = column(spill('WALLROWS', walls, null, PLAIN), 'Neutralizer') as number[];
    [ofClass3 * 0.4, ofClass3 * 0.6, ofClass2, 0].forEach((worked, index) => {
      const seen = rows[index] ?? NaN;
      if (worked === 0) expect(seen).toBe(0);
      else expectSame(seen, worked, 1e-9, `row ${String(index)}`);
    });
  });
});
