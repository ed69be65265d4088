import { type Mark, reachOfMark } from '@footmark/site';
import { useMemo } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';

/** Where a mark can be at all, whatever way the pipe takes: by the cable alone. */
export function ReachFold({ mark }: { readonly mark: Mark }) {
  const site = useSite();
  const derived = useDerived();
  const reach = useMemo(() => reachOfMark(site, derived, mark), [site, derived, mark]);
  if (reach === null) return null;
  return (
    <Fold title="Where it can be at all" isOpen={reach.contradiction !== null}>
      {words.reachTexts(reach, site).map((text, i) => (
        <p key={text} {...(i === 0 ? {} : { className: cards.sub })}>
          {text}
        </p>
      ))}
      <p className={cards.sub}>By the cable alone, whatever way the pipe takes.</p>
    </Fold>
  );
}
