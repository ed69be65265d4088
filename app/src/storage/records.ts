/** What the list of sites shows, without opening each. */
export type SiteEntry = {
  readonly id: string;
  readonly name: string;
  readonly address: string;
  /** Milliseconds since 1970 of the last save. */
  readonly savedAt: number;
  /** When it was put into the bin, milliseconds since 1970. */
  readonly deletedAt?: number;
  readonly counts: { readonly features: number; readonly runs: number; readonly readings: number };
};

/** A picture that a site names by its id. It stays on the device: the site file carries the id, not the picture. */
export type StoredFile = {
  readonly id: string;
  /** The site that it was added to. */
  readonly site: string;
  readonly blob: Blob;
  /** What the device called it. */
  readonly name: string;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Milliseconds since 1970. */
  readonly addedAt: number;
};

/** What a crew has done and found on a site, as it will be sent back. */
export type StoredAnswer = {
  readonly id: string;
  readonly site: string;
  readonly answer: unknown;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
};
