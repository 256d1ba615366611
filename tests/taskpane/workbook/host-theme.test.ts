import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { followHostTheme } from '../../../taskpane/workbook/host-theme';

// A stand-in for the host: its theme, and a page that is looked at.
let theme: Partial<Office.OfficeTheme> | undefined;
const page = { window: new EventTarget(), document: new EventTarget() };
const shown: { theme?: string } = {};

beforeEach(() => {
  delete shown.theme;
  Object.assign(page.document, { documentElement: { dataset: shown } });
  vi.stubGlobal('window', page.window);
  vi.stubGlobal('document', page.document);
  vi.stubGlobal('Office', {
    context: {
      get officeTheme() {
        return theme;
      },
    },
  });
});
afterEach(() => {
  vi.unstubAllGlobals();
});

it.each([
  ['a host that says so', { isDarkTheme: true }, { isDarkTheme: false }],
  [
    'an older host, which gives colours alone',
    { bodyBackgroundColor: '#262626' },
    { bodyBackgroundColor: '#FFFFFF' },
  ],
])('a theme that changes is taken over when the pane is looked at: %s', (_, dark, light) => {
  theme = light;
  followHostTheme();
  expect(shown.theme).toBe('light');
  theme = dark;
  page.window.dispatchEvent(new Event('focus'));
  expect(shown.theme).toBe('dark');
  theme = light;
  page.document.dispatchEvent(new Event('visibilitychange'));
  expect(shown.theme).toBe('light');
});

it('without a theme the system’s holds', () => {
  theme = undefined;
  followHostTheme();
  expect(shown.theme).toBeUndefined();
});
