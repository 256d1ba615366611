import type { Univer } from '@univerjs/presets';
import { BrowserClipboardService, IClipboardInterfaceService } from '@univerjs/presets/preset-sheets-core';

/**
 * Has what is copied be on the clipboard before the next key. The spreadsheet (0.25.1) writes it in the background, so
 * that a paste right behind it puts in what was copied before, or nothing.
 * @param univer the spreadsheet, once it has a workbook
 */
export function copyAtOnce(univer: Univer): void {
  const clipboard = univer.__getInjector().get(IClipboardInterfaceService);
  // Its own `write` cannot be read here: what is read of it once is what it answers ever after.
  clipboard.write = (text, html, more) =>
    copied({ ...more, 'text/plain': text, 'text/html': html })
      ? Promise.resolve()
      : BrowserClipboardService.prototype.write.call(clipboard, text, html, more);
}

/** Puts texts on the clipboard, by their kind, as the browser's own copying does; false where it does not let us. */
function copied(texts: Readonly<Record<string, string>>): boolean {
  let taken = false;
  const take = (event: ClipboardEvent): void => {
    if (!event.clipboardData) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    for (const [kind, text] of Object.entries(texts)) event.clipboardData.setData(kind, text);
    taken = true;
  };
  document.addEventListener('copy', take, { capture: true });
  try {
    // There is no other way to the clipboard that does not wait.
    // eslint-disable-next-line @typescript-eslint/no-deprecated
    return document.execCommand('copy') && taken;
  } finally {
    document.removeEventListener('copy', take, { capture: true });
  }
}
