import type { Unit } from '../quantity/conversions';
import type { Kind } from '../quantity/systems';
import type { SourceKind } from './source-kinds';
import type { SourceId } from './sources';

/** One number of the model that is not an input of a wall row. */
export interface Factor {
  readonly id: string;
  /** Starting value, in `unit`. */
  readonly value: number;
  readonly unit: Unit;
  readonly kind: Kind;
  /** Least and most that is accepted, in `unit`. */
  readonly least: number;
  readonly most: number;
  /** True where 0 would divide or stop the model. */
  readonly positive?: boolean;
  readonly whole?: boolean;
  readonly sourceKind: SourceKind;
  readonly source: SourceId;
  readonly meaning: string;
}

const assumption = { sourceKind: 'assumption', source: 'estimate' } as const;
const practice = { sourceKind: 'common practice', source: 'practice' } as const;
const memory = { sourceKind: 'from memory', source: 'memory' } as const;
const advice = { sourceKind: 'published', source: 'tn20' } as const;
const strength = { unit: 'psi', kind: 'pressure', least: 1, most: 20000, sourceKind: 'published', source: 'c270' } as const;
const areaRate = { unit: 'ft2/min', kind: 'areaPerMinute', least: 0, most: 1000, positive: true, ...assumption } as const;
const handRate = { unit: 'ft2/crew-h', kind: 'areaPerCrewHour', least: 0, most: 100000, positive: true, ...assumption } as const;
const need = { unit: '1', kind: 'class', least: 0, most: 3, whole: true, ...assumption } as const;
const dilution = { unit: '1', kind: 'ratio', least: 0, most: 1000, ...assumption } as const;

