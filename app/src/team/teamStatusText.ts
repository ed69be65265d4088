import { momentText } from '../cards/momentText';
import type { TeamStatus } from './teamStatus';

/** How it stands with the team in a few words, and in full. */
export function teamStatusText(status: TeamStatus): { readonly title: string; readonly text: string } {
  const { lastContact, unreadable, tooLarge } = status;
  const contact =
    lastContact === null
      ? 'Its server has not answered yet.'
      : `Last answer of its server: ${momentText(lastContact)}.`;
  const left = [
    ...(unreadable > 0
      ? [
          `${sites(unreadable)} cannot be opened here: a newer version of the app has written them. They are left as they are.`,
        ]
      : []),
    ...(tooLarge > 0
      ? [`${sites(tooLarge)} are too large for the team’s database and stay on this device.`]
      : []),
  ];
  const said = saidOf(status);
  return { title: said.title, text: [...said.text, contact, ...left].join(' ') };
}

function saidOf({ state, toDo }: TeamStatus): { readonly title: string; readonly text: readonly string[] } {
  switch (state) {
    case 'none':
    case 'starting':
      return { title: 'Looking for the server', text: [] };
    case 'in-step':
      return { title: 'In step', text: [] };
    case 'exchanging':
      return { title: toDo > 0 ? `${sites(toDo)} to go` : 'Exchanging', text: [] };
    case 'offline':
      return {
        title: 'No contact',
        text: ['You can work: all of it is exchanged once the server answers again.'],
      };
    case 'refused':
      return {
        title: 'Not let in',
        text: [
          'The server does not take the user name and password any more. Leave the team, and join it with new ones.',
        ],
      };
    case 'missing':
      return { title: 'No such database', text: ['The server answers, but the database is gone.'] };
    case 'full':
      return {
        title: 'This device is full',
        text: ['Not all that others wrote could be taken in. Free some space.'],
      };
  }
}

function sites(count: number): string {
  return count === 1 ? 'One site' : `${count} sites`;
}
