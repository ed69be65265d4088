import type { OpenFailure, Site } from '@footmark/site';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { PlanCanvas } from '../canvas/PlanCanvas';
import { usePlanView } from '../canvas/planView';
import { Action } from '../controls/Action';
import { answerWaits } from '../crew/office/cameAnswer';
import { OthersBar } from '../others/OthersBar';
import { bringSoon } from '../parts/bringSoon';
import { part, placed } from '../parts/part';
import { Shown } from '../parts/Shown';
import { usePictureArrivals } from '../pictures/usePictureArrivals';
import { startProfile, useProfileView } from '../profile/profileView';
import { openedFromDevice, unsavedStateOf } from '../session/autosave';
import { readyToDerive } from '../session/readyToDerive';
import { lockSite, type SiteLock } from '../session/siteLock';
import { derivedFrom, openInSession, useSiteSession } from '../session/siteSession';
import { goTo } from '../session/workbench';
import { readSite } from '../storage/siteStore';
import { words } from '../words';
import { CardPane } from './CardPane';
import { useWideCard } from './cardInHand';
import { LookingBar } from './LookingBar';
import { Notice } from './Notice';
import { OpenProblem } from './OpenProblem';
import { PlanFurniture } from './PlanFurniture';
import styles from './SiteScreen.module.css';
import { TitleStrip } from './TitleStrip';
import { UnsavedBar } from './UnsavedBar';
import { useShortcuts } from './useShortcuts';

const profileStrip = part(async () => (await import('../profile/ProfileStrip')).ProfileStrip);

/** Why a site is not shown. */
type Trouble = OpenFailure | 'missing' | 'storage' | 'elsewhere' | 'parts';

const SAID = {
  missing: {
    title: 'This site is not on this device',
    text: 'It may have been deleted here, or its address comes from another device.',
  },
  storage: {
    title: 'This browser’s storage does not answer',
    text: 'It is blocked or full. Allow this page to keep data, free some space, then load the page again.',
  },
  parts: {
    title: 'A part of the program is missing',
    text: 'A site with latitudes and longitudes needs one that did not come. Look at the network, then load the page again.',
  },
} as const;

/** One site: the title strip, the plan, and the card of the step in hand. */
export function SiteScreen({ id }: { readonly id: string }) {
  const [, go] = useLocation();
  const open = useSiteSession((s) => s.site?.id === id);
  const [trouble, setTrouble] = useState<Trouble | null>(null);
  // how often the site was taken over from another tab
  const [takeovers, setTakeovers] = useState(0);

  useEffect(() => {
    let left = false;
    let lock: SiteLock | null = null;
    const start = async () => {
      lock = await lockSite(id, takeovers > 0, () => {
        openInSession(null);
        setTrouble('elsewhere');
      });
      if (left) lock?.release();
      else if (lock === null) setTrouble('elsewhere');
      else {
        const loaded = await withItsParts(await siteOnDevice(id));
        if (left) return;
        if (isSite(loaded)) {
          setTrouble(null);
          usePlanView.setState({ camera: null });
          startProfile(derivedFrom(loaded));
          // the plan has its size at once, not a moment after it is shown
          if (useProfileView.getState().isOpen) await profileStrip.bring().catch(() => undefined);
          if (left) return;
          openInSession(loaded);
          goTo(answerWaits(id) ? 'hand-off' : 'yard');
        } else setTrouble(loaded);
      }
    };
    void start();
    return () => {
      left = true;
      lock?.release();
      openInSession(null);
    };
  }, [id, takeovers]);

  if (trouble === 'elsewhere') {
    return (
      <Message
        title="This site is open in another tab"
        text="Only one tab changes a site at a time, so that nothing is lost."
      >
        <Action look="primary" onPress={() => setTakeovers((n) => n + 1)}>
          Go on in this tab
        </Action>
        <Action onPress={() => go('/')}>All sites</Action>
      </Message>
    );
  }
  if (trouble === 'missing' || trouble === 'storage' || trouble === 'parts') {
    return (
      <Message {...SAID[trouble]}>
        <Action look="primary" onPress={() => go('/')}>
          All sites
        </Action>
      </Message>
    );
  }
  if (trouble !== null) return <OpenProblem said={words.fileProblemText(trouble)} onClose={() => go('/')} />;
  return open ? <OpenSite /> : null;
}

/** The site as it was last left, also when its last state has not reached the device yet; else why it cannot be shown. */
async function siteOnDevice(id: string): Promise<Site | OpenFailure | 'missing' | 'storage'> {
  try {
    const unsaved = await unsavedStateOf(id);
    if (unsaved !== null) return unsaved;
    const found = await readSite(id);
    if (found === null) return 'missing';
    if (!found.opened.ok) return found.opened.failure;
    openedFromDevice(found.opened.site, found);
    return found.opened.site;
  } catch {
    return 'storage';
  }
}

/** As it was found, once everything is here that it needs to be shown. */
async function withItsParts<Found>(found: Site | Found): Promise<Site | Found | 'parts'> {
  if (!isSite(found)) return found;
  try {
    await readyToDerive(found);
    return found;
  } catch {
    return 'parts';
  }
}

function isSite<Found>(found: Site | Found): found is Site {
  return typeof found === 'object' && found !== null && 'format' in found;
}

type MessageProps = { readonly title: string; readonly text: string; readonly children: ReactNode };

function Message({ title, text, children }: MessageProps) {
  return (
    <main className={styles.missing}>
      <h1>{title}</h1>
      <p>{text}</p>
      <div className={styles.messageActions}>{children}</div>
    </main>
  );
}

function OpenSite() {
  useShortcuts();
  const plan = useRef<HTMLElement>(null);
  usePictureArrivals(plan);
  const wide = useWideCard();
  const hasProfile = useProfileView((v) => v.isOpen);
  useEffect(() => bringSoon([profileStrip]), []);
  return (
    <div className={styles.screen} data-wide-card={wide}>
      <TitleStrip />
      <div className={styles.bars}>
        <UnsavedBar />
        <LookingBar />
        <OthersBar />
      </div>
      <div className={styles.work}>
        <main ref={plan} className={styles.plan} aria-label="Plan">
          <PlanCanvas />
          <PlanFurniture />
          <Notice />
        </main>
        {hasProfile ? <Shown of={placed(profileStrip, { plan })} /> : null}
      </div>
      <CardPane />
    </div>
  );
}
