const names: Readonly<Record<string, string>> = {
  degF: '°F',
  degC: '°C',
  'crew-h': 'crew-hours',
  'labor-h': 'labor-hours',
  d: 'days',
  person: 'persons',
  'ug/m3': 'µg/m³',
};

const singular: Readonly<Record<string, string>> = {
  d: 'day',
  'crew-h': 'crew-hour',
  'labor-h': 'labor-hour',
  person: 'person',
};

/**
 * A unit as a user reads it, in a sentence or a sheet: the one set of units' names.
 * @param unit its label
 * @returns for example `ft²` or `°F`
 */
export function shownUnit(unit: string): string {
  return (
    names[unit] ??
    unit.replace(
      /([a-z])([23])(?!\d)/gi,
      (_, base: string, power: string) => base + (power === '2' ? '²' : '³'),
    )
  );
}

/**
 * The unit of a price of something, in words: the money is the user's.
 * @param unit its label, for example `money/ft2`
 * @returns for example `per ft²` or `per labor-hour`; undefined where it is no price of something
 */
export function perUnit(unit: string): string | undefined {
  const [money, per] = unit.split('/');
  return money === 'money' && per !== undefined ? `per ${singular[per] ?? shownUnit(per)}` : undefined;
}

/**
 * A number with its unit as a user reads it.
 * @param number the number as shown
 * @param unit the label of its unit
 * @returns for example `35 °F`, `40°`, `1 day`
 */
export function withUnit(number: string, unit: string): string {
  if (unit === '1') return number;
  if (unit === 'degree') return `${number}°`;
  const one = number === '1' ? singular[unit] : undefined;
  return `${number} ${perUnit(unit) ?? one ?? shownUnit(unit)}`;
}
