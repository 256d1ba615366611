import type { IStyleData, IWorksheetData, Nullable } from '@univerjs/presets';
import type { LooksWriter } from './write-looks';

type Look = Nullable<IStyleData | string>;
type Styles = Readonly<Record<string, Nullable<IStyleData>>>;

const OWN = /^[xw](\d+)$/;

/** Finds the cell formats for the looks of one sheet. */
export class CellLooks {
  readonly #writer: LooksWriter;
  readonly #styles: Styles;
  readonly #sheet: Partial<IWorksheetData>;
  readonly #found = new Map<string, number>();

  /**
   * Finds formats for a sheet.
   * @param writer adds those that the file does not have
   * @param styles the looks of the workbook by id
   * @param sheet the sheet
   */
  constructor(writer: LooksWriter, styles: Styles, sheet: Partial<IWorksheetData>) {
    this.#writer = writer;
    this.#styles = styles;
    this.#sheet = sheet;
  }

  /**
   * The format of a cell.
   * @param row its row, counted from 0
   * @param column its column, counted from 0
   * @param own its own look
   * @param before the format that it had in the file
   * @returns the number of the format
   */
  cell(row: number, column: number, own: Look, before: number): number {
    return this.#format([this.#rowLook(row), this.#columnLook(column), own], before);
  }

  /**
   * The format of a row.
   * @param row counted from 0
   * @param before the format that it had in the file
   * @returns the number of the format
   */
  row(row: number, before: number): number {
    return this.#format([this.#rowLook(row)], before);
  }

  /**
   * The format of a column.
   * @param column counted from 0
   * @param before the format that it had in the file
   * @returns the number of the format
   */
  column(column: number, before: number): number {
    return this.#format([this.#columnLook(column)], before);
  }

  /**
   * What a cell looks like.
   * @param row its row, counted from 0
   * @param column its column, counted from 0
   * @param own its own look
   * @returns the whole look
   */
  look(row: number, column: number, own: Look): IStyleData {
    return this.#whole([this.#rowLook(row), this.#columnLook(column), own]);
  }

  #rowLook(row: number): Look {
    return this.#sheet.rowData?.[row]?.s;
  }

  #columnLook(column: number): Look {
    return this.#sheet.columnData?.[column]?.s;
  }

  #style(look: Look): IStyleData {
    return (typeof look === 'string' ? this.#styles[look] : look) ?? {};
  }

  /** The page lays the look of a column over that of a row, and a cell's own over both. */
  #whole(looks: readonly Look[]): IStyleData {
    const sheet = this.#style(this.#sheet.defaultStyle);
    return Object.assign(
      {},
      this.#writer.plain,
      sheet,
      ...looks.map((look) => this.#style(look)),
    ) as IStyleData;
  }

  #format(looks: readonly Look[], before: number): number {
    if (looks.some((look) => typeof look === 'object' && look !== null)) {
      return this.#writer.format(this.#whole(looks), before);
    }
    const key = `${looks.map((look) => (typeof look === 'string' ? look : '')).join(' ')} ${before}`;
    const known = this.#found.get(key);
    if (known !== undefined) return known;
    const found = this.#unchanged(looks) ?? this.#writer.format(this.#whole(looks), before);
    this.#found.set(key, found);
    return found;
  }

  /** A format of the file says all of a look, whatever row and column say. */
  #unchanged(looks: readonly Look[]): number | undefined {
    const given = looks.filter((look) => typeof look === 'string');
    const own = looks.at(-1) ?? (given.length === 1 ? given[0] : undefined);
    const number = typeof own === 'string' ? Number(OWN.exec(own)?.[1] ?? NaN) : NaN;
    const style = this.#writer.style(number);
    if (!style) return undefined;
    return this.#writer.format(this.#style(own), number) === number ? number : undefined;
  }
}
