import { type QrSymbol, QUIET_MODULES } from '@footmark/link';

/** A QR symbol with its white margin, black on white in every theme: readers look for that. */
export function QrPicture({ symbol, label }: { readonly symbol: QrSymbol; readonly label: string }) {
  const { modules } = symbol;
  const size = modules.length + 2 * QUIET_MODULES;
  const dark = modules.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : [])));
  return (
    <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <rect width={size} height={size} fill="#ffffff" />
      <path transform={`translate(${QUIET_MODULES} ${QUIET_MODULES})`} d={dark.join('')} fill="#000000" />
    </svg>
  );
}
