/**
 * A bar for the part of the way from start to goal. Decoration beside the figure that says the same, so hidden from screen readers.
 * What lies below the start or beyond the goal is drawn at the end of the track.
 */
export function ProgressBar({ share }: { readonly share: number }) {
  const drawn = Math.min(1, Math.max(0, share)) * 200;
  return (
    <svg class="bar" viewBox="0 0 202 10" aria-hidden="true" focusable="false" preserveAspectRatio="none">
      <rect class="track" x="0" y="3" width="200" height="4" />
      <rect class="fill" x="0" y="3" width={drawn.toFixed(1)} height="4" />
      <rect class="end" x="199" y="0" width="2" height="10" />
    </svg>
  );
}
