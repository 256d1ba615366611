import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { printPane } from '../../../taskpane/shared/print-pane';

// A stand-in for the page: one that prints tells so before it does (HTML Standard, "Printing"), one that does not is
// silent.
let page: EventTarget & { print?: () => void };
beforeEach(() => {
  page = new EventTarget();
  vi.stubGlobal('window', page);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

it('offers the sheet where the pane is not printed', () => {
  page.print = () => undefined;
  expect(printPane()).toBe(
    'This Excel cannot print the pane. Use “Copy to a new sheet” and print that sheet.',
  );
});

it('offers it in the same breath where it is', () => {
  page.print = () => page.dispatchEvent(new Event('beforeprint'));
  expect(printPane()).toMatch(/^Printing\. .*Copy to a new sheet/);
});
