/** How many of a long list are shown at once: a longer one would hold the pane up while it is drawn. */
export const SHOWN_AT_ONCE = 25;

/**
 * The button that shows more of a long list; nothing where all of it is shown.
 * @param props the list
 * @param props.count how many there are
 * @param props.shown how many are shown
 * @param props.show shows so many
 * @returns the button
 */
export function ShowMore({
  count,
  shown,
  show,
}: {
  count: number;
  shown: number;
  show: (shown: number) => void;
}) {
  if (count <= shown) return null;
  return (
    <button
      type="button"
      onClick={() => {
        show(shown + SHOWN_AT_ONCE);
      }}
    >
      Show {Math.min(SHOWN_AT_ONCE, count - shown)} more
    </button>
  );
}
