/**
 * Prints the pane, where Excel lets it: on some platforms `print()` does nothing and says nothing.
 * @returns what to tell the user
 */
export function printPane(): string {
  const state = { printed: false };
  const begins = () => {
    state.printed = true;
  };
  window.addEventListener('beforeprint', begins, { once: true });
  window.print();
  window.removeEventListener('beforeprint', begins);
  return state.printed
    ? 'Printing. Where nothing is printed, use “Copy to a new sheet” and print that.'
    : 'This Excel cannot print the pane. Use “Copy to a new sheet” and print that sheet.';
}
