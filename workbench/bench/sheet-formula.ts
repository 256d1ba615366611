import {
  isConditionalNode,
  isConstantNode,
  isFunctionNode,
  isOperatorNode,
  isSymbolNode,
  parse,
  type MathNode,
} from 'mathjs';

/** What a call of an expression is in a sheet. */
const calls: Readonly<Record<string, (...args: string[]) => string>> = {
  // A sheet's own rounding up goes away from 0.
  ceil: (number) => `(-INT(-(${number})))`,
  max: (...numbers) => `MAX(${numbers.join(',')})`,
  min: (...numbers) => `MIN(${numbers.join(',')})`,
  sqrt: (number) => `SQRT(${number})`,
};

/**
 * An expression of the rules as a formula of a sheet.
 * @param expression arithmetic over symbols; what stands in braces is a symbol, or a part of one, that starts with `$`
 * @param cell what stands for a symbol in the sheet
 * @returns the formula without `=`
 * @throws {RangeError} where it calls what has no like in a sheet
 */
export function sheetFormula(expression: string, cell: (symbol: string) => string): string {
  const handler = (node: MathNode): string | undefined => {
    const text = (part: MathNode): string => part.toString({ handler });
    if (isSymbolNode(node)) return cell(node.name);
    if (isFunctionNode(node)) {
      const call = calls[node.fn.toString()];
      if (!call) throw new RangeError(`No formula for ${node.toString()}`);
      return call(...node.args.map(text));
    }
    if (isConditionalNode(node))
      return `IF(${[node.condition, node.trueExpr, node.falseExpr].map(text).join(',')})`;
    if (isOperatorNode(node) && node.fn === 'equal') return node.args.map(text).join('=');
    // Nothing of a unit, which a sheet does not know.
    const [first] = isOperatorNode(node) && node.fn === 'multiply' ? node.args : [];
    return first && isConstantNode(first) && first.value === 0 ? '0' : undefined;
  };
  const plain = expression.replace(/[#@~]/g, '$$').replace(/\{(\w+)\}/g, '$$$1');
  return parse(plain).toString({ handler });
}
