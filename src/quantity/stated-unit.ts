import { show, take, type Kind, type System } from './systems';

/** A unit as a heading or a cell of a bid states it. */
export interface StatedUnit {
  /** As messages show it. */
  readonly shown: string;
  readonly kind: Extract<Kind, 'area' | 'length' | 'volume' | 'laborHours' | 'suction' | 'days' | 'count'>;
  /** The systems in which numbers are taken in it; none for a unit of another size. */
  readonly systems: readonly System[];
  /** How many of the unit that is taken make one of it, for a unit of another size. */
  readonly size?: { readonly of: number; readonly unit: string };
  /** How it is written, in small letters without spaces, points and signs. */
  readonly written: readonly string[];
  /** Written forms that are also words or marks of other things. */
  readonly weak?: readonly string[];
}

const US = ['US'] as const;
const SI = ['SI'] as const;
const both = ['US', 'SI'] as const;
const times = (of: number, unit: string) => ({ systems: [], size: { of, unit } });
const squareFeet = [
  'sf',
  'sqft',
  'sqfeet',
  'sqfoot',
  'squarefeet',
  'squarefoot',
  'squareft',
  'ft2',
  'gsf',
  'nsf',
];
const squareMetres = [
  'm2',
  'sqm',
  'sqmeter',
  'sqmeters',
  'sqmetre',
  'sqmetres',
  'squaremeter',
  'squaremeters',
  'squaremetre',
  'squaremetres',
];

/** Units of bids and drawings (common practice); 1 yd = 3 ft and 1 ft = 12 in. exactly (NIST SP 811, appendix B). */
const statedUnits: readonly StatedUnit[] = [
  { shown: 'ft²', kind: 'area', systems: US, written: squareFeet },
  { shown: 'm²', kind: 'area', systems: SI, written: squareMetres, weak: ['sm'] },
  {
    shown: 'yd²',
    kind: 'area',
    ...times(9, 'ft²'),
    written: ['sy', 'sqyd', 'sqyds', 'sqyard', 'sqyards', 'squareyard', 'squareyards', 'yd2'],
  },
  { shown: 'squares', kind: 'area', ...times(100, 'ft²'), written: ['squares', 'csf'], weak: ['sq', 'sqs'] },
  { shown: 'thousands of ft²', kind: 'area', ...times(1000, 'ft²'), written: ['msf'] },
  { shown: 'in²', kind: 'area', ...times(1 / 144, 'ft²'), written: ['in2', 'sqin', 'squareinches'] },
  { shown: 'cm²', kind: 'area', ...times(1e-4, 'm²'), written: ['cm2', 'sqcm'] },
  { shown: 'mm²', kind: 'area', ...times(1e-6, 'm²'), written: ['mm2', 'sqmm'] },
  {
    shown: 'ft',
    kind: 'length',
    systems: US,
    written: [
      'ft',
      'feet',
      'foot',
      'lf',
      'linft',
      'lft',
      'lineft',
      'linearft',
      'linealft',
      'linearfeet',
      'linealfeet',
      'lnft',
    ],
    weak: ["'", '′', '’'],
  },
  {
    shown: 'm',
    kind: 'length',
    systems: SI,
    written: ['meter', 'meters', 'metre', 'metres', 'linm', 'linearm', 'linearmeters', 'linearmetres'],
    weak: ['m', 'lm'],
  },
  {
    shown: 'in.',
    kind: 'length',
    ...times(1 / 12, 'ft'),
    written: ['inch', 'inches', 'ins'],
    weak: ['in', '"', '″', '”'],
  },
  { shown: 'yd', kind: 'length', ...times(3, 'ft'), written: ['yd', 'yds', 'yard', 'yards'], weak: ['ly'] },
  { shown: 'mm', kind: 'length', ...times(1e-3, 'm'), written: ['mm', 'millimeters', 'millimetres'] },
  { shown: 'cm', kind: 'length', ...times(1e-2, 'm'), written: ['cm', 'centimeters', 'centimetres'] },
  {
    shown: 'g/30in²',
    kind: 'suction',
    systems: US,
    written: ['g/30in2', 'g/min/30in2', 'g/30in2/min', 'g/30sqin', 'g/min30in2', 'g/30in2min'],
    weak: ['g'],
  },
  {
    shown: 'kg/m²',
    kind: 'suction',
    systems: SI,
    written: ['kg/m2', 'kg/m2/min', 'kg/m2min', 'kg/sqm', 'kg/min/m2'],
  },
  { shown: 'gal', kind: 'volume', systems: US, written: ['gal', 'gals', 'gallon', 'gallons'] },
  {
    shown: 'L',
    kind: 'volume',
    systems: SI,
    written: ['liter', 'liters', 'litre', 'litres', 'ltr'],
    weak: ['l'],
  },
  { shown: 'm³', kind: 'volume', ...times(1000, 'L'), written: ['m3', 'cum'] },
  {
    shown: 'labor-hours',
    kind: 'laborHours',
    systems: both,
    written: ['laborhours', 'labourhours', 'laborh', 'manhours', 'personhours', 'mh', 'hours', 'hrs'],
    weak: ['h', 'hr'],
  },
  // How many labor-hours it is follows from the crew.
  { shown: 'crew-hours', kind: 'laborHours', systems: [], written: ['crewhours', 'crewhrs', 'crewh'] },
  { shown: 'minutes', kind: 'laborHours', ...times(1 / 60, 'labor-hours'), written: ['minutes', 'mins'] },
  { shown: 'days', kind: 'days', systems: both, written: ['days', 'day'], weak: ['d'] },
  { shown: 'weeks', kind: 'days', ...times(7, 'days'), written: ['weeks', 'week', 'wks', 'wk'] },
  { shown: 'months', kind: 'days', systems: [], written: ['months', 'month', 'mos'] },
  {
    shown: 'each',
    kind: 'count',
    systems: both,
    written: ['each', 'pcs'],
    weak: ['ea', 'no', 'nr', '#'],
  },
];

const strong = new Map(statedUnits.flatMap((unit) => unit.written.map((name) => [name, unit])));
const weak = new Map(statedUnits.flatMap((unit) => (unit.weak ?? []).map((name) => [name, unit])));

/**
 * The unit of a written form.
 * @param text for example `Sq. Ft.`
 * @returns the unit, and whether the form may also be a word of another sense; undefined where it is no unit
 */
export function unitWritten(
  text: string,
): { readonly unit: StatedUnit; readonly isWeak: boolean } | undefined {
  const packed = packedUnit(text);
  const unit = strong.get(packed) ?? weak.get(packed);
  return unit && { unit, isWeak: !strong.has(packed) };
}

/**
 * A number of a stated unit in the unit in force.
 * @param value the number
 * @param unit its unit
 * @param kind what it measures
 * @param system the display system
 * @returns the number in the unit of the system; undefined where the unit has no fixed size
 */
export function inSystem(value: number, unit: StatedUnit, kind: Kind, system: System): number | undefined {
  const name = unit.size?.unit ?? unit.shown;
  const of = statedUnits.find(({ shown, systems }) => shown === name && systems.length > 0);
  const [from] = of?.systems ?? [];
  return from && show(take(value * (unit.size?.of ?? 1), kind, from), kind, system);
}

/** Small letters without spaces, points, hyphens and signs of powers and products. */
function packedUnit(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s.^·*()[\]_-]/g, '');
}
