import type { Kind } from '../quantity/systems';
import { factorRow } from '../rules/factor-row';
import type { FactorId } from '../rules/factors';
import { methods, type MethodId } from '../rules/methods';
import type { FactorsInForce, MaterialInForce } from '../rules/read-factors';
import type { SiteSourceId } from '../rules/site-sources';
import { amount, factorAmount, siteAmount } from './amount';
import { groupedBy } from './grouped';
import { wallsNamed } from './named';
import type { StepFact } from './step';
import type { WashedWalls } from './washes';

/**
 * A factor in force as a fact of a step.
 * @param label its name on site
 * @param id the factor
 * @param factors the factors in force
 * @returns the fact, marked `override` where the user gave the value
 */
export function factorFact(label: string, id: FactorId, factors: FactorsInForce): StepFact {
  const row = factorRow(id);
  const value = factorAmount(id, factors);
  return factors.overridden(id)
    ? { label, value, source: 'factors', kind: 'override' }
    : { label, value, source: row.source, kind: row.sourceKind };
}

/**
 * A result of the estimate as a fact of a step.
 * @param label its name on site
 * @param value in the base unit
 * @param kind what it measures
 * @param method the rule that it follows
 * @param factors the factors in force, for their display system
 * @returns the fact
 */
export function resultFact(
  label: string,
  value: number,
  kind: Kind,
  method: MethodId,
  factors: FactorsInForce,
): StepFact {
  const { source, kind: founded } = methods[method];
  return {
    label,
    value: Number.isFinite(value) ? siteAmount(value, kind, factors.system) : 'no value',
    source,
    kind: founded,
  };
}

/**
 * What the wall rows state, as a fact of a step.
 * @param label its name on site
 * @param value in words
 * @returns the fact
 */
export function rowsFact(label: string, value: string): StepFact {
  return { label, value, source: 'rows', kind: 'input' };
}

/**
 * The most pressure that a material takes, as a fact of a step.
 * @param label its name on site
 * @param material the material
 * @param factors the factors in force
 * @returns the fact
 */
export function pressureFact(label: string, material: MaterialInForce, factors: FactorsInForce): StepFact {
  const value = `${amount(material.pressure, 'pressure', factors.system)}, ${material.name}`;
  if (material.overridden.includes('pressure')) return { label, value, source: 'factors', kind: 'override' };
  const bySource: Readonly<Record<string, SiteSourceId>> = {
    'from memory': 'memory',
    'common practice': 'practice',
  };
  return { label, value, source: bySource[material.kind] ?? 'estimate', kind: material.kind };
}

/**
 * A number of walls as facts of a step: one where all walls agree, else one for each value with its walls.
 * @param label its name on site
 * @param walls the walls by group
 * @param factOf the fact of a group of walls
 * @returns the facts
 */
export function wallFacts<Walls extends WashedWalls>(
  label: string,
  walls: readonly Walls[],
  factOf: (walls: Walls) => StepFact,
): StepFact[] {
  const facts = walls.map((group) => ({ fact: factOf(group), rows: group.rows }));
  const groups = [...groupedBy(facts, ({ fact }) => fact.value).values()];
  return groups.flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const named = wallsNamed(group.flatMap(({ rows }) => rows));
    return [{ ...first.fact, label: groups.length === 1 ? label : `${label}: ${named}` }];
  });
}
