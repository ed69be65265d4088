import { dxf, dxfOf } from '../../exchange/in/reading';
import { dxfMutators } from '../mutate/dxf';
import { bytesOf } from '../reader';
import { ownFile } from '../soundFiles';
import { incomingReader } from './incoming';

const line = [0, 'LINE', 8, 'a', 10, 0, 20, 0, 11, 3, 21, 1];
const arc = [0, 'ARC', 8, 'a', 10, 0, 20, 0, 40, 5, 50, 10, 51, 50];
const circle = [0, 'CIRCLE', 8, 'a', 10, 0, 20, 0, 40, 2];
const light = [0, 'LWPOLYLINE', 8, 'b', 90, 3, 70, 1, 10, 0, 20, 0, 42, 1, 10, 4, 20, 0, 10, 4, 20, 4];
const vertex = (x: number, y: number) => [0, 'VERTEX', 8, 'a', 10, x, 20, y, 42, 0.5];
const old = [
  0,
  'POLYLINE',
  8,
  'a',
  66,
  1,
  70,
  1,
  ...vertex(0, 0),
  ...vertex(3, 0),
  ...vertex(3, 3),
  0,
  'SEQEND',
];
const text = [0, 'TEXT', 8, 'a', 10, 0, 20, 0, 40, 1, 1, 'x'];
const insert = [0, 'INSERT', 8, 'a', 2, 'b1', 10, 1, 20, 1, 41, 2, 42, 2, 50, 30];
const blocks = [
  0,
  'BLOCK',
  8,
  '0',
  2,
  'b1',
  10,
  0,
  20,
  0,
  0,
  'POINT',
  8,
  '0',
  10,
  1,
  20,
  1,
  ...circle,
  0,
  'ENDBLK',
];
const small = [
  dxfOf(line, { insUnits: 6 }),
  dxfOf([...arc, ...circle, ...text]),
  dxfOf([...light, ...old]),
  dxfOf([...insert, ...line], { insUnits: 2, blocks }),
];

export const reader = incomingReader({
  name: 'DXF',
  format: 'dxf',
  seeds: () => [...small.map(bytesOf), ownFile('dxf')],
  mutators: dxfMutators,
  count: thingsIn,
  numbers: () => null,
});

if (dxf(0, 'EOF') !== '0\nEOF\n') throw new Error('groups are two lines');

type Entity = { readonly type: string; readonly values: ReadonlyMap<string, string>; vertices: number };

/**
 * Entities of the section ENTITIES up to the end mark, what their inserts put down among them; POLYLINEs with their vertices are one. What stands
 * outside of all sections, or in BLOCKS outside of a block, is there as well, so that a reader that passes over it is found.
 */
function thingsIn(given: string): number | null {
  const blocksByName = new Map<string, readonly Entity[]>();
  let [section, count] = ['', 0];
  let block: { readonly name: string; readonly inside: Entity[] } | null = null;
  for (const entity of entitiesIn(given.replace(/^\ufeff/, ''))) {
    const { type } = entity;
    if (type === 'EOF') return count;
    if (type === 'SECTION') section = nameIn(entity);
    else if (type === 'ENDSEC') section = '';
    else if (type === 'BLOCK') block = { name: nameIn(entity), inside: [] };
    else if (type === 'ENDBLK') {
      if (block !== null) blocksByName.set(block.name, block.inside);
      block = null;
    } else if (block !== null) block.inside.push(entity);
    else if (section === 'ENTITIES') count += drawnBy(entity, blocksByName);
    else if (section === '' || section === 'BLOCKS') count += 1;
  }
  return null;
}

function drawnBy(entity: Entity, blocksByName: ReadonlyMap<string, readonly Entity[]>): number {
  const { type, values } = entity;
  if (type === 'SEQEND') return 0;
  if (type !== 'INSERT' || numberOf(values.get('67') ?? '0') === 1) return 1;
  const inside = blocksByName.get(nameIn(entity));
  const copies = numberOf(values.get('70') ?? '1') * numberOf(values.get('71') ?? '1');
  if (inside === undefined || copies !== 1) return 1;
  return inside.reduce((sum, inner) => sum + drawnBy(inner, blocksByName), 0);
}

function numberOf(value: string): number {
  return value.trim() === '' ? Number.NaN : Number(value);
}

function nameIn({ values }: Entity): string {
  return (values.get('2') ?? '')
    .trim()
    .replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16)));
}

function entitiesIn(given: string): readonly Entity[] {
  const lines = given.split('\n').map((l) => (l.endsWith('\r') ? l.slice(0, -1) : l));
  const entities: { type: string; values: Map<string, string>; vertices: number }[] = [];
  let open: 'none' | 'vertices' = 'none';
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const [code, value] = [(lines[i] ?? '').trim(), lines[i + 1] ?? ''];
    if (code === '999') continue;
    if (Number(code) !== 0) {
      const last = entities.at(-1);
      const key = String(Number(code));
      if (last !== undefined && !(open === 'vertices' && last.vertices > 0) && !last.values.has(key))
        last.values.set(key, value);
      continue;
    }
    const type = value.trim();
    const last = entities.at(-1);
    if (open === 'vertices' && last !== undefined && (type === 'VERTEX' || type === 'SEQEND')) {
      last.vertices += 1;
      if (type === 'SEQEND') open = 'none';
      // what follows a SEQEND up to the next entity is its own
      if (type === 'SEQEND') entities.push({ type: 'nothing', values: new Map(), vertices: 0 });
      continue;
    }
    open = type === 'POLYLINE' ? 'vertices' : 'none';
    entities.push({ type, values: new Map(), vertices: 0 });
  }
  return entities.filter(({ type }) => type !== 'nothing');
}
