import { className } from '../../rules/cleaner-classes';
import { materialsNamed } from '../named';
import { factorFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Only a sample on this wall, looked at when dry, shows what cleaner and method do to it. */
export const sample: StepBuilder = ({ zone, factors }) => {
  if (zone.governing === undefined) return undefined;
  const used = zone.governing.classToUse;
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
      rowsFact('Materials', materialsNamed(zone.zone.rows.filter(({ masked }) => !masked))),
      factorFact('Looked at so far, says the workbook', 'sample.area', factors),
    ],
    gate: true,
    source: 'tn20',
    kind: 'published',
  };
};
