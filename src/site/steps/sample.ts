import { className } from '../../rules/cleaner-classes';
import { sampleMissing, stainUnderAcid } from '../../hazards/cleaner-on-wall';
import { factorAmount } from '../amount';
import { listed, wallsNamed } from '../named';
import { factorFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Only a sample on this wall, looked at when dry, shows what cleaner and method do to it. */
export const sample: StepBuilder = ({ zone, factors }) => {
  if (zone.governing === undefined) return undefined;
  const used = zone.governing.classToUse;
  const washed = zone.zone.rows.filter(({ masked }) => !masked);
  const materials = [...new Set(washed.map(({ material }) => material.name))];
  const stained = stainUnderAcid(zone);
  return {
    id: 'sample',
    title: 'Sample area',
    todo: [
      `Wash a sample of each material with class ${String(used)} (${className(used)}) by the steps below, protection up.`,
      ...(sampleMissing(zone, factors)
        ? [`The workbook states less than ${factorAmount('sample.least', factors)} inspected so far.`]
        : []),
      ...(stained.length > 0
        ? [`Look for vanadium and manganese stain, which acid can bring out: ${wallsNamed(stained)}.`]
        : []),
      'Let it dry, then look at it with whoever accepts the work.',
      'Tick this step only when the dry sample is accepted.',
    ],
    facts: [
      factorFact('Least area of a sample', 'sample.least', factors),
      factorFact('Least wait before it is inspected', 'sample.wait', factors),
      rowsFact('Materials', listed(materials)),
      factorFact('Looked at so far, says the workbook', 'sample.area', factors),
    ],
    decidedOn: [`class ${String(used)}`, ...materials],
    source: 'tn20',
    kind: 'published',
  };
};
