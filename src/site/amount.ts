import { show, unitOf, type Kind, type System } from '../quantity/systems';
import type { FactorId } from '../rules/factors';
import { factors as table } from '../rules/factors';
import type { FactorsInForce } from '../rules/read-factors';

const DIGITS = 3;
const WHOLE_FROM = 100;

const readableUnits: Readonly<Record<string, string>> = {
  degF: '°F',
  degC: '°C',
  'crew-h': 'crew-hours',
  d: 'days',
  'ug/m3': 'µg/m³',
};

const singular = { d: 'day', 'crew-h': 'crew-hour' };

/**
 * A number as it is read out on site: whole from a hundred up, three digits below.
 * @param value the number as shown
 * @returns for example `1236` or `4.44`
 */
export function rounded(value: number): string {
  return String(Math.abs(value) >= WHOLE_FROM ? Math.round(value) : Number(value.toPrecision(DIGITS)));
}

/**
 * A unit as it is printed.
 * @param unit its label
 * @returns for example `ft²`
 */
export function readable(unit: string): string {
  return readableUnits[unit] ?? unit.replace(/2/g, '²').replace(/3/g, '³');
}

/**
 * A base value with its unit in the user's system.
 * @param value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns for example `37.2 m²`
 */
export function amount(value: number, kind: Kind, system: System): string {
  const number = rounded(show(value, kind, system));
  const unit = unitOf(kind, system);
  if (unit === '1') return number;
  if (unit === 'degree') return `${number}°`;
  if (number === '1' && unit in singular) return `1 ${singular[unit as keyof typeof singular]}`;
  return `${number} ${readable(unit)}`;
}

/**
 * A factor in force with its unit.
 * @param id the factor
 * @param factors the factors in force
 * @returns for example `400 psi`
 */
export function factorAmount(id: FactorId, factors: FactorsInForce): string {
  const kind = table.find((row) => row.id === id)?.kind ?? 'ratio';
  return amount(factors.value(id), kind, factors.system);
}
