import { changedLabels, changedPrimitives, type Drawing, type PlacedLabel } from '@footmark/drawing';
import type { Derived, Site } from '@footmark/site';
import { paintPictures } from '../pictures/paintPictures';
import { paintGrid } from './paintGrid';
import { labelBox, paintLabels } from './paintLabels';
import { paintPrimitives, primitiveBox } from './paintPrimitives';
import { type PaintSetting, type ScreenBox, wholePaper } from './paintSetting';

/** What the plan's canvas is to show. */
export type PlanPicture = {
  readonly site: Site;
  readonly derived: Derived;
  readonly drawing: Drawing;
  readonly labels: readonly PlacedLabel[];
  /** Of the pictures below the drawing: another value where they look otherwise though the site is the same. */
  readonly pictures: readonly unknown[];
};

/** What a canvas shows, and how it was painted. */
export type PaintedPlan = { readonly picture: PlanPicture; readonly setting: Omit<PaintSetting, 'region'> };

/** Where more of the paper than this changes, all is painted: it takes no longer. */
const MOST_IN_PART = 0.6;

/**
 * Paints the plan on a canvas that shows `last`; where it is seen as before, only the box of what has become another, anew from its
 * ground. `last` null: the canvas is bare. Gives what it shows now.
 */
export function paintPlan(
  picture: PlanPicture,
  setting: PaintedPlan['setting'],
  last: PaintedPlan | null,
): PaintedPlan {
  const whole = wholePaper(setting.size);
  const changed = last !== null && seenAlike(last, picture, setting) ? changedBox(last, picture) : whole;
  const region = changed === null ? null : onPixels(changed, whole, setting.density);
  if (region !== null) paintRegion(picture, { ...setting, region });
  return { picture, setting };
}

function paintRegion(picture: PlanPicture, setting: PaintSetting): void {
  const { context, region } = setting;
  const { minX, minY, maxX, maxY } = region;
  context.save();
  context.beginPath();
  context.rect(minX, minY, maxX - minX, maxY - minY);
  context.clip();
  paintGrid(picture.site.units.length !== 'm', setting);
  paintPictures(picture.site, picture.derived, setting);
  for (const { primitives } of picture.drawing.layers) paintPrimitives(primitives, setting);
  paintLabels(picture.labels, setting);
  context.restore();
}

/** Whether all that does not change by itself lies where it did and has the same colours. */
function seenAlike({ picture, setting }: PaintedPlan, now: PlanPicture, at: PaintedPlan['setting']): boolean {
  return (
    setting.context === at.context &&
    setting.camera === at.camera &&
    setting.palette === at.palette &&
    setting.density === at.density &&
    setting.size.width === at.size.width &&
    setting.size.height === at.size.height &&
    picture.site.units.length === now.site.units.length &&
    picture.pictures.every((part, i) => part === now.pictures[i]) &&
    picture.site.underlays === now.site.underlays &&
    now.site.underlays.every(({ id }) => sameLie(picture.derived, now.derived, id))
  );
}

/** Whether a picture below the drawing lies where it did. */
function sameLie(before: Derived, after: Derived, underlay: string): boolean {
  const [a, b] = [before.underlays.get(underlay)?.toPlan, after.underlays.get(underlay)?.toPlan];
  return a?.a === b?.a && a?.b === b?.b && a?.tx === b?.tx && a?.ty === b?.ty;
}

/** The box (pixels) of all that looks otherwise now; null where nothing does. */
function changedBox({ picture: before, setting }: PaintedPlan, after: PlanPicture): ScreenBox | null {
  const boxes = [
    ...changedPrimitives(before.drawing, after.drawing).map((p) => primitiveBox(p, setting)),
    ...changedLabels(before.labels, after.labels).map((l) => labelBox(l, setting)),
  ];
  return boxes.length === 0 ? null : boxes.reduce(around);
}

function around(a: ScreenBox, b: ScreenBox): ScreenBox {
  return {
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  };
}

/** What of a box lies on the paper, out to whole pixels of the device, so that no edge is blended; all of it where that is most. Null: none. */
function onPixels(box: ScreenBox, whole: ScreenBox, density: number): ScreenBox | null {
  const minX = Math.max(0, Math.floor(box.minX * density) / density);
  const minY = Math.max(0, Math.floor(box.minY * density) / density);
  const maxX = Math.min(whole.maxX, Math.ceil(box.maxX * density) / density);
  const maxY = Math.min(whole.maxY, Math.ceil(box.maxY * density) / density);
  if (minX >= maxX || minY >= maxY) return null;
  const share = ((maxX - minX) * (maxY - minY)) / (whole.maxX * whole.maxY);
  return share > MOST_IN_PART ? whole : { minX, minY, maxX, maxY };
}
