import { perUnit, shownUnit } from '../src/quantity/shown-unit';
import { show, unitOf, type Kind, type System } from '../src/quantity/systems';
import type { CellError, CellValue } from './worksheet-function';

/**
 * A quantity as a cell.
 * @param value in base units; NaN where there is none
 * @param kind what it measures
 * @param system the display system
 * @param finding why it is NaN
 * @returns the shown number, or an error with the reason
 */
export function quantityCell(
  value: number,
  kind: Kind,
  system: System,
  finding: string | undefined,
): CellValue {
  return Number.isNaN(value) ? valueError(finding ?? 'There is no such number.') : show(value, kind, system);
}

/**
 * A heading with its unit.
 * @param heading name of the column
 * @param kind what the column measures
 * @param system the display system
 * @returns for example `Water (gal)`
 */
export function heading(heading: string, kind: Kind, system: System): string {
  const unit = unitOf(kind, system);
  return unit === '1' || unit === 'crew-h' || unit === 'labor-h' || unit === 'money'
    ? heading
    : `${heading} (${perUnit(unit) ?? shownUnit(unit)})`;
}

/**
 * The error of bad input.
 * @param message what was seen and what is accepted
 * @returns the cell
 */
export function valueError(message: string): CellError {
  return { error: '#VALUE!', message };
}

/**
 * The error of a question without an answer.
 * @param message why there is none
 * @returns the cell
 */
export function notAvailable(message: string): CellError {
  return { error: '#N/A', message };
}
