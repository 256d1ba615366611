import type { BaseValueObject } from '@univerjs/preset-sheets-node-core';
import type { Univer } from '@univerjs/presets';
import { IFunctionService } from '@univerjs/presets/preset-sheets-core';
import { ArrayValueObject, NumberValueObject } from '#univer';

// These see a number as its cell shows it, "$85.00" for 85; in Excel they see the number.
const OF_TEXTS =
  'SEARCHB SEARCH REPLACEB REPLACE FINDB FIND RIGHTB RIGHT MIDB MID LENB LEN LEFTB LEFT ENCODEURL'.split(' ');

function plain(value: BaseValueObject): BaseValueObject {
  if (value instanceof ArrayValueObject) return value.mapValue(plain);
  return value.isNumber() && value.getPattern() !== ''
    ? NumberValueObject.create(Number(value.getValue()))
    : value;
}

/**
 * Has functions of texts read numbers as numbers, whatever their cells look like.
 * @param univer the spreadsheet, once it has a workbook
 */
export function plainNumbersInText(univer: Univer): void {
  const functions = univer.__getInjector().get(IFunctionService);
  for (const name of OF_TEXTS) {
    const executor = functions.getExecutor(name);
    if (!executor) continue;
    const own = executor.calculate.bind(executor);
    executor.calculate = (...variants) => own(...variants.map((each) => plain(each)));
  }
}
