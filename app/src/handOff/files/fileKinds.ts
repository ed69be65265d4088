import type { Drawing } from '@footmark/drawing';
import {
  marksCsv,
  marksGpx,
  setOutCsv,
  siteDxf,
  siteFileName,
  siteGeoJson,
  siteKml,
  sitePoints,
} from '@footmark/exchange';
import type { Grid } from '@footmark/grid';
import { type Derived, proposedPaths, type RunsFit, type Site, writeSite } from '@footmark/site';
import { words } from '../../words';
import type { NewFile } from '../saveFile';
import { planPicture } from './planPicture';
import { siteBundle } from './siteBundle';

/** What a file is made of; `grid`: the map's coordinates that were chosen, null for the site's own. */
export type FileSetting = {
  readonly site: Site;
  readonly derived: Derived;
  readonly fit: RunsFit | null;
  readonly drawing: Drawing;
  readonly grid: Grid | null;
};

/** Why a file is not made: nothing to put into it, or the site lies nowhere on the earth yet. */
type Missing = 'marks' | 'planned' | 'earth' | 'plan';

type FileKind = {
  readonly name: string;
  readonly use: string;
  /** What it needs and the site does not have yet; null: it can be made. */
  readonly missing: (setting: Pick<FileSetting, 'site' | 'derived'>) => Missing | null;
  /** Null where it could not be made after all: a place of the site has none in the chosen coordinates. */
  readonly make: (setting: FileSetting) => NewFile | null | Promise<NewFile | null>;
};

/** Symbols and lettering of the CAD file are as large as on paper at 1 in = 20 ft, or 1 : 200. */
const CAD_SCALE = { feet: 240, metres: 200 };

const always = () => null;
const onEarth = ({ derived }: Pick<FileSetting, 'derived'>) =>
  derived.frame.toEarth === null ? 'earth' : null;
const anyMarks = ({ derived }: Pick<FileSetting, 'derived'>) => (derived.marks.length === 0 ? 'marks' : null);

function file(site: Site, extension: string, type: string, made: { ok: boolean; value?: string } | string) {
  const text = typeof made === 'string' ? made : made.ok ? made.value : undefined;
  return text === undefined ? null : { name: siteFileName(site, extension), data: text, type };
}

function coordinatesOf({ grid }: FileSetting) {
  return grid === null ? ({ is: 'site' } as const) : ({ is: 'grid', grid } as const);
}

/** All files that a site is handed out as; another one is an entry here. */
export const fileKinds: Readonly<Record<string, FileKind>> = {
  site: {
    name: 'The site file',
    use: 'Everything but photos. Opens in Footmark on any device.',
    missing: always,
    make: ({ site }) => file(site, 'json', 'application/json', writeSite(site)),
  },
  bundle: {
    name: 'The site with its photos (zip)',
    use: 'The site file and every photo and picture of it. Opens in Footmark as well.',
    missing: always,
    make: async ({ site }) => ({
      name: siteFileName(site, 'zip'),
      data: await siteBundle(site, Date.now()),
      type: 'application/zip',
    }),
  },
  marks: {
    name: 'Marks as a table (CSV)',
    use: 'For a spreadsheet: readings, places, tapes, holes.',
    missing: anyMarks,
    make: ({ site, derived, fit, grid }) =>
      file(site, 'csv', 'text/csv', marksCsv(site, derived, fit, words, grid)),
  },
  'set-out': {
    name: 'Points that set new pipes out (CSV)',
    use: 'For a spreadsheet: stations, tapes, levels.',
    missing: ({ derived }) => (proposedPaths(derived).length === 0 ? 'planned' : null),
    make: ({ site, derived }) => file(site, 'set-out.csv', 'text/csv', setOutCsv(site, derived, words)),
  },
  points: {
    name: 'Points for a surveyor (PNEZD)',
    use: 'Point, northing, easting, elevation, description; the order stands in the file.',
    missing: always,
    make: (setting) =>
      file(
        setting.site,
        'pnezd.csv',
        'text/csv',
        sitePoints(setting.site, setting.derived, words, coordinatesOf(setting)),
      ),
  },
  dxf: {
    name: 'Drawing for CAD (DXF)',
    use: 'The plan on named layers, in true units, as release 12.',
    missing: always,
    make: (setting) => {
      const { site, derived, drawing } = setting;
      const scaleDenominator = site.units.length === 'm' ? CAD_SCALE.metres : CAD_SCALE.feet;
      const options = { coordinates: coordinatesOf(setting), scaleDenominator };
      return file(site, 'dxf', 'image/vnd.dxf', siteDxf(site, derived, drawing, words, options));
    },
  },
  geojson: {
    name: 'Map layer (GeoJSON)',
    use: 'For a geographic information system.',
    missing: onEarth,
    make: ({ site, derived, fit }) =>
      file(site, 'geojson', 'application/geo+json', siteGeoJson(site, derived, fit, words)),
  },
  kml: {
    name: 'Map places (KML)',
    use: 'For globes and map programs.',
    missing: onEarth,
    make: ({ site, derived, fit }) =>
      file(site, 'kml', 'application/vnd.google-earth.kml+xml', siteKml(site, derived, fit, words)),
  },
  gpx: {
    name: 'Waypoints of marks (GPX)',
    use: 'For a hand-held receiver, which is good to yards, not inches.',
    missing: (setting) => anyMarks(setting) ?? onEarth(setting),
    make: ({ site, derived, fit }) =>
      file(site, 'gpx', 'application/gpx+xml', marksGpx(site, derived, fit, words)),
  },
  png: {
    name: 'Picture of the plan (PNG)',
    use: 'For a message. Not to scale in print: the sheet is.',
    missing: ({ derived }) => (derived.points.size === 0 ? 'plan' : null),
    make: async ({ site, drawing }) => {
      const data = await planPicture(site, drawing);
      return data === null ? null : { name: siteFileName(site, 'png'), data, type: 'image/png' };
    },
  },
};
