const names: Readonly<Record<string, string>> = {
  degF: '°F',
  degC: '°C',
  'crew-h': 'crew-hours',
  'labor-h': 'labor-hours',
  d: 'days',
  person: 'people',
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
 * @returns for example `35 °F`, `40°`, `5%`, `1 day`
 */
export function withUnit(number: string, unit: string): string {
  if (unit === '1') return number;
  if (unit === 'degree') return `${number}°`;
  if (unit === '%') return `${number}%`;
  const one = number === '1' ? singular[unit] : undefined;
  return `${number} ${perUnit(unit) ?? one ?? shownUnit(unit)}`;
}

const plural: Readonly<Record<string, string>> = {
  min: 'minutes',
  h: 'hours',
  'labor-min': 'labor-minutes',
  degree: 'degrees',
  person: 'people',
};
const each: Readonly<Record<string, string>> = {
  min: 'minute',
  h: 'hour',
  d: 'day',
  'labor-h': 'labor-hour',
  'crew-h': 'crew-hour',
  '30in2': '30 in²',
};

/**
 * A unit in words, for a message that says what is accepted.
 * @param unit its label
 * @returns for example `minutes`, `ft² per labor-hour`
 */
export function unitInWords(unit: string): string {
  const [of = '', per] = unit.split('/');
  const counted = plural[of] ?? shownUnit(of);
  return per === undefined ? counted : `${counted} per ${each[per] ?? shownUnit(per)}`;
}
