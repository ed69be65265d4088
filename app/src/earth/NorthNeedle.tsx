import styles from './NorthArrow.module.css';

/** The arrow itself, turned by so many degrees clockwise from up. */
export function NorthNeedle({ turn }: { readonly turn: number }) {
  return (
    <svg viewBox="-28 -28 56 56" aria-hidden="true">
      <g transform={`rotate(${turn})`}>
        <path d="M0 -25 7 3 0 -2 -7 3Z" />
        {/* drawn, or a reader that spells would take it for a part of the name */}
        <path className={styles.letter} d="M-4 21V10L4 21V10" />
      </g>
    </svg>
  );
}
