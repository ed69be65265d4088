/** A document of the team's database with what the database says of it. */
export type RevisedDocument = {
  readonly _id: string;
  readonly _rev: string;
  readonly _deleted?: boolean;
  /** Other revisions that were put beside this one, when they were asked for. */
  readonly _conflicts?: readonly string[];
};

export type WriteOutcome = { readonly ok?: boolean; readonly rev?: string; readonly error?: unknown };

/** What is needed of the device's replica of the team's database; PouchDB's own methods fit. */
export type Replica = {
  /** Rejects with `status` 404 when there is none, and `reason` 'deleted' when there was. */
  get(id: string, options: { readonly conflicts?: true; readonly rev?: string }): Promise<RevisedDocument>;
  /** Writes each on the revision that it names; one that is not the latest is not written. */
  bulkDocs(documents: readonly Readonly<Record<string, unknown>>[]): Promise<readonly WriteOutcome[]>;
};

/** Whether a replica has refused because there is no such document or revision. */
export function isMissing(error: unknown): boolean {
  return typeof error === 'object' && error !== null && 'status' in error && error.status === 404;
}

export function isDeleted(error: unknown): boolean {
  return isMissing(error) && String(Reflect.get(Object(error), 'reason')) === 'deleted';
}
