/** One group of a DXF file: its code and its value, a line each. */
export type DxfPair = readonly [code: number, value: string | number];

/** Decimals of coordinates and lengths: a tenth of a millimetre and less. */
const DECIMALS = 4;

/** A real number as DXF writes it: always with its point. Throws a RangeError for one that is not finite. */
export function dxfReal(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a DXF number must be finite, got ${value}`);
  return value.toFixed(DECIMALS).replace(/^-(?=0\.0+$)/, '');
}

/** The groups of a point: 10, 20, 30 and their like for `first` 10; height 0. */
export function dxfPoint(
  first: number,
  { x, y }: { readonly x: number; readonly y: number },
): readonly DxfPair[] {
  return [
    [first, dxfReal(x)],
    [first + 10, dxfReal(y)],
    [first + 20, dxfReal(0)],
  ];
}

/** Groups as lines of a file. */
export function dxfText(pairs: readonly DxfPair[]): string {
  return pairs.map(([code, value]) => `${String(code).padStart(3)}\r\n${value}\r\n`).join('');
}

/** A section with its name and what is in it. */
export function dxfSection(name: string, inside: readonly DxfPair[]): readonly DxfPair[] {
  return [[0, 'SECTION'], [2, name], ...inside, [0, 'ENDSEC']];
}
