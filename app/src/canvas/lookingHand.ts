import type { Target } from '@footmark/site';
import { pannedBy, zoomedAt } from './camera';
import type { GestureHandlers } from './gestures';
import { hitTest, REACH_PX } from './hitTest';
import { labelUnder } from './labelUnder';
import type { PlanUnderHand } from './planHand';

/** A hand that moves the view and taps on marks, and changes nothing. */
export function lookingHand(onTap: (target: Target) => void): (plan: PlanUnderHand) => GestureHandlers {
  return (plan) => ({
    tap: (at, press) => {
      plan.rest();
      const [camera, size] = [plan.camera(), plan.size()];
      const target =
        hitTest(plan.drawing(), camera, size, at, REACH_PX[press.by]) ??
        labelUnder(plan.labels(), camera, size, at)?.target;
      if (target) onTap(target);
    },
    longPress: () => plan.rest(),
    dragStart: () => false,
    dragMove: () => {},
    dragEnd: () => {},
    dragCancel: () => {},
    pan: (dx, dy) => plan.look(pannedBy(plan.camera(), dx, dy)),
    zoom: (about, factor) => plan.look(zoomedAt(plan.camera(), plan.size(), about, factor)),
    rest: plan.rest,
    hover: () => {},
  });
}
