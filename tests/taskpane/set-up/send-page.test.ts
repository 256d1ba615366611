import { expect, it } from 'vitest';
import { dayPlanSheet, sendPage } from '../../../taskpane/set-up/send-page';

const source = { walls: { table: 'Walls' }, factors: { table: 'Factors' } };
const table = (name: string, headings: readonly string[]) => ({
  name,
  sheet: 'Choices',
  address: 'A1:D9',
  headings,
  totals: false,
});

it('the page names the first table of alternates, and prints upright on the paper of the units', () => {
  const [, us] = sendPage(source, 'Bid page', 'US', [
    table('Prices', ['Item', 'Value']),
    table('Alternates', ['Alternate', 'Wall', 'Column', 'Value', 'Note']),
  ]);
  expect(us?.rows[0]?.[0]).toEqual({
    formula: '=WASH.BIDPAGE(Walls[#All],,Factors[#All],Alternates[#All])',
  });
  expect(us?.print).toEqual({ held: 'upright', paper: 'letter' });
  const [, si] = sendPage(source, 'Bid page', 'SI', []);
  expect(si?.rows[0]?.[0]).toEqual({ formula: '=WASH.BIDPAGE(Walls[#All],,Factors[#All])' });
  expect(si?.print).toEqual({ held: 'upright', paper: 'a4' });
});

it('the day plan is one formula on a sheet held sideways', () => {
  const plan = dayPlanSheet(source, 'Day plan');
  expect(plan.rows[0]?.[0]).toEqual({ formula: '=WASH.DAYPLAN(Walls[#All],,Factors[#All])' });
  expect(plan.print).toEqual({ held: 'sideways', repeatsFirstRow: true });
});
