import { cautions } from '../../../src/rules/cautions';
import { exact, type PublishedCheck, type SourceChecks } from '../check';

function inCaution(id: string, name: string): number {
  const found = cautions.find((caution) => caution.id === id)?.numbers?.[name];
  if (found === undefined) throw new Error(`The caution ${id} has no number ${name}.`);
  return found.value;
}

const check = (what: string, value: number, unit: string, id: string, name: string): PublishedCheck => ({
  what,
  value,
  unit,
  mark: 'published',
  ...exact,
  reading: true,
  ours: () => inCaution(id, name),
});

/** Numbers that cautions quote. */
export const regulations: SourceChecks = {
  document: '40 CFR 403.5(b); 29 CFR 1926.55, 1926.50(g), 1926.451; WAC 296-800-15030, as ANSI/ISEA Z358.1',
  edition: 'in force, read in copies',
  section: 'limits that the cautions quote',
  checks: [
    check('least pH of a discharge to the sewer', 5, 'pH', 'sewer', 'least'),
    check('ceiling of hydrogen chloride in air', 5, 'ppm', 'hydrogen-chloride', 'ceiling'),
    check('hydrogen fluoride in air over 8 h', 3, 'ppm', 'fluoride-air', 'most'),
    check('flow of an eyewash', 15, 'min', 'eyewash', 'flow'),
    check('way to an eyewash', 10, 's', 'eyewash', 'reach'),
    check('fall protection on a scaffold above', 10, 'ft', 'fall-protection', 'above'),
    check('load that a scaffold carries beside its own weight', 4, 'times', 'scaffold-load', 'times'),
  ],
};
