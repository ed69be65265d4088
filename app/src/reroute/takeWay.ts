import { planWay, type Way } from '@footmark/reroute';
import { derivedFrom, edit } from '../session/siteSession';
import { notify, show } from '../session/workbench';
import { newId } from '../tools/newId';
import { clearWays } from './waysSession';

/** Plans a way, as it was asked for: a new pipe with what is dug for it, of an old pipe only what is dug. */
export function takeWay(way: Way, asked: string): void {
  let path = way.path.id;
  const ids = (prefix: 'p' | 'd') => {
    const id = newId(prefix);
    if (prefix === 'p') path = id;
    return id;
  };
  const done = edit('Take a way', (site) =>
    planWay(site, derivedFrom(site), way, { asked, newId: ids, name: 'New drain' }),
  );
  if (!done) return;
  // they were found for the site as it was
  clearWays();
  if (way.route !== null) {
    show({ kind: 'path', id: path });
    notify('Planned. Its points to set out are in Marks, what is dug for it in Route.');
  } else notify('What is dug for it is planned now.');
}
