import { className } from '../../rules/cleaner-classes';
import { listed } from '../named';
import { factorFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Only a sample on this wall, looked at when dry, shows what cleaner and method do to it. */
export const sample: StepBuilder = ({ zone, factors }) => {
  if (zone.governing === undefined) return undefined;
  const used = zone.governing.classToUse;
  const washed = zone.zone.rows.filter(({ masked }) => !masked);
  const materials = [...new Set(washed.map(({ material }) => material.name))];
  return {
    id: 'sample',
    title: 'Sample area',
    todo: [
      `Wash a sample of each material with class ${String(used)} (${className(used)}) by the steps below, protection up.`,
      'Let it dry, then look at it with whoever accepts the work.',
      'Tick this step only when the dry sample is accepted.',
    ],
    facts: [
      factorFact('Least area of a sample', 'sample.least', factors),
      factorFact('Least wait between sample and work', 'sample.wait', factors),
      rowsFact('Materials', listed(materials)),
      factorFact('Looked at so far, says the workbook', 'sample.area', factors),
    ],
    decidedOn: [`class ${String(used)}`, ...materials],
    source: 'tn20',
    kind: 'published',
  };
};
