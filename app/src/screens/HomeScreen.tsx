import { newSite, openSite, type Site } from '@footmark/site';
import type { SaidOfFile } from '@footmark/words';
import { FilePlus2, FolderOpen, Map as MapIcon } from 'lucide-react';
import { useCallback, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { keepUnsaved } from '../session/autosave';
import { notify } from '../session/workbench';
import { binSite, hasSite, saveSite } from '../storage/siteStore';
import { TeamFold } from '../team/TeamFold';
import { newId } from '../tools/newId';
import { words } from '../words';
import styles from './HomeScreen.module.css';
import { KeptLine } from './KeptLine';
import { OpenProblem } from './OpenProblem';
import { SiteList } from './SiteList';
import { forgetCleared } from './sitesCleared';
import { UnsavedBar } from './UnsavedBar';
import { useSiteEntries } from './useSiteEntries';

/** The sites on this device, and the ways to another. */
export function HomeScreen() {
  const [, go] = useLocation();
  const { entries, bin, said, refresh } = useSiteEntries();
  const [problem, setProblem] = useState<SaidOfFile | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const file = useRef<HTMLInputElement>(null);

  const openAs = async (site: Site) => {
    try {
      const own = (await hasSite(site.id)) ? { ...site, id: newId('s') } : site;
      await saveSite(own, Date.now());
      forgetCleared();
      go(`/site/${own.id}`);
    } catch (error) {
      keepUnsaved(site, error);
      go(`/site/${site.id}`);
    }
  };
  const startNew = () =>
    openAs(
      newSite({
        id: newId('s'),
        name: 'New site',
        createdAt: new Date().toISOString(),
        units: defaultUnits(navigator.language),
      }),
    );
  const openSample = async () => {
    const text = (await import('@footmark/site/samples/rear-alley.json?raw')).default;
    const opened = openSite(text);
    if (opened.ok) await openAs({ ...opened.site, id: newId('s') });
    else setProblem(words.fileProblemText(opened.failure));
  };
  const openFile = async (chosen: File) => {
    setProblem(null);
    const { openSiteFile } = await import('../handOff/openSiteFile');
    const opened = await openSiteFile(chosen);
    if (!opened.ok) {
      setProblem(opened.said);
      return;
    }
    // first the pictures: a site that is shown looks for its own at once
    const lost = await opened.keepPictures(opened.site.id, Date.now());
    await openAs(opened.site);
    const said = [...opened.notes, ...(lost.length === 0 ? [] : [`Not kept: ${lost.join(', ')}.`])];
    if (said.length > 0) notify(said.join(' '));
  };
  const move = useCallback(
    (id: string, toBin: boolean) =>
      binSite(id, toBin ? Date.now() : null).then(refresh, () =>
        setTrouble('The site could not be moved: this browser’s storage does not answer.'),
      ),
    [refresh],
  );
  // the same functions each time: a long list draws anew only the rows that have changed
  const open = useCallback((id: string) => go(`/site/${id}`), [go]);
  const crew = useCallback((id: string) => go(`/crew/${id}`), [go]);
  const remove = useCallback((id: string) => void move(id, true), [move]);

  return (
    <main className={styles.page}>
      <header className={styles.head}>
        <h1>Footmark</h1>
        <p>
          The footage in, the mark out: camera readings in a buried drain become places to paint, with tapes
          to find them by.
        </p>
      </header>
      <UnsavedBar />
      <div className={styles.actions}>
        <Action look="primary" onPress={() => void startNew()}>
          <FilePlus2 size={20} aria-hidden /> New site
        </Action>
        <Action onPress={() => void openSample()}>
          <MapIcon size={20} aria-hidden /> Open the sample site
        </Action>
        <Action onPress={() => file.current?.click()}>
          <FolderOpen size={20} aria-hidden /> Open a site file
        </Action>
        <input
          ref={file}
          type="file"
          accept=".json,.zip,application/json,application/zip"
          hidden
          data-testid="site-file"
          onChange={(event) => {
            const chosen = event.target.files?.[0];
            event.target.value = '';
            if (chosen) void openFile(chosen);
          }}
        />
      </div>
      {problem ? <OpenProblem said={problem} onClose={() => setProblem(null)} /> : null}
      {(trouble ?? said) ? <p className={styles.trouble}>{trouble ?? said}</p> : null}
      <section aria-label="Sites on this device" className={styles.sites}>
        <h2>Sites on this device</h2>
        {entries === null ? null : entries.length === 0 ? (
          <p className={styles.empty}>
            None yet. Look round the sample site first, or start with the yard you stand in.
          </p>
        ) : (
          <>
            <KeptLine entries={entries} onDownloaded={refresh} />
            <SiteList entries={entries} onOpen={open} onCrew={crew} onDelete={remove} onShared={refresh} />
          </>
        )}
        <TeamFold />
        {bin.length > 0 ? (
          <Fold title={`Bin (${bin.length})`}>
            <p className={styles.empty}>Deleted sites rest here for 30 days.</p>
            <ul>
              {bin.map((entry) => (
                <li key={entry.id} className={styles.binned}>
                  <span>{entry.name || 'Site without a name'}</span>
                  <Action onPress={() => void move(entry.id, false)}>Bring back</Action>
                </li>
              ))}
            </ul>
          </Fold>
        ) : null}
      </section>
      <footer className={styles.foot}>
        <strong>{words.cautionText('call-before-digging').title}</strong>{' '}
        {words.cautionText('call-before-digging').text}
      </footer>
    </main>
  );
}

/** Feet where feet are taped with, metres elsewhere; the site's own settings change it. */
function defaultUnits(language: string): Site['units'] {
  return /^en-(US|LR|MM)\b|^en$/i.test(language)
    ? { length: 'ft-in', diameter: 'in', direction: 'bearing' }
    : { length: 'm', diameter: 'mm', direction: 'azimuth' };
}
