import { fail } from '@footmark/geometry';
import type { IncomingFailure } from '../incoming';

/** A group of a DXF file: its code, and its value as it stands there. */
export type DxfGroup = { readonly code: number; readonly value: string };

/** Reads groups one by one. */
export type DxfGroups = {
  /** The next group; null at the end of the text. */
  next(): DxfGroup | null;
  /** How far into the text it is, 0 to 1. */
  readonly share: number;
  /** Lines read so far. */
  readonly line: number;
  /** Why it stopped: a code that is no number. */
  readonly failure: IncomingFailure | null;
};

/** The groups of a text, two lines each; comments (999) are passed over. */
export function dxfGroups(text: string): DxfGroups {
  let at = 0;
  let line = 0;
  let failure: IncomingFailure | null = null;

  const nextLine = (): string | null => {
    if (at >= text.length) return null;
    const end = text.indexOf('\n', at);
    const stop = end < 0 ? text.length : end;
    const found = text.slice(at, stop);
    at = stop + 1;
    line += 1;
    return found.endsWith('\r') ? found.slice(0, -1) : found;
  };

  return {
    next() {
      for (;;) {
        const codeText = nextLine();
        if (codeText === null || failure !== null) return null;
        if (codeText.trim() === '' && at >= text.length) return null;
        if (!/^ *-?\d{1,4} *$/.test(codeText)) {
          failure = fail('not-dxf', { line });
          return null;
        }
        const value = nextLine();
        if (value === null) return null;
        const code = Number(codeText);
        if (code !== 999) return { code, value };
      }
    },
    get share() {
      return Math.min(1, at / Math.max(1, text.length));
    },
    get line() {
      return line;
    },
    get failure() {
      return failure;
    },
  };
}
