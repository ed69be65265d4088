import type { SaveAfter } from './saveSiteAfter';

/** What goes to the worker that writes sites, and what comes back: `job` tells which answer is whose. */
export type SaveQuestion = { readonly job: number; readonly save: SaveAfter };
export type SaveAnswer =
  | { readonly job: number; readonly is: 'done'; readonly seq: number | null }
  | { readonly job: number; readonly is: 'failed'; readonly name: string };
