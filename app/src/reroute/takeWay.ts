import type { Way } from '@footmark/reroute';
import { addDig, addPath, removeThing, type Site } from '@footmark/site';
import { derivedFrom, edit } from '../session/siteSession';
import { notify, show } from '../session/workbench';
import { newId } from '../tools/newId';
import { clearWays } from './waysSession';

/**
 * Makes a way what is planned: its pipe a proposed one, with what is dug for it. Of an old pipe only what is dug. A pipe that was planned in place of
 * which it was looked for gives way to it.
 */
export function takeWay(way: Way, site: Site, asked: string): void {
  const planned = site.paths.find((p) => p.id === asked && p.state === 'proposed');
  const isNew = way.route !== null;
  const path = isNew ? newId('p') : way.path.id;
  const done = edit('Take a way', (before) => {
    const name = planned?.name ?? 'New drain';
    const cleared =
      isNew && planned !== undefined
        ? removeThing(before, { id: planned.id, places: derivedFrom(before).points })
        : before;
    const withPath = isNew ? addPath(cleared, { path: { ...way.path, id: path, name } }) : cleared;
    return way.digs.reduce((s, dig) => {
      return addDig(s, { dig: { ...dig, id: newId('d'), ...(dig.is === 'trench' ? { path } : {}) } });
    }, withPath);
  });
  if (!done) return;
  // they were found for the site as it was
  clearWays();
  if (isNew) {
    show({ kind: 'path', id: path });
    notify('Planned. Its points to set out are in Marks, what is dug for it in Route.');
  } else notify('What is dug for it is planned now.');
}
