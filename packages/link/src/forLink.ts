import {
  derive,
  type Feature,
  isPath,
  kindSpec,
  type PointOwner,
  type Site,
  type Spot,
} from '@footmark/site';

/** What goes along with a site besides the drawing, the runs and what is planned. */
export type LinkChoice = {
  readonly address: boolean;
  /**
   * What people wrote in their own words: about the site, its visits, runs, readings, digs and finds, and on the plan; who changed a rule,
   * and why; who found what.
   */
  readonly notes: boolean;
  /** Where on the earth it lies. Without it north stays known, as an azimuth. */
  readonly coordinates: boolean;
};

/** What a link holds unless someone wants more in it. */
export const leastChoice: LinkChoice = { address: false, notes: false, coordinates: false };

/** Places by eye go to a tenth of a millimetre: no finger is as sure, and each digit more has to be scanned. */
const BY_EYE_PER_METRE = 1e4;

/**
 * The site as it goes into a link: without what was not chosen, and always without photos and pictures, which are files on this device.
 * A site that opens gives one that opens; ids, measurements and the names of things stay as they are.
 */
export function forLink(site: Site, choice: LinkChoice): Site {
  const bare: Site = {
    ...site,
    underlays: [],
    features: site.features.map((f) => withoutFiles(roundedPlaces(f))),
    paths: site.paths.map((path) => roundedPlaces(path)),
    runs: site.runs.map((run) => ({ ...run, readings: run.readings.map(({ photo: _, ...same }) => same) })),
    asFound: site.asFound.map((found) => ({ ...found, photos: [] })),
    ...(site.fit === undefined ? {} : { fit: roundedFit(site.fit) }),
  };
  const placed = choice.coordinates ? bare : withoutCoordinates(bare, site);
  const addressed = choice.address ? placed : { ...placed, address: '' };
  return choice.notes ? addressed : withoutNotes(addressed);
}

function withoutCoordinates(site: Site, whole: Site): Site {
  const { north } = site.frame;
  if (north.by !== 'control') return { ...site, frame: { north, control: [] } };
  const { known, northAzimuth } = derive(whole).frame;
  return {
    ...site,
    frame: { north: known ? { by: 'typed', azimuth: northAzimuth } : { by: 'assumed' }, control: [] },
  };
}

function withoutNotes(site: Site): Site {
  return {
    ...site,
    note: '',
    features: site.features.map((f) => withoutFields(f, (name) => name === 'text')),
    visits: site.visits.map((visit) => ({ ...visit, note: '' })),
    runs: site.runs.map((run) => ({
      ...run,
      note: '',
      readings: run.readings.map((reading) => ({ ...reading, note: '' })),
    })),
    rules: { ...site.rules, changed: site.rules.changed.map((change) => ({ ...change, who: '', why: '' })) },
    digging: {
      ...site.digging,
      digs: site.digging.digs.map((dig) => ({ ...dig, note: '' })),
      notes: [],
    },
    asFound: site.asFound.map((found) => ({ ...found, by: '', note: '' })),
  };
}

function withoutFiles(feature: Feature): Feature {
  const { fields } = kindSpec(feature.kind);
  return withoutFields(feature, (name) => fields[name]?.input.as === 'file');
}

function withoutFields(feature: Feature, goes: (name: string) => boolean): Feature {
  const fields = Object.fromEntries(Object.entries(feature.fields).filter(([name]) => !goes(name)));
  return { ...feature, fields } as Feature; // the same kind with fewer fields, and all of them may be absent
}

function roundedPlaces<Owner extends PointOwner>(owner: Owner): Owner {
  const vertices = isPath(owner) ? owner.vertices.map(rounded) : owner.vertices.map(rounded);
  return { ...owner, vertices };
}

/** The lines of a fit as those of the site, or it would seem that they were moved since. */
function roundedFit(fit: NonNullable<Site['fit']>): NonNullable<Site['fit']> {
  const paths = fit.paths.map((path) => ({
    ...path,
    drawn: path.drawn.map(rounded),
    fitted: path.fitted.map(rounded),
  }));
  return { ...fit, paths };
}

function rounded<V extends { readonly spot: Spot }>(vertex: V): V {
  const { spot } = vertex;
  if (spot.by !== 'finger') return vertex;
  return { ...vertex, spot: { by: 'finger', x: tenth(spot.x), y: tenth(spot.y) } };
}

function tenth(metres: number): number {
  return Math.round(metres * BY_EYE_PER_METRE) / BY_EYE_PER_METRE + 0; // no negative zero
}
