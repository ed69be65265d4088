import { fail, ok } from '@footmark/geometry';
import { type GridUnit, gridUnitOf } from '@footmark/grid';
import { collector } from '../collector';
import type { IncomingSteps } from '../incoming';
import { MOST_CHARACTERS, MOST_POINTS, MOST_THINGS, STEP } from '../incomingLimits';
import { type DxfBlock, type DxfEntity, numberIn, textIn } from './dxfEntity';
import { type DxfGroup, type DxfGroups, dxfGroups } from './dxfGroups';
import { AS_IT_STANDS } from './dxfPlacement';
import { addEntity } from './dxfShapes';

/** $INSUNITS in metres, from memory; 0 and what is not here say nothing. */
const METRES_OF_INSUNITS: Readonly<Record<number, number>> = {
  1: 0.0254,
  2: 0.3048,
  4: 0.001,
  5: 0.01,
  6: 1,
  7: 1000,
  10: 0.9144,
  14: 0.1,
  21: 1200 / 3937,
};

/** What a DXF file that is not text begins with. */
export const BINARY_MARK = 'AutoCAD Binary DXF';

/** Groups of the blocks together: what they hold is kept until the end. */
const MOST_BLOCK_GROUPS = 20 * MOST_POINTS;

/**
 * Reads the lines, outlines and points of a DXF file of any release in text: LINE, POLYLINE, LWPOLYLINE, CIRCLE, ARC, POINT, and the same in blocks. Where
 * it lies is never in the file; its unit only where $INSUNITS says so.
 */
export function* readDxf(text: string): IncomingSteps {
  if (text.length > MOST_CHARACTERS)
    return fail('too-large', { characters: text.length, most: MOST_CHARACTERS });
  if (text.startsWith(BINARY_MARK)) return fail('binary-dxf');
  const groups = dxfGroups(text.replace(/^\ufeff/, ''));
  const found = collector();
  const blocks = new Map<string, DxfBlock>();
  const shapes = { blocks, found, left: 3 * MOST_THINGS };
  let unit: GridUnit | null = null;
  /** The section that is open; null between two. */
  let section: string | null = null;
  let kept = 0;
  let block: { name: string; x: number; y: number; entities: DxfEntity[] } | null = null;
  let group = groups.next();
  if (group !== null && (group.code !== 0 || group.value.trim() !== 'SECTION'))
    return fail('not-dxf', { line: 1 });
  for (let n = 0; group !== null; n += 1) {
    if (n % STEP === 0) yield groups.share;
    const { line } = groups;
    // things would be lost where one section or block lies in another, or something between them
    const broken = () => fail('not-dxf', { line });
    if (group.code === 0 && group.value.trim() === 'EOF') return section === null ? finished() : broken();
    if (group.code !== 0) {
      group = groups.next();
      continue;
    }
    const read = readEntity(group, groups);
    group = read.next;
    const { entity } = read;
    switch (entity.type) {
      case 'SECTION':
        if (section !== null) return broken();
        section = textIn(entity, 2);
        if (section === '') return broken();
        // a header's variables are groups of its own
        if (section === 'HEADER') unit = insUnitsIn(entity);
        break;
      case 'BLOCK':
        if (section !== 'BLOCKS' || block !== null) return broken();
        block = {
          name: textIn(entity, 2),
          x: numberIn(entity, 10, 0),
          y: numberIn(entity, 20, 0),
          entities: [],
        };
        break;
      case 'ENDBLK':
        if (block === null) return broken();
        blocks.set(block.name, block);
        block = null;
        break;
      case 'ENDSEC':
        if (section === null || block !== null) return broken();
        section = null;
        break;
      default:
        if (block !== null) {
          kept += entity.groups.length + entity.vertices.length;
          if (kept > MOST_BLOCK_GROUPS) return fail('too-many-points', { most: MOST_POINTS });
          block.entities.push(entity);
        } else if (section === 'ENTITIES') {
          const failure = addEntity(entity, AS_IT_STANDS, 0, shapes);
          if (failure !== null) return failure;
        } else if (section === null || section === 'BLOCKS') return broken();
    }
  }
  return groups.failure ?? fail('cut-short');

  function finished() {
    if (found.things.length === 0) return fail('nothing-in-it');
    const { things, notes } = found;
    const says = { coordinates: null, unit, order: 'EN' } as const;
    return ok({ format: 'dxf', says, things, rows: [], notes } as const);
  }
}

/** Everything up to the next group 0, and of a POLYLINE its vertices up to their end. */
function readEntity(
  start: DxfGroup,
  groups: DxfGroups,
): { readonly entity: DxfEntity; readonly next: DxfGroup | null } {
  const own: DxfGroup[] = [];
  let next = groups.next();
  while (next !== null && next.code !== 0) {
    own.push(next);
    next = groups.next();
  }
  const type = start.value.trim();
  const vertices: DxfEntity[] = [];
  while (type === 'POLYLINE' && next !== null && next.value.trim() === 'VERTEX') {
    const vertex: { entity: DxfEntity; next: DxfGroup | null } = readEntity(next, groups);
    vertices.push(vertex.entity);
    next = vertex.next;
  }
  if (type === 'POLYLINE' && next !== null && next.value.trim() === 'SEQEND')
    next = readEntity(next, groups).next;
  return { entity: { type, groups: own, vertices }, next };
}

/** The unit in a header, whose variables are named by groups 9. */
function insUnitsIn({ groups }: DxfEntity): GridUnit | null {
  const at = groups.findIndex((g) => g.code === 9 && g.value.trim() === '$INSUNITS');
  const metres = METRES_OF_INSUNITS[Number(groups[at + 1]?.value)];
  return at < 0 || metres === undefined ? null : gridUnitOf(metres);
}
