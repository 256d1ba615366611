import { expect, it } from 'vitest';
import { shownUnit, withUnit } from '../../src/quantity/shown-unit';

it('writes degrees, powers and whole words', () => {
  expect(
    ['degF', 'degC', 'ft2', 'gal/ft2', 'kg/(m2 h)', 'ug/m3', 'g/30in2', 'mm water'].map(shownUnit),
  ).toEqual(['°F', '°C', 'ft²', 'gal/ft²', 'kg/(m² h)', 'µg/m³', 'g/30in²', 'mm water']);
});

it('puts a number before it, in the singular where it is one', () => {
  expect([withUnit('35', 'degF'), withUnit('40', 'degree'), withUnit('3', '1')]).toEqual([
    '35 °F',
    '40°',
    '3',
  ]);
  expect([withUnit('1', 'd'), withUnit('7', 'd'), withUnit('1', 'person'), withUnit('1', 'ft2')]).toEqual([
    '1 day',
    '7 days',
    '1 person',
    '1 ft²',
  ]);
});
