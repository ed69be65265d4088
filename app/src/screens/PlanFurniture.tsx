import { FOOT_M } from '@footmark/site';
import { Maximize, Minus, Plus } from 'lucide-react';
import { drawingOf } from '../canvas/planScene';
import { fitView, usePlanView, zoomView } from '../canvas/planView';
import { Action } from '../controls/Action';
import { currentSite, derivedFrom, useSite } from '../session/siteSession';
import styles from './PlanFurniture.module.css';

const BAR_STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const BAR_MOST_PX = 150;

/** What lies on the plan but is not of it: scale bar, north arrow, and the buttons for the view. */
export function PlanFurniture() {
  const site = useSite();
  const camera = usePlanView((v) => v.camera);
  const inFeet = site.units.length !== 'm';
  const unit = inFeet ? FOOT_M : 1;
  const px = (camera?.pxPerMetre ?? 1) * unit;
  const step = BAR_STEPS.findLast((s) => s * px <= BAR_MOST_PX) ?? 1;
  return (
    <>
      <div className={styles.scale} aria-hidden>
        <svg className={styles.north} viewBox="0 0 40 56">
          <title>North</title>
          <path d="M20 4 28 34 20 28 12 34Z" fill="currentColor" />
          <text x="20" y="52" textAnchor="middle">
            N
          </text>
        </svg>
        <div className={styles.bar} style={{ width: step * px }}>
          <span>0</span>
          <span>
            {step} {inFeet ? 'ft' : 'm'}
          </span>
        </div>
      </div>
      <div className={styles.buttons}>
        <Action look="icon" aria-label="Closer" onPress={() => zoomView(1.5)}>
          <Plus size={22} aria-hidden />
        </Action>
        <Action look="icon" aria-label="Further" onPress={() => zoomView(1 / 1.5)}>
          <Minus size={22} aria-hidden />
        </Action>
        <Action look="icon" aria-label="Show the whole yard" onPress={showAll}>
          <Maximize size={20} aria-hidden />
        </Action>
      </div>
    </>
  );
}

/** Fits the whole drawing into the view. */
export function showAll(): void {
  const site = currentSite();
  fitView(drawingOf(site, derivedFrom(site), null).bounds);
}
