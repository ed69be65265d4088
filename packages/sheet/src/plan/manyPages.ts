import type { Bounds, Drawing, LayerName } from '@footmark/drawing';
import { fail, ok, type Result } from '@footmark/geometry';
import { GAP } from '../page/measures';
import type { Box, PaperPoint } from '../page/page';
import type { SheetSetting } from '../setting';
import { comesInto } from './comesInto';
import type { Detail } from './details';
import { keyPlan } from './keyPlan';
import type { LaidPlan, PlanPages } from './laidPlan';
import { MATCH_MM, matchLines } from './matchLines';
import { titled } from './planPanel';
import type { PlanView } from './planView';
import { windowEdges, windowItems } from './planWindows';
import { mmPerMetreOf } from './scales';
import { MOST_TILES, neighboursOf, tilesOver } from './tiles';

/** A key plan below a plan is higher than what stands beside it by so much at most. */
const KEY_ROW_MM = 16;

/** A plan that is larger than a page, on as many as it takes. */
export function manyPages(
  { whole, frame, panel, body }: LaidPlan,
  setting: SheetSetting,
): Result<PlanPages, 'too-many-sheets'> {
  const { room, beside } = panel;
  const k = mmPerMetreOf(frame.denominator);
  const box: Box = {
    x: body.x + MATCH_MM,
    y: body.y + MATCH_MM,
    width: room.width - 2 * MATCH_MM,
    height: room.height - 2 * MATCH_MM - (beside ? 0 : KEY_ROW_MM),
  };
  const size = { width: box.width / k, height: box.height / k };
  const telling = whole.layers
    .filter((layer) => TELLING.has(layer.name))
    .flatMap((layer) => layer.primitives);
  const tiles = tilesOver(frame.bounds, size, (piece) => !telling.some((p) => comesInto(p, piece)));
  if (tiles === null || tiles.length > MOST_TILES) return fail('too-many-sheets');
  const details: Detail[] = [];
  let legendFollows = false;
  const pages = tiles.map((tile) => {
    const { corner } = tile;
    const view: PlanView = { box, corner, mmPerMetre: k };
    const shown = inView(whole, {
      minX: corner.x,
      minY: corner.y,
      maxX: corner.x + size.width,
      maxY: corner.y + size.height,
    });
    const window = windowItems(whole, view, { body, before: details.length, isOnly: false }, setting);
    details.push(...window.details);
    const key = (width: number) =>
      titled(
        setting.words.sheet.heading('key-plan'),
        keyPlan(whole, tiles, size, tile, width, setting),
        width,
        setting,
      );
    const explained = panel.make({ drawing: shown, frame, key }, setting);
    legendFollows ||= !explained.hasLegend;
    const neighbours = neighboursOf(tile, tiles);
    const at: PaperPoint = beside
      ? { x: body.x + room.width + GAP.large, y: body.y }
      : { x: body.x, y: box.y + box.height + MATCH_MM + GAP.medium };
    return [
      ...window.items,
      ...windowEdges(box, neighbours, setting),
      ...matchLines(box, neighbours, setting),
      ...explained.block.paint(at),
    ];
  });
  return ok({
    pages,
    rest: null,
    denominator: frame.denominator,
    drawing: whole,
    details,
    legendFollows,
  });
}

/** What of a drawing comes near a piece of plan. */
function inView(drawing: Drawing, piece: Bounds): Drawing {
  return {
    ...drawing,
    layers: drawing.layers.map((layer) => ({
      ...layer,
      primitives: layer.primitives.filter((p) => comesInto(p, piece)),
    })),
  };
}

/** A piece of plan with none of these on it is left out. */
const TELLING: ReadonlySet<LayerName> = new Set([
  'land',
  'buildings',
  'structures',
  'services',
  'trees',
  'excavation',
  'pipe',
  'drain',
  'ties',
  'marks',
]);
