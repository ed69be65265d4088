import { decimalNumber } from '../decimalNumber';
import type { DxfGroup } from './dxfGroups';

/** One entity with its groups in the order of the file; of a POLYLINE, its vertices. */
export type DxfEntity = {
  readonly type: string;
  readonly groups: readonly DxfGroup[];
  readonly vertices: readonly DxfEntity[];
};

/** A block: entities about a base point, put down by INSERT. */
export type DxfBlock = { readonly x: number; readonly y: number; readonly entities: readonly DxfEntity[] };

/** The first group of a code as a number; `absent` when there is none. What is no number is NaN. */
export function numberIn({ groups }: Pick<DxfEntity, 'groups'>, code: number, absent = Number.NaN): number {
  const found = groups.find((g) => g.code === code);
  return found === undefined ? absent : dxfNumber(found.value);
}

export function textIn({ groups }: Pick<DxfEntity, 'groups'>, code: number): string {
  return dxfUnescaped(groups.find((g) => g.code === code)?.value.trim() ?? '');
}

export function dxfNumber(value: string): number {
  return decimalNumber(value.trim());
}

/** `\U+00E9` is é. */
function dxfUnescaped(text: string): string {
  return text.replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );
}
