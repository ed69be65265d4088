import {
  type Answer,
  type AnswerFailure,
  type OpenFailure,
  openAnswer,
  openSiteValue,
  type Site,
} from '@footmark/site';
import { answerKind } from './answerKind';
import { type FrameFailure, openFrame } from './frame/frame';
import { bytesOfLink } from './frame/linkText';
import { decode, type KindFailure, type LinkKind } from './linkKind';
import { type LinkLimits, linkLimits } from './linkLimits';
import { type LinkPart, PART_KIND, partIn } from './parts';
import { siteKind } from './siteKind';

/** Why a text is no link that can be opened. Nothing is ever half loaded. */
export type LinkFailure =
  | { readonly code: 'too-long'; readonly characters: number; readonly most: number }
  | FrameFailure
  /** Sound, and of a kind of document that is not looked for here. */
  | { readonly code: 'other-kind'; readonly kind: number }
  | KindFailure;

/** What a link holds, before anything is said of its soundness as a document; or one of several links that make up one. */
export type LinkRead =
  | {
      readonly ok: true;
      readonly is: 'document';
      readonly kind: LinkKind;
      readonly value: unknown;
      readonly version: number;
    }
  | { readonly ok: true; readonly is: 'part'; readonly part: LinkPart }
  | { readonly ok: false; readonly failure: LinkFailure };

/** Reads a link, or what stands behind its `#`, in letters or decimals, for whichever of these kinds it is of. */
export function readLink(
  text: string,
  kinds: readonly LinkKind[],
  limits: LinkLimits = linkLimits,
): LinkRead {
  if (text.length > limits.mostCharacters) {
    return refuse({ code: 'too-long', characters: text.length, most: limits.mostCharacters });
  }
  const bytes = bytesOfLink(text);
  return bytes === null ? refuse({ code: 'not-a-link' }) : readFrame(bytes, kinds, limits);
}

/** As `readLink`, for the bytes that collected parts make up. */
export function readFrame(
  bytes: Uint8Array,
  kinds: readonly LinkKind[],
  limits: LinkLimits = linkLimits,
): LinkRead {
  const opened = openFrame(bytes);
  if (!opened.ok) return refuse(opened.failure);
  const { frame } = opened;
  if (frame.kind === PART_KIND) {
    const part = partIn(frame);
    return part === null ? refuse({ code: 'damaged' }) : { ok: true, is: 'part', part };
  }
  const kind = kinds.find((k) => k.number === frame.kind);
  if (kind === undefined) return refuse({ code: 'other-kind', kind: frame.kind });
  const decoded = decode(kind, frame, limits);
  if (!decoded.ok) return refuse(decoded.failure);
  return { ok: true, is: 'document', kind, value: decoded.value, version: decoded.version };
}

/** Why a link does not open; `not-a-site` and `not-an-answer` hold what is wrong with the document in it. */
export type OpenLinkFailure =
  | LinkFailure
  | { readonly code: 'not-a-site'; readonly because: OpenFailure }
  | { readonly code: 'not-an-answer'; readonly because: AnswerFailure };

export type OpenedLink =
  | { readonly ok: true; readonly is: 'site'; readonly site: Site; readonly migratedFrom: number | null }
  | { readonly ok: true; readonly is: 'answer'; readonly answer: Answer }
  | { readonly ok: true; readonly is: 'part'; readonly part: LinkPart }
  | { readonly ok: false; readonly failure: OpenLinkFailure };

/** Opens what is in a link, of this version or an older one: a site, or what a crew sends back. */
export function openLink(text: string, limits: LinkLimits = linkLimits): OpenedLink {
  return documentIn(readLink(text, KINDS, limits));
}

/** As `openLink`, for the bytes that collected parts make up. */
export function openLinkBytes(bytes: Uint8Array, limits: LinkLimits = linkLimits): OpenedLink {
  return documentIn(readFrame(bytes, KINDS, limits));
}

function documentIn(read: LinkRead): OpenedLink {
  if (!read.ok || read.is === 'part') return read;
  if (read.kind === answerKind) {
    const opened = openAnswer(read.value);
    if (opened.ok) return { ok: true, is: 'answer', answer: opened.answer };
    return { ok: false, failure: { code: 'not-an-answer', because: opened.failure } };
  }
  const opened = openSiteValue(read.value);
  if (!opened.ok) return { ok: false, failure: { code: 'not-a-site', because: opened.failure } };
  return { ok: true, is: 'site', site: opened.site, migratedFrom: opened.migratedFrom };
}

const KINDS = [siteKind, answerKind];

function refuse(failure: LinkFailure): { readonly ok: false; readonly failure: LinkFailure } {
  return { ok: false, failure };
}
