import { newSite, openSite, type Site } from '@footmark/site';
import type { SaidOfFile } from '@footmark/words';
import { FilePlus2, FolderOpen, HardHat, Map as MapIcon, Trash2 } from 'lucide-react';
import { useCallback, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { useLocation } from 'wouter';
import { Fold } from '../cards/Fold';
import { Action } from '../controls/Action';
import { notify } from '../session/workbench';
import type { SiteEntry } from '../storage/records';
import { binSite, hasSite, listSites, saveSite } from '../storage/siteStore';
import { newId } from '../tools/newId';
import { words } from '../words';
import styles from './HomeScreen.module.css';
import { OpenProblem } from './OpenProblem';

/** The sites on this device, and the ways to another. */
export function HomeScreen() {
  const [, go] = useLocation();
  const [entries, setEntries] = useState<readonly SiteEntry[] | null>(null);
  const [bin, setBin] = useState<readonly SiteEntry[]>([]);
  const [problem, setProblem] = useState<SaidOfFile | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const file = useRef<HTMLInputElement>(null);

  const refresh = useCallback(async () => {
    try {
      const listed = await listSites(Date.now());
      setEntries(listed.sites);
      setBin(listed.bin);
    } catch {
      setEntries([]);
      setTrouble(
        'This browser keeps no sites: its storage is blocked or full. Work can still be downloaded as a file.',
      );
    }
  }, []);
  useEffect(() => {
    void refresh();
  }, [refresh]);

  const openAs = async (site: Site) => {
    try {
      const own = (await hasSite(site.id)) ? { ...site, id: newId('s') } : site;
      await saveSite(own, Date.now());
      go(`/site/${own.id}`);
    } catch {
      setTrouble('The site could not be stored on this device. Free some space and try again.');
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
  const move = (id: string, toBin: boolean) =>
    binSite(id, toBin ? Date.now() : null).then(refresh, () =>
      setTrouble('The site could not be moved: this browser’s storage does not answer.'),
    );

  return (
    <main className={styles.page}>
      <header className={styles.head}>
        <h1>Footmark</h1>
        <p>
          The footage in, the mark out: camera readings in a buried drain become places to paint, with tapes
          to find them by.
        </p>
      </header>
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
      {trouble ? <p className={styles.trouble}>{trouble}</p> : null}
      <section aria-label="Sites on this device" className={styles.sites}>
        <h2>Sites on this device</h2>
        {entries === null ? null : entries.length === 0 ? (
          <p className={styles.empty}>
            None yet. Look round the sample site first, or start with the yard you stand in.
          </p>
        ) : (
          <ul>
            {entries.map((entry) => (
              <li key={entry.id} className={styles.site}>
                <Button className={styles.open ?? ''} onPress={() => go(`/site/${entry.id}`)}>
                  <strong>{entry.name || 'Site without a name'}</strong>
                  <span>{entry.address}</span>
                  <span>
                    {count(entry.counts.features, 'thing')} in the yard, {count(entry.counts.runs, 'run')},{' '}
                    {count(entry.counts.readings, 'reading')}. Saved {when(entry.savedAt)}.
                  </span>
                </Button>
                <Action
                  look="icon"
                  aria-label={`Crew view of ${entry.name || 'the site without a name'}`}
                  onPress={() => go(`/crew/${entry.id}`)}
                >
                  <HardHat size={20} aria-hidden />
                </Action>
                <Action
                  look="icon"
                  aria-label={`Delete ${entry.name}`}
                  onPress={() => void move(entry.id, true)}
                >
                  <Trash2 size={20} aria-hidden />
                </Action>
              </li>
            ))}
          </ul>
        )}
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

function count(n: number, one: string): string {
  return `${n} ${one}${n === 1 ? '' : 's'}`;
}

function when(ms: number): string {
  return new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' }).format(ms);
}

/** Feet where feet are taped with, metres elsewhere; the site's own settings change it. */
function defaultUnits(language: string): Site['units'] {
  return /^en-(US|LR|MM)\b|^en$/i.test(language)
    ? { length: 'ft-in', diameter: 'in', direction: 'bearing' }
    : { length: 'm', diameter: 'mm', direction: 'azimuth' };
}
