import type { OpenFailure } from '@footmark/site';

/** Why a bundle is not opened. Nothing of it is taken then. */
export type BundleFailure =
  | { readonly code: 'bundle-too-large'; readonly bytes: number; readonly most: number }
  | { readonly code: 'not-a-bundle' } // no zip
  | { readonly code: 'bundle-damaged' } // cut short, or what it holds is not what it says
  | { readonly code: 'bundle-not-read' } // encrypted, or packed in a way that is not used here
  | { readonly code: 'bundle-too-many-files'; readonly most: number }
  | { readonly code: 'bundle-swells'; readonly most: number } // bytes, unpacked
  | { readonly code: 'bundle-path-outside'; readonly name: string }
  | { readonly code: 'bundle-name-twice'; readonly name: string }
  | { readonly code: 'bundle-without-site' }
  | { readonly code: 'bundle-site'; readonly failure: OpenFailure };

/** What of a bundle was opened with less than all. */
export type BundleNote =
  | { readonly code: 'unknown-files'; readonly names: readonly string[] }
  | { readonly code: 'not-pictures'; readonly names: readonly string[] }
  | { readonly code: 'pictures-missing'; readonly count: number }
  | { readonly code: 'names-not-read' }; // what the pictures were called
