import { classInWords } from '../../rules/cleaner-classes';
import { sampleMissing, stainUnderAcid } from '../../hazards/cleaner-on-wall';
import { factorAmount } from '../amount';
import { listed, wallsNamed } from '../named';
import { factorFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';
import { rowsOf, type SiteWash } from '../washes';
import { SAMPLE_WASH } from './sample-wash';

/** Only a sample on this wall, inspected when dry, shows what cleaner and method do to it. */
export const sample: StepBuilder = ({ zone, factors, first, later }) => {
  const washes = [...(first ? [first] : []), ...later];
  if (washes.length === 0) return undefined;
  const ofWash = (wash: SiteWash): string[] => [
    ...new Set(rowsOf(wash).map(({ material }) => material.name)),
  ];
  const materials = [...new Set(washes.flatMap(ofWash))];
  const stained = stainUnderAcid(zone);
  const missing = sampleMissing(zone, factors);
  const days = factors.value('sample.wait');
  return {
    id: 'sample',
    title: 'Sample area',
    todo: [
      ...washes.map((wash) => {
        const these = wash.later ? listed(ofWash(wash)) : 'each material';
        return `Wash a sample of ${these} with ${classInWords(wash.class)} by the steps below, protection up.`;
      }),
      ...(missing
        ? [`The workbook states less than ${factorAmount('sample.least', factors)} inspected so far.`]
        : []),
      ...(stained.length > 0
        ? [`Look for vanadium and manganese stain, which acid can bring out: ${wallsNamed(stained)}.`]
        : []),
      'Let it dry, then look at it with whoever accepts the work.',
      'Tick this step only when the dry sample is accepted.',
    ],
    facts: [
      factorFact('Minimum area of a sample', 'sample.least', factors),
      factorFact('Minimum wait before inspection', 'sample.wait', factors),
      rowsFact('Materials', listed(materials)),
      factorFact('Inspected so far, per the workbook', 'sample.area', factors),
    ],
    decidedOn: [
      ...(first ? [`class ${String(first.class)}`, ...ofWash(first)] : []),
      ...later.flatMap((wash) => ofWash(wash).map((name) => `${name} with class ${String(wash.class)}`)),
    ],
    mayOverrule: true,
    ...(missing && days > 0 ? { waits: { ...SAMPLE_WASH, days } } : {}),
    source: 'tn20',
    kind: 'published',
  };
};
