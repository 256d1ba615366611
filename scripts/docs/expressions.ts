import { methods, type Method, type MethodId } from '../../src/rules/methods';

const OF_WHAT = /[#@~]/g;

/**
 * How a rule is written in a trace, without the marks of row and zone.
 * @param id the rule
 * @returns for example `tape = perimeter * (1 + tape_waste)`; nothing where its entry does not say it
 */
export function expressionOf(id: MethodId): string | undefined {
  const { symbol, is }: Method = methods[id];
  const isFilledIn = is !== undefined && /^\{\w+\}$/.test(is);
  return symbol === undefined || is === undefined || isFilledIn
    ? undefined
    : `${symbol} = ${is}`.replace(OF_WHAT, '');
}
