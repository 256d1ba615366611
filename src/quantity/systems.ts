import { fromBase, toBase, type Unit } from './conversions';

/** The two display systems. Inside, everything is SI. */
export type System = 'US' | 'SI';

const inUnits = <U extends Unit, S extends Unit>(US: U, SI: S): { US: U; SI: S } => ({ US, SI });
const both = <U extends Unit>(unit: U): { US: U; SI: U } => inUnits(unit, unit);

/**
 * The unit that each kind of quantity is shown in. Within a system the units of the kinds marked coherent
 * multiply and divide without a hidden factor, so that a trace can be recomputed from its shown values.
 */
export const kinds = {
  area: inUnits('ft2', 'm2'),
  length: inUnits('ft', 'm'),
  volume: inUnits('gal', 'L'),
  minutes: both('min'),
  laborHours: both('labor-h'),
  crewHours: both('crew-h'),
  days: both('d'),
  hoursPerDay: both('h/d'),
  minutesPerHour: both('min/h'),
  persons: both('person'),
  ratio: both('1'),
  count: both('1'),
  class: both('1'),
  areaPerMinute: inUnits('ft2/min', 'm2/min'),
  areaPerLaborHour: inUnits('ft2/labor-h', 'm2/labor-h'),
  minutesPerArea: inUnits('min/ft2', 'min/m2'),
  laborMinutesPerArea: inUnits('labor-min/ft2', 'labor-min/m2'),
  coverage: inUnits('ft2/gal', 'm2/L'),
  flow: inUnits('gal/min', 'L/min'),
  volumePerArea: inUnits('gal/ft2', 'L/m2'),
  massPerArea: inUnits('lb/ft2', 'kg/m2'),
  sorptivity: inUnits('gal/(ft2 min^0.5)', 'L/(m2 min^0.5)'),
  pressure: inUnits('psi', 'kPa'),
  money: both('money'),
  moneyPerLaborHour: both('money/labor-h'),
  moneyPerCrewHour: both('money/crew-h'),
  moneyPerDay: both('money/d'),
  moneyPerVolume: inUnits('money/gal', 'money/L'),
  moneyPerArea: inUnits('money/ft2', 'money/m2'),
  moneyPerLength: inUnits('money/ft', 'money/m'),
  moneyPerMass: inUnits('money/lb', 'money/kg'),
  force: inUnits('lbf', 'N'),
  jetCoefficient: inUnits('lbf/(gal/min psi^0.5)', 'N/(L/min kPa^0.5)'),
  mass: inUnits('lb', 'kg'),
  amount: both('mol'),
  massPerAmount: inUnits('lb/mol', 'kg/mol'),
  density: inUnits('lb/gal', 'kg/L'),
  evaporation: inUnits('lb/(ft2 h)', 'kg/(m2 h)'),
  degreesCelsius: both('degC'),
  kilometresPerHour: both('km/h'),
  angle: both('degree'),
  // Kinds that a table shows in its own customary unit; `coherent` names the kind that a trace computes in.
  smallVolume: { ...inUnits('fl oz', 'mL'), coherent: 'volume' },
  shortLength: { ...inUnits('in', 'mm'), coherent: 'length' },
  percent: { ...both('%'), coherent: 'ratio' },
  suction: { ...inUnits('g/30in2', 'kg/m2'), coherent: 'massPerArea' },
  uptake: { ...both('kg/m2'), coherent: 'massPerArea' },
  filmPerArea: { ...both('L/m2'), coherent: 'volumePerArea' },
  filmThickness: { ...both('mm water'), coherent: 'volumePerArea' },
  labDensity: { ...both('kg/L'), coherent: 'density' },
  temperature: { ...inUnits('degF', 'degC'), coherent: 'degreesCelsius' },
  windSpeed: { ...inUnits('mph', 'km/h'), coherent: 'kilometresPerHour' },
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
