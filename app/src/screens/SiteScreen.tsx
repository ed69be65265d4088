import type { OpenFailure } from '@footmark/site';
import { useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { PlanCanvas } from '../canvas/PlanCanvas';
import { usePlanView } from '../canvas/planView';
import { Action } from '../controls/Action';
import { usePictureArrivals } from '../pictures/usePictureArrivals';
import { openInSession, useSiteSession } from '../session/siteSession';
import { goTo } from '../session/workbench';
import { loadSite } from '../storage/siteStore';
import { CardPane } from './CardPane';
import { Notice } from './Notice';
import { OpenProblem } from './OpenProblem';
import { PlanFurniture } from './PlanFurniture';
import styles from './SiteScreen.module.css';
import { TitleStrip } from './TitleStrip';
import { useShortcuts } from './useShortcuts';

/** One site: the title strip, the plan, and the card of the step in hand. */
export function SiteScreen({ id }: { readonly id: string }) {
  const [, go] = useLocation();
  const open = useSiteSession((s) => s.site?.id === id);
  const [failure, setFailure] = useState<OpenFailure | 'missing' | null>(null);

  useEffect(() => {
    let left = false;
    void loadSite(id).then((opened) => {
      if (left) return;
      if (opened === null) setFailure('missing');
      else if (!opened.ok) setFailure(opened.failure);
      else {
        usePlanView.setState({ camera: null });
        openInSession(opened.site);
        goTo('yard');
      }
    });
    return () => {
      left = true;
      openInSession(null);
    };
  }, [id]);

  if (failure === 'missing') {
    return (
      <main className={styles.missing}>
        <h1>This site is not on this device</h1>
        <p>It may have been deleted here, or its address comes from another device.</p>
        <Action look="primary" onPress={() => go('/')}>
          To the sites on this device
        </Action>
      </main>
    );
  }
  if (failure !== null) return <OpenProblem failure={failure} onClose={() => go('/')} />;
  return open ? <OpenSite /> : null;
}

function OpenSite() {
  useShortcuts();
  const plan = useRef<HTMLElement>(null);
  usePictureArrivals(plan);
  return (
    <div className={styles.screen}>
      <TitleStrip />
      <main ref={plan} className={styles.plan} aria-label="Plan">
        <PlanCanvas />
        <PlanFurniture />
        <Notice />
      </main>
      <CardPane />
    </div>
  );
}
