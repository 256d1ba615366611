/**
 * Takes over whether the host's theme is light or dark, now and whenever the pane is looked at again: Excel tells no
 * add-in that its theme has changed (platform documentation: OfficeThemeChanged is an event of another host alone).
 * Without a theme the system's holds.
 */
export function followHostTheme(): void {
  takeTheme();
  window.addEventListener('focus', takeTheme);
  document.addEventListener('visibilitychange', takeTheme);
}

function takeTheme(): void {
  const theme = (Office.context as Partial<Office.Context>).officeTheme as
    Partial<Office.OfficeTheme> | undefined;
  const dark = theme?.isDarkTheme ?? isDark(theme?.bodyBackgroundColor);
  if (dark !== undefined) document.documentElement.dataset['theme'] = dark ? 'dark' : 'light';
}

/** Older hosts give colours alone. */
function isDark(background: string | undefined): boolean | undefined {
  const [, red, green, blue] = /^#?(..)(..)(..)/.exec(background ?? '') ?? [];
  if (red === undefined || green === undefined || blue === undefined) return undefined;
  const half = 3 * 128;
  return [red, green, blue].reduce((sum, part) => sum + parseInt(part, 16), 0) < half;
}
