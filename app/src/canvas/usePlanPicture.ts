import { joinDrawings, type MeasureText } from '@footmark/drawing';
import { useDeferredValue, useMemo } from 'react';
import { useInMotion } from '../dig/inMotion';
import { useFit } from '../fit/fitSession';
import { usePictureChanges } from '../pictures/paintPictures';
import { useDerived, useSite } from '../session/siteSession';
import { useLagging } from '../session/useLagging';
import { useWorkbench } from '../session/workbench';
import type { PlanPicture } from './paintPlan';
import { mmPerMetre } from './paintSetting';
import { drawingOf, inTheWayOf, labelsAt } from './planScene';
import { usePlanView } from './planView';

/** What the plan shows at rest. What stands in the way takes as long as the rest of the drawing, labels longer: both come once an edit has been painted. */
export function usePlanPicture(measure: MeasureText): PlanPicture {
  const site = useSite();
  const derived = useDerived();
  const { step, selected, hiddenLayers } = useWorkbench();
  const moves = useInMotion((m) => m.byMoved !== null);
  const { fit } = useFit();
  const scale = usePlanView(({ camera }) => (camera === null ? 1 : mmPerMetre(camera)));
  const [arrived, pictureInHand] = usePictureChanges();

  const things = useMemo(
    () => drawingOf(site, derived, selected, fit, hiddenLayers),
    [site, derived, selected, fit, hiddenLayers],
  );
  const inHand = useMemo(
    () => ({ step, selected, moves, hiddenLayers }),
    [step, selected, moves, hiddenLayers],
  );
  const known = useMemo(() => ({ site, derived, fit, things }), [site, derived, fit, things]);
  const lagging = useLagging(known, inHand);
  const inTheWay = useMemo(
    () => inTheWayOf(lagging.site, lagging.derived, lagging.fit, inHand, inHand.hiddenLayers),
    [lagging, inHand],
  );
  const drawing = useMemo(() => joinDrawings(things, inTheWay), [things, inTheWay]);

  // nor do labels of a large yard, which take longer than a frame to find their places, hold up another scale or another thing in hand
  const labelled = useMemo(() => joinDrawings(lagging.things, inTheWay), [lagging, inTheWay]);
  const settled = useDeferredValue(labelled);
  const settledScale = useDeferredValue(scale);
  const labels = useMemo(() => labelsAt(settled, settledScale, measure), [settled, settledScale, measure]);
  return useMemo(
    () => ({ site, derived, drawing, labels, pictures: [arrived, pictureInHand] }),
    [site, derived, drawing, labels, arrived, pictureInHand],
  );
}
