import type { Dice } from '../../random/dice';
import type { Mutator } from '../reader';
import { below, MOST_BYTES, upTo } from './bytes';
import { extremeNumbers, hostileTexts } from './hostile';
import { joinedWithin, onText } from './texts';

type Group = readonly [code: string, value: string];

/** A mutation of groups, two lines each. */
function onGroups(change: (groups: Group[], dice: Dice) => void): Mutator {
  return onText((text, dice) => {
    const lines = text.split(/\r?\n/);
    const groups: Group[] = [];
    for (let i = 0; i + 1 < lines.length; i += 2) groups.push([lines[i] ?? '', lines[i + 1] ?? '']);
    if (groups.length > 0) change(groups, dice);
    return `${joinedWithin(MOST_BYTES, groups, '\n', ([code, value]) => `${code}\n${value}`)}\n`;
  });
}

/** From a group 0 to the one after it: an entity, a mark of a section. */
function entityAt(groups: readonly Group[], dice: Dice): readonly [from: number, to: number] {
  const starts = groups.flatMap(([code], i) => (code.trim() === '0' ? [i] : []));
  if (starts.length === 0) return [0, groups.length];
  const k = below(dice, starts.length);
  return [starts[k] ?? 0, starts[k + 1] ?? groups.length];
}

const away = onGroups((groups, dice) => {
  const [from, to] = entityAt(groups, dice);
  groups.splice(from, to - from);
});

const again = onGroups((groups, dice) => {
  const [from, to] = entityAt(groups, dice);
  const one = groups.slice(from, to);
  const times = Math.min(upTo(dice, 20_000), Math.ceil(60_000 / Math.max(1, one.length)));
  groups.splice(to, 0, ...Array.from({ length: times }, () => one).flat());
});

const moved = onGroups((groups, dice) => {
  const [from, to] = entityAt(groups, dice);
  const one = groups.splice(from, dice.next() < 0.5 ? to - from : 0);
  const [at] = entityAt(groups.length > 0 ? groups : [['0', 'EOF']], dice);
  groups.splice(at, 0, ...one);
});

const TYPES =
  'SECTION ENDSEC EOF BLOCK ENDBLK INSERT LINE POINT CIRCLE ARC LWPOLYLINE POLYLINE VERTEX SEQEND TEXT SPLINE ATTRIB DIMENSION'.split(
    ' ',
  );

const otherType = onGroups((groups, dice) => {
  const [from] = entityAt(groups, dice);
  groups[from] = ['0', dice.pick(TYPES)];
});

const otherGroup = onGroups((groups, dice) => {
  const at = below(dice, groups.length);
  const [code = '', value = ''] = groups[at] ?? [];
  const codes = [
    code,
    '0',
    '2',
    '8',
    '9',
    '10',
    '20',
    '40',
    '41',
    '42',
    '50',
    '51',
    '67',
    '70',
    '71',
    '230',
    '999',
    '-1',
  ];
  const values = [
    value,
    ...extremeNumbers,
    ...extremeNumbers,
    ...hostileTexts,
    'HEADER',
    'BLOCKS',
    'ENTITIES',
    'b1',
  ];
  groups[at] = dice.next() < 0.4 ? [dice.pick(codes), value] : [code, dice.pick(values)];
});

/** An entity with very many groups that mean nothing. */
const swollen = onGroups((groups, dice) => {
  const [, to] = entityAt(groups, dice);
  const group: Group = dice.pick<Group>([
    ['1000', 'x'],
    ['10', '1'],
    ['42', '0.5'],
    ['999', 'x'],
  ]);
  groups.splice(to, 0, ...new Array<Group>(upTo(dice, 100_000)).fill(group));
});

/** Blocks that hold blocks, and one of them put down many times. */
const blocks = onGroups((groups, dice) => {
  const levels = 1 + below(dice, 5);
  const copies = upTo(dice, 40);
  const inserts = (name: string, times: number): Group[] =>
    Array.from({ length: times }, (): Group[] => [
      ['0', 'INSERT'],
      ['8', 'a'],
      ['2', name],
      ['10', '0'],
      ['20', '0'],
      ['41', dice.pick(['1', '1', ...extremeNumbers])],
    ]).flat();
  const made: Group[] = [
    ['0', 'SECTION'],
    ['2', 'BLOCKS'],
  ];
  for (let n = 0; n < levels; n += 1) {
    const groupsInside = upTo(dice, 2000);
    made.push(['0', 'BLOCK'], ['2', `b${n}`], ['10', '0'], ['20', '0'], ['0', 'POINT'], ['8', '0']);
    made.push(...new Array<Group>(groupsInside).fill(['1000', 'x']), ['10', '1'], ['20', '2']);
    if (n > 0) made.push(...inserts(`b${n - 1}`, copies));
    made.push(['0', 'ENDBLK']);
  }
  groups.unshift(...made, ['0', 'ENDSEC']);
  const entities = groups.findIndex(([code, value]) => code.trim() === '2' && value === 'ENTITIES');
  if (entities >= 0) groups.splice(entities + 1, 0, ...inserts(`b${levels - 1}`, 1 + below(dice, 3)));
});

export const dxfMutators: readonly Mutator[] = [
  away,
  again,
  moved,
  moved,
  otherType,
  otherType,
  otherGroup,
  otherGroup,
  otherGroup,
  swollen,
  blocks,
];
