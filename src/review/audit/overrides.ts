import { comparable } from '../../quantity/cell';
import { WashdownError } from '../../quantity/problem';
import { withUnit } from '../../quantity/shown-unit';
import { show, unitOf } from '../../quantity/systems';
import { className } from '../../rules/cleaner-classes';
import { factors } from '../../rules/factors';
import { readFactors, shownStart, type FactorsInForce } from '../../rules/read-factors';
import { cellAddress } from '../../spreadsheet/address';
import { said } from './agree';
import type { AuditFinding } from './audit-finding';
import type { AuditedBook, SheetArea } from './audited-book';

const TODO = 'Make sure that the reason for your value is on file.';
const NOTED = 'Check that the note beside it still holds.';

/**
 * The values of the user's own in a range of factors.
 * @param book the workbook
 * @param area where the factors stand
 * @returns one finding for each; empty where the range cannot be read, which its formulas say themselves
 */
export function overrideFindings(book: AuditedBook, area: SheetArea): AuditFinding[] {
  const rows = book.rows(area);
  const inForce = read(rows);
  if (!inForce) return [];
  const at = (id: string): Pick<AuditFinding, 'sheet' | 'address'> => {
    const row = rows.findIndex(([name]) => comparable(String(name)) === comparable(id));
    return { sheet: area.sheet, address: cellAddress(area.top + Math.max(0, row), area.left + 1) };
  };
  const { system } = inForce;
  const finding = (id: string, what: string): AuditFinding => {
    const note = inForce.note(id);
    const told = note === '' ? { what, todo: TODO } : { what: `${what} Its note: ${note}`, todo: NOTED };
    return { kind: 'override', ...at(id), ...told };
  };
  const own = factors
    .filter(({ id }) => inForce.changed(id))
    .map((factor): AuditFinding => {
      const unit = unitOf(factor.kind, system);
      const value = withUnit(said(show(inForce.value(factor.id), factor.kind, system)), unit);
      const start = withUnit(said(shownStart(factor, system)), unit);
      const what = `${factor.id} is ${value}; the starting value is ${start}.`;
      return finding(factor.id, what);
    });
  const chosen = inForce.chosenClass;
  const ofClass: AuditFinding[] =
    chosen === undefined
      ? []
      : [
          finding(
            'cleaner.class',
            `cleaner.class is ${String(chosen)} (${className(chosen)}); otherwise the fewest labor-hours decide.`,
          ),
        ];
  const ofMaterials = inForce.materials.flatMap(({ code, name, overridden }) =>
    overridden.map((property): AuditFinding => {
      const what = `The ${property} of ${name} is a value of your own.`;
      return finding(`material.${code}.${property}`, what);
    }),
  );
  return [...own, ...ofClass, ...ofMaterials];
}

function read(rows: unknown): FactorsInForce | undefined {
  try {
    return readFactors(rows);
  } catch (error) {
    if (error instanceof WashdownError) return undefined;
    throw error;
  }
}
