import { perUnit, shownUnit } from '../src/quantity/shown-unit';
import { unitOf, type Kind } from '../src/quantity/systems';
import { readFactors } from '../src/rules/read-factors';
import { catalogue } from './catalogue';

/** What the part "rate" of a function measures. */
const ratesOf: Readonly<Record<string, Kind>> = {
  BIDPRICE: 'moneyPerArea',
  LABORHOURS: 'areaPerLaborHour',
};

/**
 * The unit of what a function gives.
 * @param name name of the function, for example `WATER`
 * @param args the arguments that it was called with
 * @returns the label of the unit, for example `gal`; empty for a text, a class, a count or a spill
 */
export function resultUnit(name: string, args: readonly unknown[]): string {
  const found = catalogue.find((row) => row.name === name.toUpperCase());
  if (found === undefined || found.unit === 'text') return '';
  const place = found.parameters.findIndex((parameter) => parameter.name === 'factors');
  const part = args[found.parameters.findIndex((parameter) => parameter.name === 'part')];
  const isRate = typeof part === 'string' && part.trim().toLowerCase() === 'rate';
  const kind = isRate ? (ratesOf[found.name] ?? found.unit) : found.unit;
  const unit = unitOf(kind, readFactors(args[place]).system);
  return unit === '1' ? '' : (perUnit(unit) ?? shownUnit(unit));
}
