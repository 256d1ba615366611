import type { ComponentChildren } from 'preact';
import { placeOf, type Reference } from './wall-source';
import type { WorkbookPort } from '../workbook/port';

/**
 * A button that shows cells of the workbook.
 * @param props where to go
 * @param props.port the workbook
 * @param props.place the cells, or a table
 * @param props.say speaks a sentence
 * @param props.children what stands on the button
 * @returns the button
 */
export function GoThere({
  port,
  place,
  say,
  children,
}: {
  port: WorkbookPort;
  place: Reference;
  say: (sentence: string) => void;
  children: ComponentChildren;
}) {
  const go = async () => {
    const { sheet, address } = await placeOf(port, place);
    await port.goTo({ sheet, address });
    say(`${sheet}, ${address} is selected.`);
  };
  return (
    <button
      type="button"
      class="go"
      onClick={() => {
        go().catch(() => {
          say('The cells cannot be shown. Is the sheet hidden, or gone?');
        });
      }}
    >
      {children}
    </button>
  );
}
