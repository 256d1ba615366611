import type { ComponentChildren } from 'preact';

/**
 * What was written, in sentences.
 * @param props what it says
 * @param props.says the sentences
 * @param props.wrong what is wrong with it; left out where all is well
 * @param props.children what stands below them
 * @returns the notice
 */
export function Written({
  says,
  wrong,
  children,
}: {
  says: readonly string[];
  wrong?: string | undefined;
  children?: ComponentChildren;
}) {
  return (
    <div class={wrong === undefined ? 'notice done' : 'notice wrong'} role="group" aria-label="Written">
      {wrong !== undefined && <p class="wrong">{wrong}</p>}
      <ul>
        {says.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {children}
    </div>
  );
}
