/**
 * The name of a sheet as it stands before `!` in a formula, in apostrophes.
 * @param name the name
 * @returns for example `'Mason''s walls'`
 */
export function quotedSheet(name: string): string {
  return `'${name.replace(/'/g, "''")}'`;
}

/**
 * The name of a sheet from its form in apostrophes.
 * @param text for example `'Mason''s walls'`
 * @returns the name
 */
export function unquotedSheet(text: string): string {
  return text.slice(1, -1).replace(/''/g, "'");
}
