import { type SetOut, setOutsOf } from '@footmark/site';
import { Download } from 'lucide-react';
import { useMemo } from 'react';
import cards from '../cards/cards.module.css';
import { Fold } from '../cards/Fold';
import { useMoreInSight } from '../cards/useMoreInSight';
import { Action } from '../controls/Action';
import { useDerived, useSite } from '../session/siteSession';
import { words } from '../words';
import { downloadSetOut } from './downloadSetOut';
import { SetOutRow } from './SetOutRow';
import styles from './setOut.module.css';

/** What the crew paints to set proposed pipes out, a list for each; nothing where none is proposed. */
export function SetOutSection() {
  const site = useSite();
  const derived = useDerived();
  const setOuts = useMemo(() => setOutsOf(site, derived), [site, derived]);
  return setOuts.map((setOut) => (
    <Fold
      key={setOut.path}
      title={`Set out ${nameOf(setOut)}: ${setOut.points.length} points`}
      isOpen={derived.marks.length === 0}
    >
      <SetOutList setOut={setOut} />
    </Fold>
  ));

  function nameOf({ path }: SetOut): string {
    return words.targetName({ kind: 'path', id: path }, site);
  }
}

function SetOutList({ setOut }: { readonly setOut: SetOut }) {
  const { points, evenGround } = setOut;
  const { shown, end } = useMoreInSight<HTMLLIElement>(points.length);
  return (
    <>
      <p className={cards.sub}>
        Paint in white, with the flow. A bend is painted where its two legs meet.
        {evenGround ? ' No level is known: depths are below a ground that is taken as even.' : ''}
      </p>
      <div>
        <p className={styles.columns} aria-hidden>
          <span>Point, with its tapes</span>
          <span>Depth to invert</span>
        </p>
        <ul className={cards.rows}>
          {points.slice(0, shown).map((point) => (
            <li key={point.number}>
              <SetOutRow point={point} />
            </li>
          ))}
          {shown < points.length ? <li ref={end} aria-hidden /> : null}
        </ul>
      </div>
      <div className={cards.actions}>
        <Action onPress={downloadSetOut}>
          <Download size={20} aria-hidden /> Download as CSV
        </Action>
      </div>
    </>
  );
}
