import { toBase } from '../../../src/quantity/conversions';
import { printed, type SourceChecks } from '../check';

/** Reference pages on units that were read. */
export const unitReference: SourceChecks = {
  document: 'Reference pages of unit definitions and conversions on the web',
  edition: 'as read, not dated',
  section: 'pound-force, pound by square inch, pound by US gallon',
  checks: [
    {
      what: '1 lbf in N, from the pound and standard gravity',
      value: 4.4482216152605,
      unit: 'N',
      mark: 'published',
      ...printed(12),
      ours: () => toBase(1, 'lbf'),
    },
    {
      what: '1 psi in kPa, from the same definitions',
      value: 6.894757293168361,
      unit: 'kPa',
      mark: 'published',
      ...printed(12),
      ours: () => toBase(1, 'psi'),
    },
    {
      what: '120 psi in kPa, worked example',
      value: 827.370875,
      unit: 'kPa',
      mark: 'published',
      ...printed(6),
      ours: () => toBase(120, 'psi'),
    },
    {
      what: '1 lb/gal in kg/m3',
      value: 119.8264,
      unit: 'kg/m3',
      mark: 'published',
      ...printed(4),
      ours: () => toBase(1, 'lb/gal') * 1000,
    },
    {
      what: '8 lb/gal in kg/m3, worked example',
      value: 958.611,
      unit: 'kg/m3',
      mark: 'published',
      ...printed(3),
      ours: () => toBase(8, 'lb/gal') * 1000,
    },
  ],
};
