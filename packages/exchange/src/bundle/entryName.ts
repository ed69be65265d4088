/** Longest name of a file in a bundle. */
const MOST_CHARACTERS = 200;

/**
 * Whether a name could lead out of the folder that an archive is unpacked into, or mean another file than it shows: `..`, a root, a drive, a
 * backslash, a control character. Nothing is ever written by such a name here; an archive that has one was made to do harm, and is refused.
 */
export function leadsOutside(name: string): boolean {
  return (
    name.length > MOST_CHARACTERS ||
    /[\\:]/.test(name) ||
    [...name].some((c) => c < ' ' || c === '\u007f') ||
    name.split('/').some((part) => part === '' || part === '.' || part === '..')
  );
}
