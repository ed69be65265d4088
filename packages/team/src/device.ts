import type { SiteState, StampedSite } from '@footmark/merge';

/** What a device knows of who gave a site's things their values. Kept together, so that who loses one loses the other. */
export type Stamps = {
  /** The name that the device stamps with, of this site only. */
  readonly by: string;
  readonly last: StampedSite;
};

/** What a device has of a site. */
export type OnDevice = {
  /** Null: it does not open here, and is left alone. */
  readonly state: SiteState | null;
  /** The count of its writes. */
  readonly seq: number;
  /** Null: it was never exchanged. */
  readonly stamps: Stamps | null;
  /** Whether it is to go to the team. */
  readonly shared: boolean;
};

/** What is to be on the device after an exchange. */
export type Exchanged = {
  readonly state: SiteState;
  readonly stamps: Stamps;
  /** The count of writes that the device had when it was read; null: it did not have the site. */
  readonly seq: number | null;
};

/** The device's own store of sites. */
export type Device = {
  /** Null: it has no such site. */
  read(id: string): Promise<OnDevice | null>;
  /** Keeps what was stamped, before anybody hears of it. False: somebody wrote the site since. */
  keep(id: string, stamped: { readonly stamps: Stamps; readonly seq: number }): Promise<boolean>;
  /** Writes the site, when it is another than the device has, and that it was exchanged, both or neither. False: somebody wrote since. */
  write(id: string, exchanged: Exchanged): Promise<boolean>;
};
