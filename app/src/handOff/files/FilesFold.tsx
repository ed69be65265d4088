import { joinDrawings } from '@footmark/drawing';
import { Download, Share } from 'lucide-react';
import { useState } from 'react';
import { drawingOf, inTheWayOf } from '../../canvas/planScene';
import cards from '../../cards/cards.module.css';
import { Fold } from '../../cards/Fold';
import { Action } from '../../controls/Action';
import { fitOfSite } from '../../fit/fitOfSite';
import { useDerived, useSite } from '../../session/siteSession';
import { notify } from '../../session/workbench';
import { keptAsFile } from '../keptAsFile';
import { canShareFiles, handOver, saveFile } from '../saveFile';
import { type FileSetting, fileKinds } from './fileKinds';
import styles from './files.module.css';
import { GridFields } from './GridFields';
import { useGrid } from './gridChoice';

const MISSING = {
  marks: 'There are no marks yet.',
  planned: 'No new pipe is planned yet.',
  earth: 'Needs a point of known latitude and longitude.',
  plan: 'There is nothing on the plan yet.',
} as const;

const NO_LAYER_HIDDEN: ReadonlySet<never> = new Set();

/** What the site is handed out as, for programs and instruments of others. */
export function FilesFold() {
  const site = useSite();
  const derived = useDerived();
  const grid = useGrid(site.id);
  return (
    <Fold title="Files for others" result="tables, CAD, maps, a picture">
      <div className={cards.section}>
        <GridFields grid={grid} />
      </div>
      <ul className={cards.rows}>
        {Object.entries(fileKinds).map(([id, kind]) => {
          const missing = kind.missing({ site, derived });
          return (
            <li key={id} className={styles.file}>
              <span className={cards.grow}>
                {kind.name}
                <small>{missing === null ? kind.use : MISSING[missing]}</small>
              </span>
              {missing === null ? (
                <HandOut id={id} setting={() => settingOf({ site, derived, grid })} />
              ) : null}
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}

/** Saves a file, or hands it to the device's share sheet where there is one. */
function HandOut({ id, setting }: { readonly id: string; readonly setting: () => FileSetting }) {
  const [isBusy, setBusy] = useState(false);
  const kind = fileKinds[id];
  if (kind === undefined) return null;
  const handOut = async (how: 'save' | 'share') => {
    setBusy(true);
    const given = setting();
    const file = await kind.make(given);
    setBusy(false);
    if (file === null) notify('A place of this site has no coordinates in the system that is chosen.');
    else if (how === 'share') await handOver([file]);
    else {
      saveFile(file);
      if (kind.isWhole === true) keptAsFile(given.site);
    }
  };
  return (
    <>
      {canShareFiles() ? (
        <Action
          look="icon"
          aria-label={`Share: ${kind.name}`}
          isDisabled={isBusy}
          onPress={() => void handOut('share')}
        >
          <Share size={20} aria-hidden />
        </Action>
      ) : null}
      <Action
        look="icon"
        aria-label={`Save: ${kind.name}`}
        isDisabled={isBusy}
        onPress={() => void handOut('save')}
      >
        <Download size={20} aria-hidden />
      </Action>
    </>
  );
}

function settingOf({ site, derived, grid }: Pick<FileSetting, 'site' | 'derived' | 'grid'>): FileSetting {
  const fit = fitOfSite(site);
  // all that is planned and stands in its way, whatever is shown just now
  const inHand = { step: 'route', selected: null, moves: false } as const;
  const inTheWay = inTheWayOf(site, derived, fit, inHand, NO_LAYER_HIDDEN);
  const drawing = joinDrawings(drawingOf(site, derived, null, fit, NO_LAYER_HIDDEN), inTheWay);
  return { site, derived, fit, grid, drawing };
}
