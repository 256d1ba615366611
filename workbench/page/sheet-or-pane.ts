/** On a phone the pane has the whole width, and the workbook is shown on demand. */
export class SheetOrPane {
  /**
   * Makes the button that turns from one to the other; on a wide page the styles hide it and show both.
   * @param button the button
   * @param page what the styles look at
   */
  constructor(
    private readonly button: HTMLElement,
    private readonly page: HTMLElement,
  ) {
    button.onclick = () => {
      this.show(page.dataset['shown'] === 'sheet' ? 'pane' : 'sheet');
    };
    this.show('pane');
  }

  /**
   * Shows one of them, where there is no room for both.
   * @param shown which
   */
  show(shown: 'sheet' | 'pane'): void {
    this.page.dataset['shown'] = shown;
    this.button.textContent = shown === 'sheet' ? 'Show the pane' : 'Show the workbook';
  }
}
