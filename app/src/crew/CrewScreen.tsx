import type { OpenFailure, Site } from '@footmark/site';
import { languages } from '@footmark/words';
import { useEffect, useState } from 'react';
import { I18nProvider } from 'react-aria-components';
import { useLocation } from 'wouter';
import { NO_PINS, usePlanPins } from '../canvas/planPins';
import { usePlanView } from '../canvas/planView';
import { Action } from '../controls/Action';
import { OpenProblem } from '../screens/OpenProblem';
import { openedFromDevice, unsavedStateOf } from '../session/autosave';
import { readyToDerive } from '../session/readyToDerive';
import { lockSite, type SiteLock } from '../session/siteLock';
import { openInSession, useSiteSession } from '../session/siteSession';
import { goTo } from '../session/workbench';
import { readSite } from '../storage/siteStore';
import { speak, words } from '../words';
import { CrewView } from './CrewView';
import styles from './crew.module.css';
import { useCrewLanguage } from './crewLanguage';
import { closeAnswer, holdAgainst, openAnswerOf, useCrewSession } from './crewSession';

type Trouble = OpenFailure | 'site-missing' | 'storage-silent' | 'open-elsewhere';

/** A site as the crew at the hole sees it: nothing of it can be changed, and what was done and found is kept beside it. */
export function CrewScreen({ id }: { readonly id: string }) {
  const [, go] = useLocation();
  const isOpen = useSiteSession((s) => s.site?.id === id);
  const hasAnswer = useCrewSession((s) => s.answer?.site === id);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  // how often the answer was taken over from another tab
  const [takeovers, setTakeovers] = useState(0);
  const language = useCrewLanguage((l) => l.tag);
  const spoken = languages.find((l) => l.language === language) ?? languages[0];
  speak(spoken);

  useEffect(() => {
    speak(spoken);
    document.documentElement.lang = spoken.language;
    return () => {
      speak(languages[0]);
      document.documentElement.lang = languages[0].language;
    };
  }, [spoken]);

  useEffect(() => {
    let left = false;
    let lock: SiteLock | null = null;
    const start = async () => {
      try {
        lock = await lockSite(`crew-${id}`, takeovers > 0, () => {
          closeAnswer();
          setTrouble('open-elsewhere');
        });
        if (left) {
          lock?.release();
          return;
        }
        if (lock === null) {
          setTrouble('open-elsewhere');
          return;
        }
        const loaded = await siteToRead(id);
        if (left) return;
        if (typeof loaded === 'string' || 'code' in loaded) {
          setTrouble(loaded);
          return;
        }
        setTrouble(null);
        await readyToDerive(loaded);
        if (left) return;
        usePlanView.setState({ camera: null });
        goTo('marks');
        openInSession(loaded);
        await openAnswerOf(loaded);
      } catch {
        setTrouble('storage-silent');
      }
    };
    void start();
    return () => {
      left = true;
      lock?.release();
      closeAnswer();
      openInSession(null);
      usePlanPins.setState(NO_PINS);
      goTo('yard');
    };
  }, [id, takeovers]);

  useEffect(
    () =>
      useSiteSession.subscribe(({ site }) => {
        if (site?.id === id) void holdAgainst(site);
      }),
    [id],
  );

  if (trouble === 'site-missing' || trouble === 'storage-silent' || trouble === 'open-elsewhere') {
    return (
      <main className={styles.trouble}>
        <h1>{words.crew.label('crew-view')}</h1>
        <p>{words.crew.label(trouble)}</p>
        {trouble === 'open-elsewhere' ? (
          <Action look="primary" onPress={() => setTakeovers((n) => n + 1)}>
            {words.crew.label('go-on-here')}
          </Action>
        ) : null}
        <Action onPress={() => go('/')}>{words.crew.label('all-sites')}</Action>
      </main>
    );
  }
  if (trouble !== null) return <OpenProblem said={words.fileProblemText(trouble)} onClose={() => go('/')} />;
  // what the controls say by themselves is in that language too, with numbers as in the United States
  return isOpen && hasAnswer ? (
    <I18nProvider locale={`${spoken.language}-US`}>
      <CrewView language={spoken.language} />
    </I18nProvider>
  ) : null;
}

/** The site as it was last left, also when its last state has not reached the device yet. */
async function siteToRead(id: string): Promise<Site | OpenFailure | 'site-missing'> {
  const unsaved = await unsavedStateOf(id);
  if (unsaved !== null) return unsaved;
  const found = await readSite(id);
  if (found === null) return 'site-missing';
  if (!found.opened.ok) return found.opened.failure;
  openedFromDevice(found.opened.site, found);
  return found.opened.site;
}
