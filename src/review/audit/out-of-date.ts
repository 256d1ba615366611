import type { AuditFinding } from './audit-finding';

/**
 * Sorts what differed before the workbook calculated from what still does.
 * @param before findings of the first look
 * @param after findings after the workbook had calculated
 * @returns the findings of the second look; what differed only at first is out of date
 */
export function afterCalculating(
  before: readonly AuditFinding[],
  after: readonly AuditFinding[],
): AuditFinding[] {
  const still = new Set(after.map(place));
  const mended = before.filter((finding) => finding.kind === 'differs' && !still.has(place(finding)));
  return [
    ...after.filter(({ kind }) => kind === 'typed over' || kind === 'differs'),
    ...mended.map((finding): AuditFinding => ({
      ...finding,
      kind: 'out of date',
      what: `${finding.what} It was out of date until the workbook calculated just now.`,
      todo: 'Have the workbook calculate before a number is handed on.',
    })),
    ...after.filter(({ kind }) => kind !== 'typed over' && kind !== 'differs'),
  ];
}

function place({ sheet, address }: AuditFinding): string {
  return `${sheet}!${address}`;
}
