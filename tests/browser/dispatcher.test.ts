import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { launchChromium } from './chromium';
import { cellError, Dispatcher, type Told } from './platform';

// Proven by the platform's own script: what it makes of an error in a range, and what it tells the host of ours.

let browser: Browser;
let dispatcher: Dispatcher;
beforeAll(async () => {
  browser = await launchChromium();
  dispatcher = await Dispatcher.start(browser);
});
afterAll(() => browser.close());

const HEADINGS = ['Wall', 'Zone', 'Material', 'Area', 'Our own'];
const walls = (area: unknown, extra: unknown = '') => [
  HEADINGS,
  ['A', 'Yard', 'Red clay brick', area, extra],
];
const answers = (...calls: [name: string, ...args: unknown[]][]): Promise<Told[]> =>
  dispatcher.call(calls.map(([name, ...args]) => ({ name, args })));

it('an error in a cell that is read is named with its row and column', async () => {
  const [told] = await answers(['WATER', walls(cellError('#DIV/0!')), null, null, null, null]);
  expect(told).toEqual({
    done: false,
    code: 7,
    value: expect.stringMatching(/^Row 2 \(A\), column Area: the error #DIV\/0! cannot be used\. Accepted: /),
  });
});

it('an error in a column of the user’s own harms nothing', async () => {
  const [clean, beside] = await answers(
    ['WATER', walls(100), null, null, null, null],
    ['WATER', walls(100, cellError('#N/A')), null, null, null, null],
  );
  expect(clean?.value).toBeGreaterThan(0);
  expect(beside).toEqual(clean);
});

it.each([
  [
    'factors',
    ['WATER', walls(100), null, [['team.size', cellError('#REF!')]], null, null],
    'the error #REF!',
  ],
  ['a zone', ['WATER', walls(100), cellError('#N/A'), null, null, null], 'The zone cannot be the error #N/A'],
  ['headings', ['TAPE', walls(100), null, null, [['Area', cellError('#NAME?')]]], 'the error #NAME?'],
  ['a plain number', ['PATCH', cellError('#NUM!'), 8, 3, 5, null, null], 'the error #NUM!'],
] as const)('an error among %s is named', async (_, call, sentence) => {
  const [told] = await answers([...call]);
  expect(told).toMatchObject({ done: false, code: 7, value: expect.stringContaining(sentence) as string });
});

it('an error inside a spilled result hides no neighbour', async () => {
  const masked = [
    [...HEADINGS, 'Masked'],
    ['A', 'Yard', 'Red clay brick', 100, '', 'yes'],
  ];
  const [told] = await answers(['SCHEDULE', masked, null, null, null]);
  const [heads = [], line = []] = told?.value as unknown[][];
  expect(line[heads.indexOf('Class')]).toMatchObject({
    type: 'Error',
    basicValue: '#N/A',
    message: 'Nothing bare is washed here: every row is masked or has no face beside its openings.',
  });
  expect(line[0]).toBe('Yard');
});
