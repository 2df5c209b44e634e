/** The number of a site as it stands in the picture: a disc for the first, a square for the second, a diamond for the third. */
export function RankSign({ rank, isMarked }: { readonly rank: number; readonly isMarked: boolean }) {
  return (
    <svg class="rank-sign" viewBox="-12 -12 24 24" aria-hidden="true">
      {isMarked && <RankShape rank={rank} size={10} />}
      <text
        class={`rank-number ${isMarked && rank === 1 ? 'on-first' : ''}`}
        y="4.5"
        text-anchor="middle"
        font-size="13"
      >
        {rank}
      </text>
    </svg>
  );
}

/** The shape around a number. */
export function RankShape({ rank, size }: { readonly rank: number; readonly size: number }) {
  if (rank === 1) return <circle class="rank-shape first" r={size} />;
  const side = size * 0.9;
  if (rank === 2) return <rect class="rank-shape" x={-side} y={-side} width={2 * side} height={2 * side} />;
  const tip = size * 1.15;
  return <path class="rank-shape" d={`M0 ${-tip}L${tip} 0L0 ${tip}L${-tip} 0Z`} />;
}
