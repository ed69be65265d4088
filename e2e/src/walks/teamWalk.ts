import { expect, type Page } from '@playwright/test';
import type { TeamServer } from '../../../tests/team/teamServer';
import type { Pointer } from '../hand';
import { Team } from '../Team';
import type { Look } from './look';

/** What an answer of the server may take on a busy machine. */
const EXCHANGE_MS = 40_000;

/** From the first screen: the form to join a team, an address that it does not take, a password that the server does not, and the team that was joined. */
export async function walkTeam(page: Page, hand: Pointer, server: TeamServer, look: Look): Promise<void> {
  const team = new Team(page, hand);
  await team.open();
  await look('joining a team');
  await team.join({ ...server, url: 'http://sites.example.com/yards' });
  await expect(team.problem).toBeVisible();
  await look('an address that is not encrypted');
  await team.join(server, 'not the password');
  await expect(team.problem).toContainText('user name and password');
  await look('a password that is not taken');
  await team.join(server);
  await expect(team.status).toContainText('In step', { timeout: EXCHANGE_MS });
  await look('in a team');
}
