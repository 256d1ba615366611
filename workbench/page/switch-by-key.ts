const KEY = 'F6';

/**
 * Lets F6 go from the spreadsheet to the pane and back, each time to where the focus was.
 * @param pane the frame of the pane
 * @param show brings one of the two into view, where there is no room for both
 */
export function switchByKey(pane: HTMLIFrameElement, show: (shown: 'sheet' | 'pane') => void): void {
  let left: Element | null = null;
  document.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== KEY) return;
      take(event);
      left = document.activeElement;
      show('pane');
      focusPane(pane);
    },
    true,
  );
  // A pane that is loaded anew has a window of its own.
  pane.addEventListener('load', () => {
    pane.contentWindow?.addEventListener(
      'keydown',
      (event) => {
        if (event.key !== KEY) return;
        take(event);
        show('sheet');
        window.focus();
        if (left instanceof HTMLElement) left.focus();
      },
      true,
    );
  });
}

function take(event: KeyboardEvent): void {
  event.preventDefault();
  event.stopPropagation();
}

function focusPane(pane: HTMLIFrameElement): void {
  pane.contentWindow?.focus();
  const inside = pane.contentDocument;
  if (inside && (inside.activeElement === null || inside.activeElement === inside.body)) {
    inside.querySelector<HTMLElement>('[role="tab"][aria-selected="true"]')?.focus();
  }
}
