export { answerBytes } from './answerLink';
export { forLink, type LinkChoice, leastChoice } from './forLink';
export type { FrameFailure } from './frame/frame';
export { linkText } from './frame/linkText';
export { type Encoded, encode, type KindFailure, type LinkKind } from './linkKind';
export { type LinkLimits, linkLimits } from './linkLimits';
export type { LinkProblem } from './linkProblem';
export {
  type LinkFailure,
  type LinkRead,
  type OpenedLink,
  type OpenLinkFailure,
  openLink,
  openLinkBytes,
  readFrame,
  readLink,
} from './openLink';
export { type Collected, collectParts, type HeldParts, type LinkPart } from './parts';
export {
  MODULE_MM,
  type QrDrawn,
  type QrLevel,
  type QrSymbol,
  QUIET_MODULES,
  qrSymbols,
} from './qr/qrSymbols';
export { linkBytes, linkFragment } from './siteLink';
