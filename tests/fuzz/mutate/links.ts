import { encode, linkText } from '@footmark/link';
import { answerKind } from '../../../packages/link/src/answerKind';
import { decimals } from '../../../packages/link/src/frame/decimals';
import { type Frame, frameBytes, openFrame } from '../../../packages/link/src/frame/frame';
import { bytesOfLink } from '../../../packages/link/src/frame/linkText';
import { varint } from '../../../packages/link/src/frame/varint';
import { type LinkKind, liveShape } from '../../../packages/link/src/linkKind';
import { pack } from '../../../packages/link/src/pack/pack';
import { partFrames } from '../../../packages/link/src/parts';
import { shapeMark } from '../../../packages/link/src/shape/shapeText';
import { siteKind } from '../../../packages/link/src/siteKind';
import type { Dice } from '../../random/dice';
import { bytesOf, type Mutator, textOf } from '../reader';
import { soundAnswers } from '../soundAnswers';
import { soundSites } from '../soundSites';
import { below, byteMutators, upTo } from './bytes';
import { changedJson } from './json';

const asLink = (bytes: Uint8Array): Uint8Array => bytesOf(linkText(bytes));

const frameIn = (input: Uint8Array): Frame | null => {
  const bytes = bytesOfLink(textOf(input));
  const opened = bytes === null ? null : openFrame(bytes);
  return opened?.ok === true ? opened.frame : null;
};

/** What a frame holds is changed, and its checksum is right again: nobody's accident, but somebody's craft. */
const craftedBody: Mutator = (input, dice, seeds) => {
  const frame = frameIn(input);
  if (frame === null) return input;
  const head = dice.next() < 0.9 ? 3 : 0; // the version and the mark of the shape stay mostly
  const packed = dice.pick(byteMutators)(frame.body.slice(head), dice, seeds);
  const body = Uint8Array.from([...frame.body.subarray(0, head), ...packed.subarray(0, 20_000)]);
  return asLink(frameBytes({ kind: frame.kind, body }));
};

const KINDS: readonly LinkKind[] = [siteKind, answerKind];

/** Bytes that nobody packed, in a sound frame. */
const craftedBytes: Mutator = (_, dice) => {
  const kind = dice.pick(KINDS);
  const mark = shapeMark(liveShape(kind));
  const alike = dice.next() < 0.5;
  const byte = below(dice, 256);
  const packed = Array.from({ length: upTo(dice, 100_000) }, () => (alike ? byte : below(dice, 256)));
  const body = Uint8Array.from([...varint(kind.version), mark >> 8, mark & 255, ...packed]);
  return asLink(frameBytes({ kind: kind.number, body }));
};

const documents: readonly (readonly [LinkKind, unknown])[] = [
  ...soundSites().map((site) => [siteKind, site] as const),
  ...soundAnswers().map((answer) => [answerKind, answer] as const),
];

/** Documents that fit the shape and are not sound, or too much: packed as they are, also past the limits. */
const craftedDocument: Mutator = (input, dice) => {
  const [kind, value] = dice.pick(documents);
  const changed = changedJson(value, dice);
  try {
    const limits = { mostBits: 20_000_000, mostItems: 1_000_000 };
    const packed = pack(liveShape(kind), dice.next() < 0.3 ? swollen(changed, dice) : changed, limits);
    if (packed === null) return input;
    const mark = shapeMark(liveShape(kind));
    const body = Uint8Array.from([...varint(kind.version), mark >> 8, mark & 255, ...packed]);
    return asLink(frameBytes({ kind: kind.number, body }));
  } catch {
    return input; // it does not fit the shape
  }
};

/** Much that takes next to no room: the same letter, the same thing. */
function swollen(value: unknown, dice: Dice): unknown {
  if (typeof value !== 'object' || value === null) return value;
  return {
    ...value,
    note: 'a'.repeat(upTo(dice, 700_000)),
    setAside: new Array(upTo(dice, 300_000)).fill(''),
  };
}

const otherHead: Mutator = (input, dice) => {
  const bytes = bytesOfLink(textOf(input));
  if (bytes === null || bytes.length < 8) return input;
  const out = bytes.slice();
  out[below(dice, 8)] = below(dice, 256);
  return asLink(out);
};

const asDigits: Mutator = (input) => {
  const bytes = bytesOfLink(textOf(input));
  return bytes === null || bytes.length > 20_000 ? input : bytesOf(decimals(bytes));
};

const onePart: Mutator = (input, dice) => {
  const bytes = bytesOfLink(textOf(input));
  if (bytes === null || bytes.length > 20_000) return input;
  return asLink(dice.pick(partFrames(bytes, 1 + below(dice, 16))));
};

const address: Mutator = (input, dice) =>
  bytesOf(
    dice.pick(['https://footmark.example/#/link/', '#', '/', '=', ' ', '%23', 'x#y#']) +
      textOf(input) +
      dice.pick(['', '.', ').\n', '#', '/', '!!!'.repeat(1000)]),
  );

export const linkMutators: readonly Mutator[] = [
  craftedBody,
  craftedBody,
  craftedBytes,
  craftedDocument,
  craftedDocument,
  otherHead,
  asDigits,
  onePart,
  address,
];

/** Links of all sound documents, small and large. */
export function soundLinks(): readonly Uint8Array[] {
  return documents.map(([kind, value]) => {
    const made = encode(kind, value);
    if (!made.ok) throw new Error(made.failure.code);
    return asLink(made.bytes);
  });
}
