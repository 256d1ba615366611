/** The exact definitions from which NIST SP 811 (2008), appendix B.8, derives its factors. */
const INCH_M = 0.0254;
const POUND_KG = 0.45359237;
const GALLON_L = 3.785411784;
const STANDARD_GRAVITY = 9.80665;
const MILE_KM = 1.609344;

const FOOT_M = 12 * INCH_M;
const FOOT2_M2 = FOOT_M * FOOT_M;
const POUND_FORCE_N = POUND_KG * STANDARD_GRAVITY;
const PSI_KPA = POUND_FORCE_N / (INCH_M * INCH_M) / 1000;

/**
 * Every unit that the program shows or accepts, by its label: base value = shown value * scale + offset.
 * Base units: m, m2, L, kg, min for a working step, h for working time, person, kPa, N, degC, km/h.
 * Source: NIST SP 811 (2008), appendix B.8; definition of the initial rate of absorption, ASTM C67.
 */
export const units = {
  '1': { scale: 1 },
  '%': { scale: 0.01 },
  m: { scale: 1 },
  ft: { scale: FOOT_M },
  in: { scale: INCH_M },
  mm: { scale: 0.001 },
  // A millimetre of water on a square metre is a litre.
  'mm water': { scale: 1 },
  m2: { scale: 1 },
  ft2: { scale: FOOT2_M2 },
  L: { scale: 1 },
  gal: { scale: GALLON_L },
  kg: { scale: 1 },
  lb: { scale: POUND_KG },
  min: { scale: 1 },
  h: { scale: 1 },
  d: { scale: 1 },
  'h/d': { scale: 1 },
  'min/h': { scale: 1 },
  person: { scale: 1 },
  'crew-h': { scale: 1 },
  'm2/min': { scale: 1 },
  'ft2/min': { scale: FOOT2_M2 },
  'm2/crew-h': { scale: 1 },
  'ft2/crew-h': { scale: FOOT2_M2 },
  'm2/L': { scale: 1 },
  'ft2/gal': { scale: FOOT2_M2 / GALLON_L },
  'L/m2': { scale: 1 },
  'gal/ft2': { scale: GALLON_L / FOOT2_M2 },
  'kg/m2': { scale: 1 },
  'lb/ft2': { scale: POUND_KG / FOOT2_M2 },
  'g/30in2': { scale: 0.001 / (30 * INCH_M * INCH_M) },
  'L/(m2 min^0.5)': { scale: 1 },
  'gal/(ft2 min^0.5)': { scale: GALLON_L / FOOT2_M2 },
  'min^0.5': { scale: 1 },
  'L/min': { scale: 1 },
  'gal/min': { scale: GALLON_L },
  kPa: { scale: 1 },
  psi: { scale: PSI_KPA },
  N: { scale: 1 },
  lbf: { scale: POUND_FORCE_N },
  'N/(L/min kPa^0.5)': { scale: 1 },
  'lbf/(gal/min psi^0.5)': { scale: POUND_FORCE_N / (GALLON_L * Math.sqrt(PSI_KPA)) },
  money: { scale: 1 },
  'money/crew-h': { scale: 1 },
  'money/d': { scale: 1 },
  'money/L': { scale: 1 },
  'money/gal': { scale: 1 / GALLON_L },
  'money/m2': { scale: 1 },
  'money/ft2': { scale: 1 / FOOT2_M2 },
  'money/m': { scale: 1 },
  'money/ft': { scale: 1 / FOOT_M },
  'money/kg': { scale: 1 },
  'money/lb': { scale: 1 / POUND_KG },
  mol: { scale: 1 },
  'kg/mol': { scale: 1 },
  'lb/mol': { scale: POUND_KG },
  'g/mol': { scale: 0.001 },
  'kg/L': { scale: 1 },
  'lb/gal': { scale: POUND_KG / GALLON_L },
  'kg/(m2 h)': { scale: 1 },
  'lb/(ft2 h)': { scale: POUND_KG / FOOT2_M2 },
  degC: { scale: 1 },
  degF: { scale: 1 / 1.8, offset: -32 / 1.8 },
  'km/h': { scale: 1 },
  mph: { scale: MILE_KM },
  degree: { scale: 1 },
} as const satisfies Record<string, { scale: number; offset?: number }>;

/** The label of a unit. */
export type Unit = keyof typeof units;

/**
 * A value of a unit in the base unit of its dimension.
 * @param value the value as shown
 * @param from the unit that it is shown in
 * @returns the value in the base unit
 */
export function toBase(value: number, from: Unit): number {
  const { scale, offset = 0 }: { scale: number; offset?: number } = units[from];
  return value * scale + offset;
}

/**
 * A base value as shown in a unit.
 * @param value the value in the base unit
 * @param to the unit to show it in
 * @returns the value as shown
 */
export function fromBase(value: number, to: Unit): number {
  const { scale, offset = 0 }: { scale: number; offset?: number } = units[to];
  return (value - offset) / scale;
}

/**
 * How many of one unit make one of another of the same dimension and zero.
 * @param from the unit to come from
 * @param to the unit to go to
 * @returns the factor that a value in `from` is multiplied by
 */
export function conversionFactor(from: Unit, to: Unit): number {
  return units[from].scale / units[to].scale;
}
