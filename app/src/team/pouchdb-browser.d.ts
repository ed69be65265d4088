// What is used of PouchDB 9, which comes without types.
declare module 'pouchdb-browser' {
  import type { RevisedDocument, WriteOutcome } from '@footmark/team';

  type Attachment = { readonly content_type: string; readonly data: Blob };
  type Feed = {
    on(event: string, heard: (value: never) => void): Feed;
    cancel(): void;
  };
  type LiveOptions = {
    readonly live: true;
    readonly retry: true;
    readonly batch_size: number;
    readonly batches_limit: number;
    readonly back_off_function: (delay: number) => number;
  };

  class PouchDB {
    constructor(
      name: string,
      options?: {
        readonly adapter?: 'idb' | 'http';
        readonly skip_setup?: boolean;
        readonly fetch?: (url: string, options?: RequestInit) => Promise<Response>;
      },
    );
    static sync(
      local: PouchDB,
      remote: PouchDB,
      options: LiveOptions,
    ): Feed & { readonly pull: Feed; readonly push: Feed };
    get<Kept = RevisedDocument>(id: string, options?: object): Promise<Kept & { readonly _rev: string }>;
    put(
      document: Readonly<Record<string, unknown>> & { readonly _attachments?: Record<string, Attachment> },
    ): Promise<unknown>;
    bulkDocs(documents: readonly object[]): Promise<readonly WriteOutcome[]>;
    getAttachment(id: string, name: string): Promise<Blob>;
    changes(options: { readonly live: true; readonly since: number; readonly batch_size: number }): Feed;
    compactDocument(id: string, keep: number): Promise<unknown>;
    close(): Promise<void>;
  }
  export default PouchDB;
}
