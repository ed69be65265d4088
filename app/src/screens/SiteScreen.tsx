import type { OpenFailure, Site } from '@footmark/site';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { PlanCanvas } from '../canvas/PlanCanvas';
import { usePlanView } from '../canvas/planView';
import { Action } from '../controls/Action';
import { OthersBar } from '../others/OthersBar';
import { usePictureArrivals } from '../pictures/usePictureArrivals';
import { ProfileStrip } from '../profile/ProfileStrip';
import { startProfile } from '../profile/profileView';
import { openedFromDevice, unsavedStateOf } from '../session/autosave';
import { lockSite, type SiteLock } from '../session/siteLock';
import { derivedFrom, openInSession, useSiteSession } from '../session/siteSession';
import { goTo } from '../session/workbench';
import { readSite } from '../storage/siteStore';
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

/** Why a site is not shown. */
type Trouble = OpenFailure | 'missing' | 'storage' | 'elsewhere';

const SAID = {
  missing: {
    title: 'This site is not on this device',
    text: 'It may have been deleted here, or its address comes from another device.',
  },
  storage: {
    title: 'This browser’s storage does not answer',
    text: 'It is blocked or full. Allow this page to keep data, free some space, then load the page again.',
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
        const loaded = await siteOnDevice(id);
        if (left) return;
        if (typeof loaded === 'object' && 'format' in loaded) {
          setTrouble(null);
          usePlanView.setState({ camera: null });
          openInSession(loaded);
          startProfile(derivedFrom(loaded));
          goTo('yard');
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
  if (trouble === 'missing' || trouble === 'storage') {
    return (
      <Message {...SAID[trouble]}>
        <Action look="primary" onPress={() => go('/')}>
          All sites
        </Action>
      </Message>
    );
  }
  if (trouble !== null) return <OpenProblem failure={trouble} onClose={() => go('/')} />;
  return open ? <OpenSite /> : null;
}

/** The site as it was last left, also when its last state has not reached the device yet; else why it cannot be shown. */
async function siteOnDevice(id: string): Promise<Site | Exclude<Trouble, 'elsewhere'>> {
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
  return (
    <div className={styles.screen} data-wide-card={wide}>
      <TitleStrip />
      <div className={styles.work}>
        <UnsavedBar />
        <LookingBar />
        <OthersBar />
        <main ref={plan} className={styles.plan} aria-label="Plan">
          <PlanCanvas />
          <PlanFurniture />
          <Notice />
        </main>
        <ProfileStrip plan={plan} />
      </div>
      <CardPane />
    </div>
  );
}
