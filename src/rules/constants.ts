import type { Kind } from '../quantity/systems';
import { conversionFactor, toBase } from '../quantity/conversions';
import type { SourceKind } from './source-kinds';
import type { SourceId } from './sources';

/** A number that is fixed by definition or by a published equation, and so is shown but not overridden. */
export interface Constant {
  /** Value in the base (SI) unit of its kind. */
  readonly value: number;
  readonly kind: Kind;
  readonly meaning: string;
  readonly source: SourceId;
  readonly sourceKind: SourceKind;
}

const published = { sourceKind: 'published' } as const;

/** The constants of the model, by the symbol that a trace shows. */
export const constants = {
  minPerHour: {
    value: 60,
    kind: 'minutesPerHour',
    meaning: 'minutes in an hour',
    source: 'sp811',
    ...published,
  },
  oneDay: { value: 1, kind: 'days', meaning: 'one day', source: 'geometry', sourceKind: 'computed' },
  onePerson: { value: 1, kind: 'persons', meaning: 'one person', source: 'geometry', sourceKind: 'computed' },
  guard: {
    value: 1e-9,
    kind: 'ratio',
    meaning: 'keeps a count whole through conversion',
    source: 'geometry',
    sourceKind: 'computed',
  },
  iraTime: {
    value: 1,
    kind: 'minutes',
    meaning: 'time of the initial rate of absorption',
    source: 'c67',
    ...published,
  },
  ratedFlow: {
    value: toBase(1, 'gal/min'),
    kind: 'flow',
    meaning: 'flow of nozzle number 1 at the rated pressure',
    source: 'nozzle-number',
    sourceKind: 'common practice',
  },
  ratedPressure: {
    value: toBase(4000, 'psi'),
    kind: 'pressure',
    meaning: 'rated pressure of nozzle numbers',
    source: 'nozzle-number',
    sourceKind: 'common practice',
  },
  radian: {
    value: 180 / Math.PI,
    kind: 'angle',
    meaning: 'one radian',
    source: 'geometry',
    sourceKind: 'computed',
  },
  jetCoefficient: {
    value: toBase(0.0526, 'lbf/(gal/min psi^0.5)'),
    kind: 'jetCoefficient',
    meaning: 'reaction force of a water jet: sqrt(2 density)',
    source: 'geometry',
    sourceKind: 'computed',
  },
  molarMassHCl: {
    value: toBase(36.461, 'g/mol'),
    kind: 'massPerAmount',
    meaning: 'molar mass of HCl',
    source: 'molar-mass',
    ...published,
  },
  molarMassNaHCO3: {
    value: toBase(84.007, 'g/mol'),
    kind: 'massPerAmount',
    meaning: 'molar mass of sodium bicarbonate',
    source: 'molar-mass',
    ...published,
  },
  molarMassNa2CO3: {
    value: toBase(105.988, 'g/mol'),
    kind: 'massPerAmount',
    meaning: 'molar mass of sodium carbonate',
    source: 'molar-mass',
    ...published,
  },
  acidPerNaHCO3: {
    value: 1,
    kind: 'ratio',
    meaning: 'moles of HCl that one mole of sodium bicarbonate neutralizes, NaHCO3 + HCl',
    source: 'geometry',
    sourceKind: 'computed',
  },
  acidPerNa2CO3: {
    value: 2,
    kind: 'ratio',
    meaning: 'moles of HCl that one mole of sodium carbonate neutralizes, Na2CO3 + 2 HCl',
    source: 'geometry',
    sourceKind: 'computed',
  },
  evaporationCoefficient: {
    value: 5e-6,
    kind: 'evaporation',
    meaning: 'coefficient of the evaporation equation, for degC and km/h',
    source: 'aci305',
    ...published,
  },
  evaporationOffset: {
    value: 18,
    kind: 'degreesCelsius',
    meaning: 'temperature offset of the evaporation equation',
    source: 'aci305',
    ...published,
  },
  evaporationPower: {
    value: 2.5,
    kind: 'ratio',
    meaning: 'power of the evaporation equation',
    source: 'aci305',
    ...published,
  },
  windOffset: {
    value: 4,
    kind: 'kilometresPerHour',
    meaning: 'wind offset of the evaporation equation',
    source: 'aci305',
    ...published,
  },
  degFAtZeroC: { value: 32, kind: 'ratio', meaning: 'degrees F at 0 degC', source: 'sp811', ...published },
  degFPerDegC: {
    value: 1 / conversionFactor('degF', 'degC'),
    kind: 'ratio',
    meaning: 'degrees F in one degree C',
    source: 'sp811',
    ...published,
  },
  upperTenth: {
    value: 0.9,
    kind: 'ratio',
    meaning: 'share of the values below the upper end of an 80% range',
    source: 'geometry',
    sourceKind: 'computed',
  },
  fence: {
    value: 1.5,
    kind: 'ratio',
    meaning: 'ranges of the middle half beyond which an entry is called an outlier',
    source: 'box-plot',
    sourceKind: 'published',
  },
} as const satisfies Record<string, Constant>;

/** The symbol of a constant. */
export type ConstantId = keyof typeof constants;
