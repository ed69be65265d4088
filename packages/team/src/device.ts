import type { SiteState } from '@footmark/merge';

/** What a device has of a site. */
export type OnDevice = {
  /** Null: it does not open here, and is left alone. */
  readonly state: SiteState | null;
  /** The count of its writes. */
  readonly seq: number;
  /** What it was when it was last exchanged; null: it never was. */
  readonly base: SiteState | null;
  /** Whether it is to go to the team. */
  readonly shared: boolean;
};

/** What is to be on the device after an exchange. */
export type Exchanged = {
  readonly state: SiteState;
  /** The count of writes that the device had when it was read; null: it did not have the site. */
  readonly seq: number | null;
};

/** The device's own store of sites. */
export type Device = {
  /** Null: it has no such site. */
  read(id: string): Promise<OnDevice | null>;
  /** Writes the site, when it is another than the device has, and that it was exchanged, both or neither. False: somebody wrote since. */
  write(id: string, exchanged: Exchanged): Promise<boolean>;
};
