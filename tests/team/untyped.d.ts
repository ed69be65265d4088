// What the tests use of libraries that come without types.

declare module 'pouchdb-core' {
  type Found = {
    readonly _id: string;
    readonly _rev: string;
    readonly _conflicts?: readonly string[];
  };
  type Replicate = (remote: Pouch, options?: object) => Promise<{ readonly errors: readonly unknown[] }>;
  class Pouch {
    constructor(
      name: string,
      options?: { readonly adapter?: string; readonly fetch?: typeof fetch; readonly skip_setup?: boolean },
    );
    static plugin(plugin: unknown): typeof Pouch;
    static defaults(options: { readonly adapter: string }): typeof Pouch;
    get(id: string, options?: object): Promise<Found & Readonly<Record<string, unknown>>>;
    bulkDocs(
      documents: readonly object[],
    ): Promise<readonly { readonly ok?: boolean; readonly rev?: string; readonly error?: unknown }[]>;
    allDocs(options?: object): Promise<{
      readonly rows: readonly {
        readonly id: string;
        readonly value: { readonly rev: string };
        readonly doc?: Found;
      }[];
    }>;
    changes(
      options: object,
    ): Promise<{ readonly last_seq: number; readonly results: readonly { readonly id: string }[] }>;
    readonly replicate: { readonly to: Replicate; readonly from: Replicate };
    info(): Promise<{ readonly doc_count: number; readonly update_seq: number }>;
    close(): Promise<void>;
  }

  export { Pouch as default };
}
declare module 'pouchdb-adapter-memory';
declare module 'pouchdb-adapter-http';
declare module 'pouchdb-mapreduce';
declare module 'pouchdb-replication';
declare module 'pouchdb-find';
declare module 'express-pouchdb' {
  import type { RequestListener } from 'node:http';
  import type Pouch from 'pouchdb-core';

  function expressPouch(pouch: typeof Pouch, options: object): RequestListener;

  export { expressPouch as default };
}
declare module 'express' {
  import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http';

  type Handler = (request: IncomingMessage, response: ServerResponse, next: () => void) => void;
  function express(): RequestListener & { use(handler: Handler | RequestListener): void };

  export { express as default };
}
