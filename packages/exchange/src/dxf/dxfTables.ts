import type { GridUnit } from '@footmark/grid';
import { type DxfPair, dxfPoint, dxfReal, dxfSection } from './dxfPairs';

/** Dashes and gaps (paper mm) by the name that a line type has in the file. */
export type DxfLineTypes = ReadonlyMap<string, readonly number[]>;

/** $INSUNITS: from memory, 0 for what has no number. R12 itself had none; readers since take it. */
const INSUNITS: Readonly<Record<GridUnit['name'], number>> = { ft: 2, m: 6, 'us-ft': 21, other: 0 };

type Extent = { readonly x: number; readonly y: number };

export function dxfHeader(unit: GridUnit, least: Extent, most: Extent): readonly DxfPair[] {
  return dxfSection('HEADER', [
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$INSUNITS'],
    [70, INSUNITS[unit.name]],
    [9, '$EXTMIN'],
    ...dxfPoint(10, least),
    [9, '$EXTMAX'],
    ...dxfPoint(10, most),
    [9, '$LTSCALE'],
    [40, dxfReal(1)],
  ]);
}

/** Line types, layers and the one text style. `unitsPerMm`: drawing units to a millimetre of paper. */
export function dxfTables(
  layers: readonly string[],
  lineTypes: DxfLineTypes,
  unitsPerMm: number,
): readonly DxfPair[] {
  return dxfSection('TABLES', [
    ...table('LTYPE', [
      lineType('CONTINUOUS', []),
      ...[...lineTypes].map(([name, dash]) =>
        lineType(
          name,
          dash.map((mm) => mm * unitsPerMm),
        ),
      ),
    ]),
    ...table('LAYER', ['0', ...layers].map(layer)),
    ...table('STYLE', [STANDARD_STYLE]),
  ]);
}

function table(name: string, rows: readonly (readonly DxfPair[])[]): readonly DxfPair[] {
  return [[0, 'TABLE'], [2, name], [70, rows.length], ...rows.flat(), [0, 'ENDTAB']];
}

function lineType(name: string, dash: readonly number[]): readonly DxfPair[] {
  return [
    [0, 'LTYPE'],
    [2, name],
    [70, 0],
    [3, ''],
    [72, 65],
    [73, dash.length],
    [40, dxfReal(dash.reduce((sum, length) => sum + length, 0))],
    ...dash.map((length, i): DxfPair => [49, dxfReal(i % 2 === 0 ? length : -length)]),
  ];
}

function layer(name: string): readonly DxfPair[] {
  return [
    [0, 'LAYER'],
    [2, name],
    [70, 0],
    [62, 7],
    [6, 'CONTINUOUS'],
  ];
}

const STANDARD_STYLE: readonly DxfPair[] = [
  [0, 'STYLE'],
  [2, 'STANDARD'],
  [70, 0],
  [40, dxfReal(0)],
  [41, dxfReal(1)],
  [50, dxfReal(0)],
  [71, 0],
  [42, dxfReal(1)],
  [3, 'txt'],
  [4, ''],
];
