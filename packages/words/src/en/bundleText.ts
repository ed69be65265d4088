import type { BundleFailure, BundleNote } from '../bundle';
import { megabytesText } from '../fileProblem';
import { quotedNames } from '../quotedNames';
import type { SaidOfFile } from '../said';
import { fileProblemText } from './fileProblemText';

const AGAIN = 'Get the file again from where it was written.';

/** Why a bundle of a site and its pictures is not opened. */
export function bundleProblemText(failure: BundleFailure): SaidOfFile {
  const said = (text: string, cure: string) => ({ text, cure, problems: [] });
  switch (failure.code) {
    case 'bundle-too-large':
      return said(
        `The file is too large: ${megabytesText(failure.bytes)}, and the most is ${megabytesText(failure.most)}.`,
        'Check that it is the right file.',
      );
    case 'not-a-bundle':
      return said(
        'The file is not a zip, so it is no bundle of a site.',
        'Choose a file that was saved as a bundle.',
      );
    case 'bundle-damaged':
      return said('The file was damaged or cut short on the way.', AGAIN);
    case 'bundle-not-read':
      return said(
        'The zip is encrypted, or packed in a way that is not used here.',
        'Have it written again as a plain zip.',
      );
    case 'bundle-too-many-files':
      return said(`There are more than ${failure.most} files in it.`, 'Check that it is the right file.');
    case 'bundle-swells':
      return said(
        `What is in it would swell to more than ${megabytesText(failure.most)}. It was not unpacked.`,
        'Do not trust this file; ask whoever sent it.',
      );
    case 'bundle-path-outside':
      return said(
        `A file in it has a name that leads outside: “${failure.name}”. Nothing of it was opened.`,
        'Do not trust this file; ask whoever sent it.',
      );
    case 'bundle-name-twice':
      return said(`Two files in it have one name: “${failure.name}”.`, AGAIN);
    case 'bundle-without-site':
      return said('There is no site in it.', 'Choose a file that was saved as a bundle.');
    case 'bundle-site':
      return fileProblemText(failure.failure);
  }
}

/** What of a bundle was left, or is missing. */
export function bundleNoteText(note: BundleNote): string {
  switch (note.code) {
    case 'unknown-files':
      return `Files that are none of the site’s, left alone: ${namesText(note.names)}.`;
    case 'not-pictures':
      return `Files that should be pictures and are none, left out: ${namesText(note.names)}.`;
    case 'pictures-missing':
      return note.count === 1
        ? 'One picture of the site is not in it.'
        : `${note.count} pictures of the site are not in it.`;
    case 'names-not-read':
      return 'What the pictures were called cannot be read: each is called as its file in the zip.';
  }
}

function namesText(names: readonly string[]): string {
  const { shown, more } = quotedNames(names);
  return more === 0 ? shown : `${shown} and ${more} more`;
}
