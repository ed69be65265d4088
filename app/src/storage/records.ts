import type { OtherVersion, StampedSite } from '@footmark/merge';

/** What the list of sites shows, without opening each. */
export type SiteEntry = {
  readonly id: string;
  readonly name: string;
  readonly address: string;
  /** Milliseconds since 1970 of the last save. */
  readonly savedAt: number;
  /** When it was put into the bin, milliseconds since 1970. */
  readonly deletedAt?: number;
  /** When its time in the bin was first seen to be over, milliseconds since 1970. */
  readonly overdueSince?: number;
  readonly counts: { readonly features: number; readonly runs: number; readonly readings: number };
  /** Counts the writes of the site on this device; whoever writes tells which one it has seen. */
  readonly seq?: number;
  /** When the last version was put by, milliseconds since 1970. */
  readonly versionedAt?: number;
  /** The write that was last downloaded as a file. */
  readonly downloadedSeq?: number;
  /** The team has it too, or is to have it. */
  readonly team?: true;
  /** The write that was last exchanged with the team. */
  readonly exchangedSeq?: number;
};

/** A site as it lies on the device, with the versions of its things that wait for a choice. */
export type StoredSite = {
  readonly id: string;
  readonly site: unknown;
  readonly others?: readonly OtherVersion[];
};

/** How a site was before a later write: `seq` the write that it was, `at` when that was made, milliseconds since 1970. */
export type StoredVersion = {
  readonly of: string;
  readonly seq: number;
  readonly at: number;
  readonly site: unknown;
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

/** What this device knows of who of the team gave a site's things their values, and the name that it stamps with itself. */
export type StoredStamps = { readonly id: string; readonly by: string; readonly last: StampedSite };

/** The team's database, and with what name one is let in. It never leaves the device but to that address. */
export type StoredTeam = {
  readonly id: 'team';
  /** Without user name and password. */
  readonly url: string;
  readonly user: string;
  readonly password: string;
  /** Every site of this device goes to the team, not only those that were chosen. */
  readonly shareAll: boolean;
};
