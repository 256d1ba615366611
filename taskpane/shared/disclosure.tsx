import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

/**
 * A heading that shows and hides what belongs to it. What is hidden is still printed, as a closed `details` is not.
 * @param props the heading and its content
 * @param props.title the heading
 * @param props.open whether the content is shown
 * @param props.toggle called to show or hide it
 * @param props.children the content
 * @returns heading and content
 */
export function Disclosure({
  title,
  open,
  toggle,
  children,
}: {
  title: ComponentChildren;
  open: boolean;
  toggle: () => void;
  children: ComponentChildren;
}) {
  const id = useId();
  return (
    <>
      <h3 class="disclosure">
        <button type="button" aria-expanded={open} aria-controls={id} onClick={toggle}>
          {title}
        </button>
      </h3>
      <div id={id} class="disclosed" hidden={!open}>
        {children}
      </div>
    </>
  );
}
