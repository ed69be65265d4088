import { FOOT_M } from '@footmark/site';
import { BoxSelect, Layers, Maximize, Minus, Plus, Ruler, TrendingDown } from 'lucide-react';
import { usePlanView, zoomView } from '../canvas/planView';
import { showAll } from '../canvas/showAll';
import { Action } from '../controls/Action';
import { Toggle } from '../controls/Toggle';
import { NorthArrow } from '../earth/NorthArrow';
import { toggleProfile, useProfileView } from '../profile/profileView';
import { useOfSite } from '../session/siteSession';
import { take, toggleLeaf, useWorkbench } from '../session/workbench';
import { toggleMeasure } from '../tools/useTool';
import styles from './PlanFurniture.module.css';

const BAR_STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
const BAR_MOST_PX = 150;

/** What lies on the plan but is not of it: scale bar, north arrow, and the buttons for the view. */
export function PlanFurniture() {
  const inFeet = useOfSite((site) => site.units.length !== 'm');
  const camera = usePlanView((v) => v.camera);
  const unit = inFeet ? FOOT_M : 1;
  const px = (camera?.pxPerMetre ?? 1) * unit;
  const step = BAR_STEPS.findLast((s) => s * px <= BAR_MOST_PX) ?? 1;
  return (
    <>
      <PlanTools />
      <div className={styles.scale}>
        <NorthArrow />
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

/** Tools for the plan as a whole. */
function PlanTools() {
  const tool = useWorkbench((w) => w.tool);
  const gathering = useWorkbench((w) => w.gathering);
  const leaf = useWorkbench((w) => w.leaf);
  const profile = useProfileView((v) => v.isOpen);
  const gather = () => {
    if (tool !== null) take(null);
    useWorkbench.setState({ gathering: !gathering });
  };
  return (
    <div className={styles.tools}>
      <Toggle label="Measure" isOn={tool?.is === 'measure'} onPress={toggleMeasure}>
        <Ruler size={20} aria-hidden />
      </Toggle>
      <Toggle label="Choose several" isOn={gathering} onPress={gather}>
        <BoxSelect size={20} aria-hidden />
      </Toggle>
      <Toggle label="Layers" isOn={leaf === 'layers'} onPress={() => toggleLeaf('layers')}>
        <Layers size={20} aria-hidden />
      </Toggle>
      <Toggle label="Profile" isOn={profile} onPress={toggleProfile}>
        <TrendingDown size={20} aria-hidden />
      </Toggle>
    </div>
  );
}
