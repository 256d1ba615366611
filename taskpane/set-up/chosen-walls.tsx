import { GoThere } from '../shared/go-there';
import { referenceText, type Reference, type WallSource } from '../shared/wall-source';
import type { SetUpProps } from './set-up-props';

/**
 * Says which cells the other panels read, and goes there.
 * @param props the walls
 * @returns the list
 */
export function ChosenWalls({ port, source, say }: SetUpProps & { readonly source: WallSource }) {
  const { walls, factors, headings } = source;
  const lines: readonly [string, Reference | undefined][] = [
    ['Walls', walls],
    ['Factors', factors],
    ['Headings', headings],
  ];
  return (
    <section aria-label="Walls of this workbook">
      <ul class="chosen">
        {lines.map(([name, reference]) =>
          reference ? (
            <li key={name}>
              {name}: {referenceText(reference)}{' '}
              <GoThere port={port} place={reference} say={say}>
                Go to the {name.toLowerCase()}
              </GoThere>
            </li>
          ) : null,
        )}
      </ul>
    </section>
  );
}
