import type { Way } from '@footmark/reroute';
import { addDig, addPath } from '@footmark/site';
import { edit } from '../session/siteSession';
import { notify, show } from '../session/workbench';
import { newId } from '../tools/newId';

/** Makes a way what is planned: its pipe a proposed one, with what is dug for it. Of an old pipe only what is dug. */
export function takeWay(way: Way, name: string): void {
  const isNew = way.route !== null;
  const path = isNew ? newId('p') : way.path.id;
  const done = edit('Take a way', (site) => {
    const withPath = isNew ? addPath(site, { path: { ...way.path, id: path, name } }) : site;
    return way.digs.reduce((s, dig) => {
      return addDig(s, { dig: { ...dig, id: newId('d'), ...(dig.is === 'trench' ? { path } : {}) } });
    }, withPath);
  });
  if (!done) return;
  if (isNew) {
    show({ kind: 'path', id: path });
    notify('Planned. Its points to set out are in Marks, what is dug for it in Route.');
  } else notify('What is dug for it is planned now.');
}
