import { lengthText } from '@footmark/words';
import { ChevronRight, Plus } from 'lucide-react';
import { Button } from 'react-aria-components';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { select, useWorkbench } from '../session/workbench';
import { startDrawing } from '../tools/useTool';
import { words } from '../words';
import styles from './cards.module.css';
import { PathCard } from './PathCard';

/** The pipes under the yard, as they are assumed to lie. */
export function LineCard() {
  const site = useSite();
  const derived = useDerived();
  const selected = useWorkbench((w) => w.selected);
  const path = selected?.kind === 'path' ? site.paths.find((p) => p.id === selected.id) : undefined;
  if (path !== undefined) return <PathCard key={path.id} path={path} />;
  return (
    <section className={styles.card} aria-label="Line">
      <div className={styles.head}>
        <h2>Line</h2>
        <Action
          look={site.paths.length === 0 ? 'primary' : 'plain'}
          onPress={() => startDrawing({ what: 'path' })}
        >
          <Plus size={20} aria-hidden /> {site.paths.length === 0 ? 'Draw the pipe' : 'Draw a branch'}
        </Action>
      </div>
      {site.paths.length === 0 ? (
        <p className={styles.empty}>
          Draw the pipe as you think it lies, from the house to the tap. A branch ends where it joins another
          pipe.
        </p>
      ) : (
        <ul className={styles.rows}>
          {site.paths.map((p) => {
            const curve = derived.paths.get(p.id);
            const main = site.paths.find((other) => other.id === curve?.joins?.path);
            return (
              <li key={p.id}>
                <Button className={styles.row ?? ''} onPress={() => select({ kind: 'path', id: p.id })}>
                  <span className={styles.grow}>
                    {words.targetName({ kind: 'path', id: p.id }, site)}
                    <small>
                      {main && curve?.joins
                        ? `joins ${words.targetName({ kind: 'path', id: main.id }, site)} at ${lengthText(curve.joins.station, site.units)}`
                        : 'runs to its end'}
                    </small>
                  </span>
                  <span className={styles.number}>
                    {curve === undefined ? 'not complete' : lengthText(curve.length, site.units)}
                  </span>
                  <ChevronRight size={20} aria-hidden />
                </Button>
              </li>
            );
          })}
        </ul>
      )}
    </section>
  );
}
