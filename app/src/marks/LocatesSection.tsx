import type { Mark } from '@footmark/site';
import { ChevronRight, Radio } from 'lucide-react';
import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import cards from '../cards/cards.module.css';
import { showPlace } from '../cards/showPlace';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { LocateForm } from './LocateForm';

/** Where a receiver found the sonde at a reading, against where it was computed. */
export function LocatesSection({ mark }: { readonly mark: Mark }) {
  const site = useSite();
  const { locates } = useDerived();
  const [adding, setAdding] = useState(false);
  const [added, setAdded] = useState(false);
  const list = useRef<HTMLUListElement>(null);
  // how far it is from where it was computed is what one wants to know of a new one
  useEffect(() => {
    if (!added) return;
    setAdded(false);
    list.current?.querySelector<HTMLElement>('li:last-child button')?.focus();
  }, [added]);
  const own = locates.filter((l) => l.mark.reading.id === mark.reading.id);
  return (
    <div className={cards.section}>
      <h3>Found with the receiver</h3>
      {own.length === 0 ? null : (
        <ul ref={list} className={cards.rows}>
          {own.map((locate) => (
            <li key={locate.feature}>
              <Button
                className={cards.row ?? ''}
                onPress={() => showPlace({ kind: 'feature', id: locate.feature })}
              >
                <span className={cards.grow}>
                  {site.features.find((f) => f.id === locate.feature)?.name ||
                    words.featureKindName('locate')}
                  <small>{words.foundText(locate, site)}</small>
                </span>
                <ChevronRight size={20} aria-hidden />
              </Button>
            </li>
          ))}
        </ul>
      )}
      {adding ? (
        <LocateForm
          mark={mark}
          onDone={(isAdded) => {
            setAdding(false);
            setAdded(isAdded);
          }}
        />
      ) : (
        <div className={cards.actions}>
          <Action onPress={() => setAdding(true)}>
            <Radio size={20} aria-hidden />{' '}
            {own.length === 0 ? 'Found with the receiver here' : 'Found with the receiver again'}
          </Action>
        </div>
      )}
    </div>
  );
}
