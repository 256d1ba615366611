import type { ComponentChildren } from 'preact';
import { failureText } from './failure-text';
import { printPane } from './print-pane';

/**
 * Buttons that print the pane as it stands, or copy it to a new sheet.
 * @param props what they do
 * @param props.what what is on the sheet then, with its verb: for example `The steps are`
 * @param props.copy copies it to a new sheet, whose name it gives
 * @param props.say speaks a sentence
 * @param props.main whether printing is what the panel is for
 * @param props.children further buttons
 * @returns the row of buttons
 */
export function PrintActions({
  what,
  copy,
  say,
  main = false,
  children,
}: {
  what: string;
  copy: () => Promise<string>;
  say: (sentence: string) => void;
  main?: boolean;
  children?: ComponentChildren;
}) {
  return (
    <p class="actions">
      <button
        type="button"
        class={main ? 'main' : undefined}
        onClick={() => {
          say(printPane());
        }}
      >
        Print
      </button>
      <button
        type="button"
        onClick={() => {
          copy().then(
            (sheet) => {
              say(`${what} on the sheet ${sheet}.`);
            },
            (error: unknown) => {
              say(failureText(error));
            },
          );
        }}
      >
        Copy to a new sheet
      </button>
      {children}
    </p>
  );
}
