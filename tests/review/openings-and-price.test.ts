import { describe, expect, it } from 'vitest';
import { answer, readQuestion } from '../../functions/arguments';
import { impossiblePerimeter } from '../../src/review/checks/impossible-perimeter';
import { priceOutsideSpan } from '../../src/review/checks/price-span';
import { allChecks } from '../../src/review/checks';
import { readFactors } from '../../src/rules/read-factors';
import { number, refusal } from '../functions/call';
import { checked, wall, whereOf } from './checked';

describe('the perimeter of openings', () => {
  const found = (Openings: number, perimeter: number): string[] =>
    whereOf(
      impossiblePerimeter(checked([wall('A', { Openings, 'Opening perimeter': perimeter }), wall('B')])),
    );

  it('is at least that of a circle: pi for an area of pi/4, 11.2 for 10', () => {
    // A circle of diameter 1 has the area pi/4 and the perimeter pi; 2 sqrt(10 pi) = 11.21.
    expect(found(Math.PI / 4, Math.PI)).toEqual([]);
    expect(found(Math.PI / 4, Math.PI * 0.99)).toEqual(['South: A']);
    expect(found(10, 11.21)).toEqual([]);
    expect(found(10, 11)).toEqual(['South: A']);
  });

  it('of a square and of many windows is possible', () => {
    expect(found(16, 16)).toEqual([]);
    expect(found(60, 400)).toEqual([]);
  });

  it('is not looked at where it is not stated, and without openings', () => {
    expect(found(60, 0)).toEqual([]);
    expect(found(0, 20)).toEqual([]);
  });

  it('is found by CHECKS', () => {
    expect(allChecks).toContain(impossiblePerimeter);
  });
});

describe('the price per area', () => {
  const labor = ['price.labor', 60];
  const rows = [wall('A', { Area: 2000 }), wall('B', { Zone: 'North', Area: 1000 })];
  const headings = Object.keys(wall('A'));
  const range = [headings, ...rows.map((row) => headings.map((heading) => row[heading]))];
  // From two worksheet functions: the price of the job on its 3,000 ft2.
  const rate = number('BIDPRICE', range, null, [labor]) / 3000;
  const found = (...factors: unknown[][]): string[] =>
    priceOutsideSpan(checked(rows, factors)).map(({ what }) => what);

  it('is found outside the span that the user states, on either side', () => {
    expect(found(labor, ['price.span.least', rate * 1.01])[0]).toContain('below the lowest that you state');
    expect(found(labor, ['price.span.most', rate * 0.99])[0]).toContain('above the highest that you state');
    expect(found(labor, ['price.span.least', rate * 0.99], ['price.span.most', rate * 1.01])).toEqual([]);
  });

  it('is not looked at without a span, and a blank states none', () => {
    expect(found(labor)).toEqual([]);
    expect(found(labor, ['price.span.least', ''], ['price.span.most', ''])).toEqual([]);
  });

  it('may be stated as at most nothing', () => {
    expect(found(labor, ['price.span.most', 0])).toHaveLength(1);
  });

  it('is not looked at where labor has no price', () => {
    expect(found(['price.span.least', 1e5])).toEqual([]);
  });

  it('is that of the whole job: not of a zone by itself', () => {
    const all = checked(rows, [labor, ['price.span.most', 0]]);
    expect(priceOutsideSpan({ ...all, zones: all.zones.slice(0, 1) })).toEqual([]);
  });

  it('is not looked at where nothing is washed', () => {
    const question = readQuestion(
      [headings, headings.map((heading) => wall('A', { Masked: 'only' })[heading])],
      null,
      [labor, ['price.span.least', 1e5]],
      null,
    );
    const { zones } = answer(question);
    expect(priceOutsideSpan({ zones, job: zones, factors: question.factors })).toEqual([]);
  });

  it('is stated in order and in the units of the user', () => {
    expect(
      refusal(() =>
        readFactors([
          ['price.span.least', 3],
          ['price.span.most', 2],
        ]),
      ).message,
    ).toContain('Accepted: price.span.least at most price.span.most.');
    expect(() => readFactors([['price.span.least', 3]])).not.toThrow();
    // 1 an m2 is 0.09290304 a ft2.
    expect(readFactors([['price.span.least', 1]]).value('price.span.least')).toBeCloseTo(1 / 0.09290304, 9);
  });

  it('is found by CHECKS', () => {
    expect(allChecks).toContain(priceOutsideSpan);
  });
});
