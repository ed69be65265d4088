import { create } from 'zustand';

/**
 * How it stands with the team. `none`: this device has no team; `starting`: nothing has been heard yet; `in-step`; `exchanging`;
 * `offline`: its server does not answer; `refused`: user name or password are not taken; `missing`: there is no such database;
 * `full`: this device takes no more.
 */
export type TeamState =
  | 'none'
  | 'starting'
  | 'in-step'
  | 'exchanging'
  | 'offline'
  | 'refused'
  | 'missing'
  | 'full';

export type TeamStatus = {
  readonly state: TeamState;
  /** Documents that are still to come or to go, as far as it is known, and those that have been exchanged since this began. */
  readonly toDo: number;
  readonly done: number;
  /** When the server last answered, milliseconds since 1970. */
  readonly lastContact: number | null;
  /** Sites that a newer version of the app has written, and sites that are too large for the database. */
  readonly unreadable: number;
  readonly tooLarge: number;
};

export const NO_TEAM: TeamStatus = {
  state: 'none',
  toDo: 0,
  done: 0,
  lastContact: null,
  unreadable: 0,
  tooLarge: 0,
};

/** What is known of the team on this page, from whichever tab's worker exchanges. */
export const useTeamStatus = create<TeamStatus>()(() => NO_TEAM);

/** Between the workers that exchange and the pages that show it. */
export const TEAM_CHANNEL = 'footmark-team';
export type TeamNews = { readonly is: 'status'; readonly status: TeamStatus } | { readonly is: 'left' };
