import { fromBase, toBase, type Unit } from '../../../src/quantity/conversions';
import { exact, printed, type PublishedCheck, type SourceChecks } from '../check';
import { bySecondLibrary } from '../second-library';

function to(from: Unit, into: string, times: number, value: number, decimals: number): PublishedCheck {
  return {
    what: `1 ${from} in ${into}`,
    value,
    unit: into,
    mark: 'from memory',
    ...printed(decimals),
    ours: () => toBase(1, from) * times,
    second: bySecondLibrary(from, into),
  };
}

/** Conversions of appendix B.8. */
export const nistSp811: SourceChecks = {
  document: 'NIST Special Publication 811, Guide for the Use of the International System of Units',
  edition: '2008',
  section: 'appendix B.8',
  checks: [
    {
      what: '1 gal in L',
      value: 3.785411784,
      unit: 'L',
      mark: 'published',
      ...exact,
      ours: () => toBase(1, 'gal'),
      second: bySecondLibrary('gal', 'L'),
    },
    {
      what: '1 ft2 in m2',
      value: 0.09290304,
      unit: 'm2',
      mark: 'published',
      ...exact,
      ours: () => toBase(1, 'ft2'),
      second: bySecondLibrary('ft2', 'm2'),
    },
    {
      what: '1 psi in kPa',
      value: 6.894757,
      unit: 'kPa',
      mark: 'published',
      ...printed(6),
      ours: () => toBase(1, 'psi'),
      second: bySecondLibrary('psi', 'kPa'),
    },
    {
      what: '1 gal/ft2 in L/m2, the gallon by the square foot',
      value: 40.74583,
      unit: 'L/m2',
      mark: 'computed',
      ...printed(5),
      ours: () => toBase(1, 'gal/ft2'),
      second: bySecondLibrary('gal/ft2', 'L/m2'),
    },
    to('in', 'mm', 1000, 25.4, 9),
    to('ft', 'm', 1, 0.3048, 9),
    to('lb', 'kg', 1, 0.4535924, 7),
    to('lbf', 'N', 1, 4.448222, 6),
    to('lb/ft2', 'kg/m2', 1, 4.882428, 6),
    to('lb/gal', 'kg/m3', 1000, 119.8264, 4),
    to('gal/min', 'L/s', 1 / 60, 0.0630902, 8),
    to('mph', 'km/h', 1, 1.609344, 9),
    {
      what: '32 degF in degC',
      value: 0,
      unit: 'degC',
      mark: 'from memory',
      ...exact,
      ours: () => toBase(32, 'degF'),
      second: {
        by: 'another point of the same line: -40 is the same in both',
        value: () => fromBase(-40, 'degC') + 40,
      },
    },
  ],
};
