/** A system of the register as the npm package `epsg-index` holds it. */
export type Registered = Readonly<{
  code: string;
  name: string;
  proj4: string | null;
  bbox: readonly number[] | null;
}>;

/** Names in NAD 83 of the codes of metric zones: 26929–26998 and 32100–32161, with the two that came later for Kentucky. */
const METRIC_CODES: readonly (readonly [number, number])[] = [
  [2205, 2205],
  [3088, 3088],
  [26929, 26998],
  [32100, 32158],
  [32161, 32161],
];

/** Withdrawn for 2205: it had a false easting of its own. */
const WITHDRAWN = 26979;

const NAME = /^NAD83(?<year>\(2011\))? \/ (?<zone>.+?)(?: \((?<unit>ftUS|ft)\))?$/;

/** Names of one zone that differ between the two. */
const SAME_NAME: Readonly<Record<string, string>> = {
  'Puerto Rico & Virgin Is.': 'Puerto Rico and Virgin Is.',
};

const byName = new Intl.Collator('en', { numeric: true });

type System = { unit: string; x0: string; y0: string; code83: string; code2011: string };
type Zone = { name: string; box: readonly number[]; shape: string; systems: System[] };

/** The feet come first: a state that has one works in it. */
const UNITS: readonly string[] = ['us-ft', 'ft', 'm'];

function parameters(text: string): ReadonlyMap<string, string> {
  return new Map(
    text
      .split(' ')
      .map((part) => part.replace(/^\+/, '').split('='))
      .map(([key = '', value = '']) => [key, value]),
  );
}

/** The projection without its false origin, unit and datum: the same for all systems of a zone. */
function shapeOf(all: ReadonlyMap<string, string>): string {
  const apart = new Set(['x_0', 'y_0', 'units', 'ellps', 'towgs84', 'no_defs', 'type', 'datum']);
  return [...all]
    .filter(([key]) => !apart.has(key))
    .map(([key, value]) => (value === '' ? key : `${key}=${value}`))
    .join(' ');
}

function zoneNameOf(system: Registered): Readonly<{ zone: string; year: string }> | null {
  const found = NAME.exec(system.name)?.groups;
  const zone = found?.zone;
  return zone === undefined ? null : { zone: SAME_NAME[zone] ?? zone, year: found?.year ?? '' };
}

/**
 * The zones of the State Plane Coordinate System of 1983, one a line, sorted by name: name|west,south,east,north|projection|systems, each
 * unit,false easting,false northing (metres),code in NAD 83,code in NAD 83(2011).
 */
export function statePlaneRows(register: readonly Registered[]): string {
  const zones = new Map<string, Zone>();
  for (const system of register) {
    const code = Number(system.code);
    if (code === WITHDRAWN || !METRIC_CODES.some(([from, to]) => code >= from && code <= to)) continue;
    const name = zoneNameOf(system);
    const [north = 0, west = 0, south = 0, east = 0] = system.bbox ?? [];
    if (name === null || name.year !== '' || system.proj4 === null) continue;
    const shape = shapeOf(parameters(system.proj4));
    zones.set(name.zone, { name: name.zone, box: [west, south, east, north], shape, systems: [] });
  }
  for (const system of register) {
    const name = zoneNameOf(system);
    const zone = name === null ? undefined : zones.get(name.zone);
    if (zone === undefined || name === null || system.proj4 === null || Number(system.code) === WITHDRAWN)
      continue;
    addSystem(zone, system, parameters(system.proj4), name.year === '' ? 'code83' : 'code2011');
  }
  return [...zones.values()]
    .sort((a, b) => byName.compare(a.name, b.name))
    .map(({ name, box, shape, systems }) =>
      [
        name,
        box.join(','),
        shape,
        systems
          .sort((a, b) => UNITS.indexOf(a.unit) - UNITS.indexOf(b.unit))
          .map(({ unit, x0, y0, code83, code2011 }) => [unit, x0, y0, code83, code2011].join(','))
          .join(';'),
      ].join('|'),
    )
    .join('\n');
}

function addSystem(
  zone: Zone,
  system: Registered,
  all: ReadonlyMap<string, string>,
  as: 'code83' | 'code2011',
) {
  const unit = all.get('units') ?? 'm';
  if (!UNITS.includes(unit) || shapeOf(all) !== zone.shape || all.get('ellps') !== 'GRS80')
    throw new Error(`${system.code} ${system.name} is not as its zone: ${system.proj4}`);
  const [x0, y0] = [all.get('x_0') ?? '0', all.get('y_0') ?? '0'];
  const known = zone.systems.find((s) => s.unit === unit && s.x0 === x0 && s.y0 === y0);
  if (known === undefined) {
    zone.systems.push({ unit, x0, y0, code83: '', code2011: '', [as]: system.code });
  } else if (known[as] === '') known[as] = system.code;
  else throw new Error(`${system.code} and ${known[as]} are one system`);
}
