import { type ImportedPicture, type ImportFailure, MOST_PIXELS } from './importPicture';
import { MOST_BYTES } from './pictureLimits';

const MEGA = 1_000_000;
const KINDS = 'PNG, JPEG, WebP and GIF pictures can be used';

/** Why a picture was not taken in, which one, and what to do about it. */
export function importProblemText(name: string, failure: ImportFailure): string {
  const file = `“${name || 'The picture'}”`;
  switch (failure.code) {
    case 'empty':
      return `${file} is empty: it has no bytes. If it lies in a cloud folder, fetch it to this device first.`;
    case 'unreadable':
      return `${file} could not be read. If it lies in a cloud folder, fetch it to this device first.`;
    case 'heic':
      return `${file} is a HEIC picture, which browsers cannot show. Set the phone’s camera to the ‘most compatible’ format, or share the picture as JPEG, and add that.`;
    case 'other-kind':
      return failure.kind === 'PDF'
        ? `${file} is a PDF. Save the page as a PNG or JPEG picture, or take a screenshot of it, and add that.`
        : `${file} is of the kind ${failure.kind}. ${KINDS}: save it as one of them.`;
    case 'not-a-picture':
      return `${file} is not a picture. ${KINDS}.`;
    case 'broken':
      return `${file} begins like a ${KIND_NAMES[failure.type]} picture but is not whole. Copy it to this device again.`;
    case 'too-many-bytes':
      return `${file} has ${megas(failure.bytes)} MB; ${MOST_BYTES / MEGA} MB is the most. Save a smaller copy and add that.`;
    case 'too-many-pixels':
      return `${file} has ${sizeText(failure)} pixels, ${megas(failure.widthPx * failure.heightPx)} megapixels; it must have fewer than ${MOST_PIXELS / MEGA}. Save a smaller copy and add that.`;
    case 'no-memory':
      return `This device has too little memory to scale ${file} (${sizeText(failure)} pixels) down. Save a smaller copy and add that.`;
  }
}

const KIND_NAMES = { png: 'PNG', jpeg: 'JPEG', webp: 'WebP', gif: 'GIF' } as const;

/** What was done to a picture as it came in; null when it is kept as it was. */
export function scaledText(name: string, picture: ImportedPicture): string | null {
  return picture.scaledFrom === null
    ? null
    : `“${name}” had ${sizeText(picture.scaledFrom)} pixels and is kept at ${sizeText(picture)}.`;
}

export function sizeText({ widthPx, heightPx }: { widthPx: number; heightPx: number }): string {
  return `${whole(widthPx)} × ${whole(heightPx)}`;
}

function whole(n: number): string {
  return n.toLocaleString('en-US');
}

/** Millions with one decimal, rounded up so that what is over a limit does not read as the limit. */
function megas(n: number): string {
  return (Math.ceil((n / MEGA) * 10) / 10).toLocaleString('en-US');
}
