import { someOf } from './spills';
import { findingKinds, severities, type AuditFinding, type FindingKind } from './audit-finding';

/** How the kinds of findings are headed for a reader. */
export const kindTitles: Readonly<Record<FindingKind, string>> = {
  'typed over': 'Typed over',
  'left out': 'Left out of a total',
  'added twice': 'Added twice',
  differs: 'Shows something other than its formula gives',
  'other rules': 'Worked out under other rules',
  'out of date': 'Out of date',
  error: 'Shows an error',
  'not checked': 'Not checked',
  check: 'Checks on the walls',
  override: 'Values of your own in place of a starting value',
};

/**
 * The rows of a review sheet.
 * @param findings what was found, in order
 * @param counts what the audit looked at
 * @param counts.formulas Washdown formulas
 * @param counts.agree those that show what they should
 * @param date when, as the host says it
 * @returns the rows, the headings of the list in the fifth
 */
export function reviewRows(
  findings: readonly AuditFinding[],
  counts: { readonly formulas: number; readonly agree: number },
  date: string,
): (string | number)[][] {
  const ofKind = (kind: FindingKind) => findings.filter((finding) => finding.kind === kind);
  return [
    ['Washdown review', date],
    ['Washdown formulas', counts.formulas],
    ['that show what they should', counts.agree],
    [],
    ['Kind', 'Sheet', 'Cell', 'What', 'What to do', 'Formula', 'Severity', 'In error because of it'],
    ...findingKinds.flatMap((kind) =>
      ofKind(kind).map(({ sheet, address, what, todo, formula, reaches = [] }) => [
        kindTitles[kind],
        sheet,
        address,
        what,
        todo,
        formula ?? '',
        severities[kind],
        someOf(reaches.map((place) => `${place.sheet}!${place.address}`)),
      ]),
    ),
  ];
}
