/** A formula taken apart. */
export type Expression =
  | { readonly is: 'value'; readonly value: string | number | boolean }
  | { readonly is: 'omitted' }
  | { readonly is: 'array'; readonly rows: readonly (readonly Expression[])[] }
  /** Cells by address, with the sheet where one is named. */
  | { readonly is: 'cells'; readonly sheet: string | undefined; readonly address: string }
  /** Part of a table; without a name, of the table that the formula stands in. */
  | { readonly is: 'table'; readonly name: string | undefined; readonly selection: string }
  | { readonly is: 'name'; readonly sheet: string | undefined; readonly name: string }
  | { readonly is: 'spill'; readonly of: Expression }
  | { readonly is: 'single'; readonly of: Expression }
  | { readonly is: 'call'; readonly name: string; readonly args: readonly Expression[] }
  | { readonly is: 'sign'; readonly sign: string; readonly of: Expression }
  | { readonly is: 'percent'; readonly of: Expression }
  | {
      readonly is: 'binary';
      readonly sign: string;
      readonly left: Expression;
      readonly right: Expression;
    };