/** Every factor with its starting value. A label, a maker's advice or a measured value beats it. */
export const factors = [
  { id: 'crew', value: 2, unit: 'person', kind: 'persons', least: 1, most: 100, whole: true, ...assumption, meaning: 'persons in the crew' },
  { id: 'shift', value: 8, unit: 'h/d', kind: 'hoursPerDay', least: 1, most: 24, ...assumption, meaning: 'hours worked a day' },
  { id: 'setup.perDay', value: 0.75, unit: 'h/d', kind: 'hoursPerDay', least: 0, most: 8, ...assumption, meaning: 'set-up and clear-up a day, each person' },
  { id: 'need.light', value: 1, ...need, meaning: 'class that light residue needs' },
  { id: 'need.moderate', value: 2, ...need, meaning: 'class that moderate residue needs' },
  { id: 'need.heavy', value: 3, ...need, meaning: 'class that heavy residue needs' },
  { id: 'need.strongMortar', value: 1, ...need, meaning: 'classes that Type S or M mortar adds' },
  { id: 'dwell.least', value: 3, unit: 'min', kind: 'minutes', least: 0, most: 120, ...practice, meaning: 'least dwell of the cleaner; the label decides' },
  { id: 'dwell.most', value: 5, unit: 'min', kind: 'minutes', least: 0, most: 120, positive: true, ...practice, meaning: 'most dwell of the cleaner; the label decides' },
  { id: 'prewet.residualUptake', value: 1, unit: 'kg/m2', kind: 'uptake', least: 0, most: 20, positive: true, ...assumption, meaning: 'uptake that may be left for the dwell' },
  { id: 'prewet.passContact', value: 2, unit: 'min', kind: 'minutes', least: 0, most: 60, positive: true, ...assumption, meaning: 'time that one pass of plain water keeps the face wet' },
  { id: 'prewet.leastPasses', value: 2, unit: '1', kind: 'count', least: 0, most: 20, whole: true, ...practice, meaning: 'least passes of plain water' },
  { id: 'prewet.runoffPerPass', value: 1, unit: 'L/m2', kind: 'filmPerArea', least: 0, most: 50, ...assumption, meaning: 'water that runs off in one pass' },
  { id: 'water.density', value: 1, unit: 'kg/L', kind: 'labDensity', least: 0.9, most: 1.1, ...assumption, meaning: 'density of water, rounded (0.998 kg/L at 20 degC)' },
  { id: 'nozzle.number', value: 10, unit: '1', kind: 'count', least: 0, most: 200, positive: true, ...assumption, meaning: 'number of the rinse nozzle' },
  { id: 'nozzle.pressure', value: 400, unit: 'psi', kind: 'pressure', least: 0, most: 5000, positive: true, sourceKind: 'published', source: 'gsa-0451004s', meaning: 'pressure at the rinse nozzle' },
  { id: 'nozzle.angle', value: 40, unit: 'degree', kind: 'angle', least: 0, most: 120, ...memory, meaning: 'fan angle of the rinse nozzle' },
  { id: 'nozzle.distance', value: 12, unit: 'in', kind: 'shortLength', least: 0, most: 240, ...memory, meaning: 'distance of the nozzle from the face' },
  { id: 'rinse.count', value: 1, unit: '1', kind: 'count', least: 1, most: 20, whole: true, ...assumption, meaning: 'times the wall is rinsed' },
  { id: 'rate.apply', value: 10, ...areaRate, meaning: 'area that a crew covers with cleaner' },
  { id: 'rate.rinse', value: 8, ...areaRate, meaning: 'area that a crew rinses' },
  { id: 'rate.scrape.light', value: 400, ...handRate, meaning: 'dry scraping of light residue, Type N mortar' },
  { id: 'rate.scrape.moderate', value: 200, ...handRate, meaning: 'dry scraping of moderate residue, Type N mortar' },
  { id: 'rate.scrape.heavy', value: 90, ...handRate, meaning: 'dry scraping of heavy residue, Type N mortar' },
  { id: 'mortar.effortExponent', value: 0.5, unit: '1', kind: 'ratio', least: 0, most: 3, ...assumption, meaning: 'power of the strength ratio that scraping effort goes with' },
  { id: 'mortar.M.strength', value: 2500, ...strength, meaning: '28-day strength of Type M' },
  { id: 'mortar.S.strength', value: 1800, ...strength, meaning: '28-day strength of Type S' },
  { id: 'mortar.N.strength', value: 750, ...strength, meaning: '28-day strength of Type N' },
  { id: 'mortar.O.strength', value: 350, ...strength, meaning: '28-day strength of Type O' },
  { id: 'rate.scrub', value: 60, ...handRate, meaning: 'scrubbing that makes up for one class short' },
  { id: 'rate.maskOn', value: 150, ...handRate, meaning: 'masking put on' },
  { id: 'rate.maskOff', value: 400, ...handRate, meaning: 'masking taken off' },
  { id: 'fixture.cover', value: 6, unit: 'min', kind: 'minutes', least: 0, most: 480, ...assumption, meaning: 'one person covers one fixture' },
  { id: 'fixture.film', value: 4, unit: 'ft2', kind: 'area', least: 0, most: 1000, ...assumption, meaning: 'masking that one fixture takes' },
  { id: 'mask.lap', value: 6, unit: 'in', kind: 'shortLength', least: 0, most: 120, ...practice, meaning: 'lap of the masking along each perimeter' },
  { id: 'tape.waste', value: 10, unit: '%', kind: 'percent', least: 0, most: 300, ...assumption, meaning: 'tape bought beyond the perimeters' },
  { id: 'film.waste', value: 15, unit: '%', kind: 'percent', least: 0, most: 300, ...assumption, meaning: 'film bought beyond the masking area' },
  { id: 'access.dropWidth', value: 20, unit: 'ft', kind: 'length', least: 0, most: 1000, positive: true, ...assumption, meaning: 'length of wall reached from one position' },
  { id: 'access.move', value: 20, unit: 'min', kind: 'minutes', least: 0, most: 1440, ...assumption, meaning: 'the crew moves to the next position' },
  { id: 'cleaner.coverage', value: 100, unit: 'ft2/gal', kind: 'coverage', least: 0, most: 10000, positive: true, ...assumption, meaning: 'area that one volume of mixed cleaner covers; the label decides' },
  { id: 'cleaner.applications', value: 1, unit: '1', kind: 'count', least: 1, most: 10, whole: true, ...assumption, meaning: 'coats of cleaner' },
  { id: 'cleaner.dilution.1', value: 20, ...dilution, meaning: 'parts of water to 1 of concentrate, class 1; the label decides' },
  { id: 'cleaner.dilution.2', value: 8, ...dilution, meaning: 'parts of water to 1 of concentrate, class 2; the label decides' },
  { id: 'cleaner.dilution.3', value: 5, ...dilution, meaning: 'parts of water to 1 of concentrate, class 3; the label decides' },
  { id: 'weather.air', value: 68, unit: 'degF', kind: 'temperature', least: -40, most: 140, ...assumption, meaning: 'air temperature' },
  { id: 'weather.surface', value: 68, unit: 'degF', kind: 'temperature', least: -40, most: 200, ...assumption, meaning: 'temperature of the face' },
  { id: 'weather.humidity', value: 50, unit: '%', kind: 'percent', least: 0, most: 100, ...assumption, meaning: 'relative humidity of the air' },
  { id: 'weather.wind', value: 10, unit: 'km/h', kind: 'windSpeed', least: 0, most: 150, ...assumption, meaning: 'wind along the face' },
  { id: 'weather.film', value: 0.1, unit: 'mm water', kind: 'filmThickness', least: 0, most: 5, positive: true, ...assumption, meaning: 'film of cleaner on the face' },
  { id: 'sample.area', value: 0, unit: 'ft2', kind: 'area', least: 0, most: 100000, ...assumption, meaning: 'sample area washed and looked at when dry; 0 = none yet' },
  { id: 'sample.least', value: 20, unit: 'ft2', kind: 'area', least: 0, most: 100000, ...advice, meaning: 'least sample area' },
  { id: 'limit.age', value: 7, unit: 'd', kind: 'days', least: 0, most: 365, ...advice, meaning: 'youngest masonry to wash' },
  { id: 'limit.air', value: 40, unit: 'degF', kind: 'temperature', least: -40, most: 140, sourceKind: 'published', source: 'trade-site', meaning: 'coldest air and face to wash in, until dry' },
  { id: 'limit.distance', value: 6, unit: 'in', kind: 'shortLength', least: 0, most: 240, sourceKind: 'published', source: 'stone-producer', meaning: 'least distance of the nozzle, published for limestone and taken for all' },
  { id: 'limit.angle', value: 25, unit: 'degree', kind: 'angle', least: 0, most: 120, ...memory, meaning: 'narrowest fan that does not harm joints' },
] as const satisfies readonly Factor[];

/** The id of a factor of the table. */
export type FactorId = (typeof factors)[number]['id'];
