import { amount, factorAmount } from '../amount';
import { ageNotStated, tooOld, tooYoung } from '../../hazards/age';
import { washedRows } from '../../hazards/washed';
import { wallsNamed } from '../named';
import { factorFact, rowsFact } from '../step-facts';
import type { StepBuilder } from '../step';

/** Nothing is washed before it is old enough. */
export const age: StepBuilder = ({ zone, factors }) => {
  const washed = washedRows(zone);
  if (washed.length === 0) return undefined;
  const stated = washed.filter((row) => row.age > 0);
  const unstated = ageNotStated(zone);
  const young = tooYoung(zone, factors);
  const old = tooOld(zone, factors);
  const youngest = Math.min(...stated.map((row) => row.age));
  return {
    id: 'age',
    title: 'Age of the wall',
    todo: [
      'Look up the day when each wall was laid.',
      ...(unstated.length > 0
        ? ['Where the workbook does not state the age, whoever ticks this step confirms it.']
        : []),
      ...(old.length > 0
        ? [
            `Smears may have hardened: ${wallsNamed(old)} ${old.length === 1 ? 'is' : 'are'} older than ${factorAmount('limit.late', factors)}. Try the sample first; no stronger acid, no more pressure.`,
          ]
        : []),
    ],
    facts: [
      factorFact('Minimum age to wash', 'limit.age', factors),
      factorFact('Smears are harder after', 'limit.late', factors),
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
    mayOverrule: true,
    hold:
      young.length > 0
        ? `Too young: ${wallsNamed(young)}. Wait until they are ${factorAmount('limit.age', factors)} old, then enter the new age in the Age column.`
        : undefined,
    source: 'tn20',
    kind: 'published',
  };
};
