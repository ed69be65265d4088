import type { Encoded } from './linkKind';
import type { OpenLinkFailure } from './openLink';
import type { Collected } from './parts';
import type { QrDrawn } from './qr/qrSymbols';

type FailureOf<Result> =
  Extract<Result, { ok: false }> extends { readonly failure: infer Failure } ? Failure : never;

/** All that can be the matter with a link: one that is opened, one that is made, and a part that is not of those before it. */
export type LinkProblem =
  | OpenLinkFailure
  | FailureOf<Encoded>
  | FailureOf<QrDrawn>
  | { readonly code: Extract<Collected['is'], 'other-set'> };
