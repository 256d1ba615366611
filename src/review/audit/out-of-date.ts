import type { AuditFinding } from './audit-finding';

/**
 * Sorts what differed before the workbook calculated from what still does.
 * @param before findings of the first look
 * @param after findings after the workbook had calculated
 * @param rules the version under which the workbook was last worked out, undefined where it does not say so, and the
 * present one
 * @param rules.was the former version
 * @param rules.is the present version
 * @returns the findings of the second look; what differed only at first is out of date, or was worked out under other
 * rules
 */
export function afterCalculating(
  before: readonly AuditFinding[],
  after: readonly AuditFinding[],
  rules: { readonly was: string | undefined; readonly is: string },
): AuditFinding[] {
  const still = new Set(after.map(place));
  const mended = before.filter((finding) => finding.kind === 'differs' && !still.has(place(finding)));
  return [
    ...after.filter(({ kind }) => kind === 'typed over' || kind === 'differs'),
    ...mended.map((finding) => mendedFinding(finding, rules)),
    ...after.filter(({ kind }) => kind !== 'typed over' && kind !== 'differs'),
  ];
}

function mendedFinding(
  finding: AuditFinding,
  { was, is }: { readonly was: string | undefined; readonly is: string },
): AuditFinding {
  if (was !== undefined && was !== is) {
    return {
      ...finding,
      kind: 'other rules',
      what: `${finding.what} It was worked out under rules ${was}; these are rules ${is}.`,
      todo: 'Nobody typed over it. Read what changed between the two, and pass on the new number or say which one holds.',
    };
  }
  return {
    ...finding,
    kind: 'out of date',
    what: `${finding.what} It was out of date until the workbook calculated just now.`,
    todo: 'Recalculate the workbook before you pass a number on.',
  };
}

function place({ sheet, address }: AuditFinding): string {
  return `${sheet}!${address}`;
}
