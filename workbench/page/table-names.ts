import { ICommandService, type Univer } from '@univerjs/presets';
import {
  IFunctionService,
  ISuperTableService,
  Lexer,
  LexerTreeBuilder,
  RemoveSuperTableMutation,
  SetSuperTableMutation,
  type ISetSuperTableMutationParam,
} from '@univerjs/presets/preset-sheets-core';
import { rewriteCode } from '../../src/spreadsheet/formula-pieces';

const WORD = /(?<![\p{L}\p{N}_.\\$!'])[\p{L}_\\][\p{L}\p{N}_.\\]*(?![\p{L}\p{N}_.\\!(])/gu;
const NOT_READ = /[_.\\]/g;

// The engine tells table names by case and reads none with an underscore or a dot. A formula therefore reaches it
// with another name for each table, which leads to the same table.
function engineName(name: string): string {
  return `table${name.toLowerCase().replace(NOT_READ, (sign) => `ˍ${String(sign.charCodeAt(0))}`)}`;
}

/**
 * A formula with the names under which the engine finds tables.
 * @param formula any formula
 * @param isTable whether a word is the engine's name of a table
 * @returns the formula, its tables renamed
 */
export function withEngineNames(formula: string, isTable: (engineName: string) => boolean): string {
  return rewriteCode(formula, (code) =>
    code.replace(WORD, (word) => (isTable(engineName(word)) ? engineName(word) : word)),
  );
}

/** What the engine's reader of formulas keeps of the formula that it read last. */
interface ReaderState {
  _resetTemp: () => void;
  _squareBracketState: number;
}

/** While a formula is typed the reader stops between brackets, and at the next formula still takes them for open. */
function closeBrackets(reader: ReaderState): void {
  const reset = reader._resetTemp.bind(reader);
  reader._resetTemp = () => {
    reset();
    reader._squareBracketState = 0;
  };
}

/**
 * Has the engine find tables as Excel does: whatever the case, and with any sign that a name may have.
 * @param univer the spreadsheet, once it has a workbook
 */
export function readTableNames(univer: Univer): void {
  const injector = univer.__getInjector();
  const tables = injector.get(ISuperTableService);
  const lexer = injector.get(Lexer);
  const functions = injector.get(IFunctionService);
  const names = new Map<string, string>();
  closeBrackets(injector.get(LexerTreeBuilder) as unknown as ReaderState);
  const own = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, transformSuffix) =>
    own(
      withEngineNames(formula, (name) => names.has(name)),
      transformSuffix,
    );
  injector.get(ICommandService).onCommandExecuted(({ id, params }) => {
    if (id !== SetSuperTableMutation.id && id !== RemoveSuperTableMutation.id) return;
    const { unitId, tableName } = params as ISetSuperTableMutationParam;
    if (id === RemoveSuperTableMutation.id) names.delete(engineName(tableName));
    else names.set(engineName(tableName), tableName);
    // The engine keeps what it made of a formula, also where a table in it has grown since.
    functions.deleteFormulaAstCacheKey('');
    const map = tables.getTableMap(unitId);
    if (!map) return;
    map.has = (name) => Map.prototype.has.call(map, names.get(name) ?? name);
    map.get = (name) => Map.prototype.get.call(map, names.get(name) ?? name) as ReturnType<typeof map.get>;
  });
}
