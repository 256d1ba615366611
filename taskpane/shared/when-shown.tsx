import type { ComponentType } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/**
 * A component whose code is loaded when it is first shown, so that the pane opens without waiting for it.
 * @param load loads the component
 * @returns a component that stands in for it
 */
export function whenShown<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
): ComponentType<Props> {
  return function WhenShown(props: Props) {
    const [state, setState] = useState<{ Loaded?: ComponentType<Props>; failed: boolean }>({ failed: false });
    useEffect(() => {
      load().then(
        (Loaded) => {
          setState({ Loaded, failed: false });
        },
        () => {
          setState({ failed: true });
        },
      );
    }, []);
    const { Loaded, failed } = state;
    if (Loaded) return <Loaded {...props} />;
    return failed ? (
      <p class="notice">This part of the pane could not be loaded. Close the pane and open it again.</p>
    ) : (
      <p>Loading…</p>
    );
  };
}
