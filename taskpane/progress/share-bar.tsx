const HEIGHT = 12;
const PERCENT = 100;

/**
 * A bar of what is done against all there is; it repeats what is said in words beside it.
 * @param props how much
 * @param props.share 0 to 1
 * @returns the bar
 */
export function ShareBar({ share }: { share: number }) {
  const width = Number.isFinite(share) ? Math.min(1, Math.max(0, share)) * PERCENT : 0;
  return (
    <svg class="share-bar" width="100%" height={HEIGHT} aria-hidden="true">
      <rect class="room" width="100%" height={HEIGHT} />
      <rect class="done" width={`${String(width)}%`} height={HEIGHT} />
    </svg>
  );
}

/**
 * A share in words.
 * @param share 0 to 1
 * @returns for example `50%`
 */
export function percentText(share: number): string {
  return Number.isFinite(share) ? `${String(Math.round(share * PERCENT))}%` : 'no value';
}
