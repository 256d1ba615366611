import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { Guarded } from './shared/guarded';

/** One tab and what it shows. */
export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly panel: () => ComponentChildren;
}

const STEPS: Readonly<Record<string, (place: number, count: number) => number>> = {
  ArrowRight: (place, count) => (place + 1) % count,
  ArrowLeft: (place, count) => (place + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/**
 * A row of tabs with their panels. One tab is in the tab order, arrows move among them. A panel is made when it is
 * first shown and then kept, so that what runs in it goes on.
 * @param props the tabs
 * @param props.label what the row of tabs is for
 * @param props.tabs the tabs in order
 * @returns the row and the panels
 */
export function Tabs({ label, tabs }: { label: string; tabs: readonly Tab[] }) {
  const [shown, show] = useState(tabs[0]?.id ?? '');
  const [visited, visit] = useState<readonly string[]>([shown]);
  const buttons = useRef(new Map<string, HTMLButtonElement>());
  const open = (id: string) => {
    show(id);
    if (!visited.includes(id)) visit([...visited, id]);
  };
  const move = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    const place = tabs.findIndex(({ id }) => id === shown);
    const next = step && tabs[step(place, tabs.length)];
    if (!next) return;
    event.preventDefault();
    open(next.id);
    buttons.current.get(next.id)?.focus();
  };
  return (
    <>
      <div class="tabs" role="tablist" aria-label={label} onKeyDown={move}>
        {tabs.map(({ id, label: name }) => (
          <button
            key={id}
            type="button"
            role="tab"
            id={`tab-${id}`}
            aria-selected={id === shown}
            aria-controls={`panel-${id}`}
            tabIndex={id === shown ? 0 : -1}
            ref={(button) => {
              if (button) buttons.current.set(id, button);
            }}
            onClick={() => {
              open(id);
            }}
          >
            {name}
          </button>
        ))}
      </div>
      {tabs.map(({ id, panel }) => (
        <div
          key={id}
          class="panel"
          role="tabpanel"
          id={`panel-${id}`}
          aria-labelledby={`tab-${id}`}
          hidden={id !== shown}
        >
          {visited.includes(id) && <Guarded>{panel()}</Guarded>}
        </div>
      ))}
    </>
  );
}
