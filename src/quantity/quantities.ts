declare const unit: unique symbol;

/** A number that carries its SI unit in its type, so that litres cannot be handed over as square metres. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

/** Area in m2. */
export type SquareMetres = Quantity<'m2'>;
/** Length in m. */
export type Metres = Quantity<'m'>;
/** Volume in L. */
export type Litres = Quantity<'L'>;
/** Time in min. */
export type Minutes = Quantity<'min'>;
/** Working time of persons, h times persons. */
export type LaborHours = Quantity<'person h'>;
/** Time of a team on an area, min/m2. */
export type MinutesPerSquareMetre = Quantity<'min/m2'>;
/** Flow in L/min. */
export type LitresPerMinute = Quantity<'L/min'>;

/**
 * Marks a plain number as a quantity of the stated unit.
 * @param value the number, already in that unit
 * @returns the same number
 */
export const squareMetres = (value: number): SquareMetres => value as SquareMetres;
/**
 * Marks a plain number as metres.
 * @param value length in m
 * @returns the same number
 */
export const metres = (value: number): Metres => value as Metres;
/**
 * Marks a plain number as litres.
 * @param value volume in L
 * @returns the same number
 */
export const litres = (value: number): Litres => value as Litres;
/**
 * Marks a plain number as minutes.
 * @param value time in min
 * @returns the same number
 */
export const minutes = (value: number): Minutes => value as Minutes;
/**
 * Marks a plain number as labor-hours.
 * @param value working time in hours times persons
 * @returns the same number
 */
export const laborHours = (value: number): LaborHours => value as LaborHours;
/**
 * Marks a plain number as minutes on an area.
 * @param value time in min/m2
 * @returns the same number
 */
export const minutesPerSquareMetre = (value: number): MinutesPerSquareMetre => value as MinutesPerSquareMetre;
/**
 * Marks a plain number as litres a minute.
 * @param value flow in L/min
 * @returns the same number
 */
export const litresPerMinute = (value: number): LitresPerMinute => value as LitresPerMinute;
