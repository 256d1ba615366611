import { amount, factorAmount } from '../amount';
import { wallsNamed } from '../named';
import { factorFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Nothing is washed before it is old enough. */
export const age: StepBuilder = ({ zone, factors }) => {
  const washed = zone.zone.rows.filter(({ masked }) => !masked);
  if (washed.length === 0) return undefined;
  const stated = washed.filter((row) => row.age > 0);
  const unstated = washed.filter((row) => row.age === 0);
  const young = stated.filter((row) => row.age < factors.value('limit.age'));
  const youngest = Math.min(...stated.map((row) => row.age));
  return {
    id: 'age',
    title: 'Age of the wall',
    todo: [
      'Look up the day on which each wall was laid.',
      ...(unstated.length > 0
        ? ['Where the workbook does not state the age, whoever ticks this step vouches for it.']
        : []),
    ],
    facts: [
      factorFact('Youngest to wash', 'limit.age', factors),
      ...(stated.length > 0
        ? [
            rowsFact(
              'Youngest wall here',
              `${amount(youngest, 'days', factors.system)}: ${wallsNamed(stated.filter((row) => row.age === youngest))}`,
            ),
          ]
        : []),
      ...(unstated.length > 0 ? [rowsFact('Age not stated', wallsNamed(unstated))] : []),
    ],
    decidedOn: washed.map(({ wall }) => wall),
    hold:
      young.length > 0
        ? `Too young: ${wallsNamed(young)}. Wait until they are ${factorAmount('limit.age', factors)} old, then put the new age into the column Age.`
        : undefined,
    source: 'tn20',
    kind: 'published',
  };
};
