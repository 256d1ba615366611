import { fromBase, toBase, type Unit } from './conversions';

/** The two display systems. Inside, everything is SI. */
export type System = 'US' | 'SI';

/**
 * The unit that each kind of quantity is shown in. Within a system the units of the kinds marked coherent
 * multiply and divide without a hidden factor, so that a trace can be recomputed from its shown values.
 */
export const kinds = {
  area: { US: 'ft2', SI: 'm2' },
  length: { US: 'ft', SI: 'm' },
  volume: { US: 'gal', SI: 'L' },
  minutes: { US: 'min', SI: 'min' },
  crewHours: { US: 'crew-h', SI: 'crew-h' },
  days: { US: 'd', SI: 'd' },
  hoursPerDay: { US: 'h/d', SI: 'h/d' },
  minutesPerHour: { US: 'min/h', SI: 'min/h' },
  persons: { US: 'person', SI: 'person' },
  ratio: { US: '1', SI: '1' },
  count: { US: '1', SI: '1' },
  class: { US: '1', SI: '1' },
  areaPerMinute: { US: 'ft2/min', SI: 'm2/min' },
  areaPerCrewHour: { US: 'ft2/crew-h', SI: 'm2/crew-h' },
  coverage: { US: 'ft2/gal', SI: 'm2/L' },
  flow: { US: 'gal/min', SI: 'L/min' },
  volumePerArea: { US: 'gal/ft2', SI: 'L/m2' },
  massPerArea: { US: 'lb/ft2', SI: 'kg/m2' },
  sorptivity: { US: 'gal/(ft2 min^0.5)', SI: 'L/(m2 min^0.5)' },
  pressure: { US: 'psi', SI: 'kPa' },
  money: { US: 'money', SI: 'money' },
  moneyPerCrewHour: { US: 'money/crew-h', SI: 'money/crew-h' },
  moneyPerDay: { US: 'money/d', SI: 'money/d' },
  moneyPerVolume: { US: 'money/gal', SI: 'money/L' },
  moneyPerArea: { US: 'money/ft2', SI: 'money/m2' },
  moneyPerLength: { US: 'money/ft', SI: 'money/m' },
  moneyPerMass: { US: 'money/lb', SI: 'money/kg' },
  force: { US: 'lbf', SI: 'N' },
  jetCoefficient: { US: 'lbf/(gal/min psi^0.5)', SI: 'N/(L/min kPa^0.5)' },
  mass: { US: 'lb', SI: 'kg' },
  amount: { US: 'mol', SI: 'mol' },
  massPerAmount: { US: 'lb/mol', SI: 'kg/mol' },
  density: { US: 'lb/gal', SI: 'kg/L' },
  evaporation: { US: 'lb/(ft2 h)', SI: 'kg/(m2 h)' },
  degreesCelsius: { US: 'degC', SI: 'degC' },
  kilometresPerHour: { US: 'km/h', SI: 'km/h' },
  angle: { US: 'degree', SI: 'degree' },
  // Kinds that a table shows in its own customary unit; `coherent` names the kind that a trace computes in.
  shortLength: { US: 'in', SI: 'mm', coherent: 'length' },
  percent: { US: '%', SI: '%', coherent: 'ratio' },
  suction: { US: 'g/30in2', SI: 'kg/m2', coherent: 'massPerArea' },
  uptake: { US: 'kg/m2', SI: 'kg/m2', coherent: 'massPerArea' },
  filmPerArea: { US: 'L/m2', SI: 'L/m2', coherent: 'volumePerArea' },
  filmThickness: { US: 'mm water', SI: 'mm water', coherent: 'volumePerArea' },
  labDensity: { US: 'kg/L', SI: 'kg/L', coherent: 'density' },
  temperature: { US: 'degF', SI: 'degC', coherent: 'degreesCelsius' },
  windSpeed: { US: 'mph', SI: 'km/h', coherent: 'kilometresPerHour' },
} as const satisfies Record<string, { US: Unit; SI: Unit; coherent?: string }>;

/** What a number measures; decides the unit that it is shown in. */
export type Kind = keyof typeof kinds;

/**
 * The unit a kind is shown in.
 * @param kind what the number measures
 * @param system the display system
 * @returns the label of the unit
 */
export function unitOf(kind: Kind, system: System): Unit {
  return kinds[kind][system];
}

/**
 * The kind that a trace computes in.
 * @param kind what the number measures
 * @returns the kind itself, or the coherent one beside its customary unit
 */
export function coherentKind(kind: Kind): Kind {
  const row = kinds[kind];
  return 'coherent' in row ? row.coherent : kind;
}

/**
 * A base (SI) value as a user of the system sees it.
 * @param value the value in the base unit
 * @param kind what it measures
 * @param system the display system
 * @returns the value in the shown unit
 */
export function show(value: number, kind: Kind, system: System): number {
  return fromBase(value, unitOf(kind, system));
}

/**
 * A value as a user of the system typed it, in the base (SI) unit.
 * @param value the value in the shown unit
 * @param kind what it measures
 * @param system the display system
 * @returns the value in the base unit
 */
export function take(value: number, kind: Kind, system: System): number {
  return toBase(value, unitOf(kind, system));
}
