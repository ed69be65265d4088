import { type Place, valueAt } from '@footmark/merge';
import { type AsFound, formatClock, type Site, type Spot } from '@footmark/site';
import { lengthText } from '@footmark/words';
import { spotText } from '../measure/spotText';
import { words } from '../words';

/** One fact of a thing in both versions. */
export type ComparedFact = { readonly name: string; readonly here: string; readonly other: string };

const NOT_THERE = 'not there';
const NOTHING = '–';

/** What two states of a site have otherwise of a thing, fact by fact. */
export function compareVersions(place: Place, site: Site, other: Site): readonly ComparedFact[] {
  const [here, there] = [valueAt(site, place), valueAt(other, place)];
  if (here === undefined || there === undefined) {
    const said = (value: unknown) => (value === undefined ? NOT_THERE : 'there');
    return [{ name: 'It is', here: said(here), other: said(there) }];
  }
  const facts = (value: unknown, of: Site) => new Map(factsOf(place, value, of));
  const [a, b] = [facts(here, site), facts(there, other)];
  return [...new Set([...a.keys(), ...b.keys()])]
    .filter((name) => a.get(name) !== b.get(name))
    .map((name) => ({ name, here: a.get(name) ?? NOTHING, other: b.get(name) ?? NOTHING }));
}

type Fact = readonly [name: string, text: string];

function* factsOf(place: Place, value: unknown, site: Site): Generator<Fact> {
  if (typeof value !== 'object' || value === null) {
    yield [placeFact(place), textOf(placeFact(place), value, site)];
    return;
  }
  const found = place[0] === 'asFound' ? (value as AsFound) : null; // what lies in that list
  if (found !== null) yield ['Found', words.crew.foundText(found, site)];
  for (const [field, inner] of Object.entries(value)) {
    if (field === 'id' || field === 'readings' || (found !== null && FOUND_LINE.has(field))) continue;
    if (field === 'vertices' && Array.isArray(inner)) yield* pointsOf(inner, site);
    else if (field === 'fields')
      for (const [name, fact] of Object.entries(Object(inner)))
        yield [fieldName(value, name), textOf(name, fact, site)];
    else yield [labelOf(field), textOf(field, inner, site)];
  }
}

function* pointsOf(vertices: readonly unknown[], site: Site): Generator<Fact> {
  for (const vertex of vertices) {
    const { id, spot, ...more } = vertex as { id: string; spot: Spot }; // the points of a thing
    yield [`Point ${id.toUpperCase()}`, spotText(spot, site)];
    for (const [name, fact] of Object.entries(more))
      yield [`Point ${id.toUpperCase()}, ${labelOf(name)}`, textOf(name, fact, site)];
  }
}

/** What one line tells of a crew's find. */
const FOUND_LINE = new Set(['state', 'where', 'depth', 'seen', 'material', 'diameter']);

/** Facts that are lengths in metres. */
const LENGTHS = new Set([
  'counter',
  'to',
  'newZero',
  'resolution',
  'bendRadius',
  'drop',
  'bottomWidth',
  'depth',
  'from',
  'length',
  'entryReach',
  'diameter',
  'trunkDiameter',
  'spread',
  'height',
]);

function textOf(name: string, value: unknown, site: Site): string {
  if (value === undefined || value === null || value === '') return NOTHING;
  if (typeof value === 'number') return LENGTHS.has(name) ? lengthText(value, site.units) : String(value);
  if (typeof value === 'boolean') return words.yesNo(value);
  if (typeof value === 'string') return knownWord(value);
  if (name === 'clock' && typeof value === 'object' && 'from' in value)
    return formatClock({
      from: Number(value.from),
      to: Number('to' in value ? value.to : value.from),
    } as Parameters<typeof formatClock>[0]); // the site's own clock
  if (Array.isArray(value))
    return value.length === 0 ? NOTHING : `${value.length} of them, such as ${textOf(name, value[0], site)}`;
  return Object.entries(value)
    .map(([inner, fact]) => `${labelOf(inner).toLowerCase()} ${textOf(inner, fact, site)}`)
    .join(', ');
}

/** A word of the site's tables as people read it; any other text as it is. */
function knownWord(text: string): string {
  return /^[a-z]+(-[a-z]+)+$/.test(text) ? text.replaceAll('-', ' ') : text;
}

function fieldName(feature: unknown, field: string): string {
  const kind =
    typeof feature === 'object' && feature !== null && 'kind' in feature ? feature.kind : undefined;
  try {
    return words.fieldName(kind as Parameters<typeof words.fieldName>[0], field); // a feature's kind, or it throws
  } catch {
    return labelOf(field);
  }
}

function placeFact(place: Place): string {
  return labelOf(place.at(-1) ?? '');
}

/** `bendRadius` as `Bend radius`. */
function labelOf(field: string): string {
  const apart = field.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return apart.charAt(0).toUpperCase() + apart.slice(1);
}
