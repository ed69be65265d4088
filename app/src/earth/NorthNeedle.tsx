/** The arrow itself, turned by so many degrees clockwise from up. */
export function NorthNeedle({ turn }: { readonly turn: number }) {
  return (
    <svg viewBox="-28 -28 56 56" aria-hidden="true">
      <g transform={`rotate(${turn})`}>
        <path d="M0 -25 7 3 0 -2 -7 3Z" />
        <text y="21" textAnchor="middle">
          N
        </text>
      </g>
    </svg>
  );
}
