import { useId } from 'preact/hooks';

const HEIGHT = 14;

/**
 * An add or a deduct as a bar about zero: an add fills the right half, a deduct is hatched in the left.
 * @param props what is shown
 * @param props.share of the longest bar; negative for a deduct
 * @param props.text the amount in words, which tells all that the bar does
 * @returns the bar and its text
 */
export function AddedBar({ share, text }: { share: number; text: string }) {
  const id = useId();
  const length = Number.isFinite(share) ? Math.abs(share) * 50 : 0;
  return (
    <p class="added">
      <svg width="100%" height={HEIGHT} aria-hidden="true">
        <pattern id={id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="1" x2="1" y1="0" y2="5" />
        </pattern>
        <rect
          class={share < 0 ? 'deduct' : 'add'}
          x={`${String(share < 0 ? 50 - length : 50)}%`}
          y="1"
          width={`${String(length)}%`}
          height={HEIGHT - 2}
          {...(share < 0 ? { style: { fill: `url(#${id})` } } : {})}
        />
        <line x1="50%" x2="50%" y1="0" y2={HEIGHT} />
      </svg>{' '}
      <strong class="number">{text}</strong>
    </p>
  );
}
