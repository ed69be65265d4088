import {
  choiceField,
  diameterField,
  diametersField,
  elevationField,
  type FieldSpec,
  fileField,
  flagField,
  lengthField,
  readingField,
  sigmaField,
  textField,
} from './field';

/** `point`: one vertex; `line`: two or more; `area`: three or more, closed from the last to the first. */
export type Shape = 'point' | 'line' | 'area';

/** The layer a kind is drawn on, shown and hidden together, and named alike in every export. */
export type FeatureLayer =
  | 'buildings'
  | 'drain'
  | 'trees'
  | 'land'
  | 'pavement'
  | 'structures'
  | 'services'
  | 'survey'
  | 'notes';

/**
 * What a clearance to a feature is measured to. `round`: the face of a circle of its diameter (a trunk, a well); `outline`: the
 * edge, negative inside an area; `line`: the line itself, from either side.
 */
export type ClearanceFace = 'round' | 'outline' | 'line';

export type KindSpec = {
  readonly shape: Shape;
  readonly layer: FeatureLayer;
  /** Name of a point symbol in the drawing package. */
  readonly symbol?: string;
  /** Name of a line type in the drawing package. */
  readonly lineType?: string;
  /** Whether its points can be found again on the ground and so serve for ties. */
  readonly reference: boolean;
  /** It will still stand when the pipe is looked for again in years: what was built is tied to it. */
  readonly lasts?: true;
  /** Tapes end on its near face: nobody reaches its middle. */
  readonly tapedTo?: 'face';
  /** Whether a camera can go in here. */
  readonly entry: boolean;
  /** Whether marks and paths report their distance to it, and to which face. */
  readonly clearance?: ClearanceFace;
  /** Whether a tape cannot be stretched through it. */
  readonly blocksTape: boolean;
  readonly fields: Readonly<Record<string, FieldSpec>>;
};

const point = { shape: 'point', reference: false, entry: false, blocksTape: false } as const;
const lineOf = { shape: 'line', reference: false, entry: false, blocksTape: false } as const;
const area = { shape: 'area', reference: false, entry: false, blocksTape: false } as const;

const pipeMaterial = () =>
  choiceField('clay', 'cast-iron', 'plastic', 'concrete', 'bituminised-fibre', 'steel', 'other');

/**
 * Every kind of thing a yard can hold. A new kind is one entry here and its name in each language's folder; forms,
 * list, validator, JSON Schema, drawing layer, ties and clearances follow from the entry.
 */
export const featureKinds = {
  building: {
    ...area,
    layer: 'buildings',
    lineType: 'wall',
    reference: true,
    lasts: true,
    blocksTape: true,
    clearance: 'outline',
    fields: {
      foundation: choiceField('basement', 'crawl-space', 'slab', 'piers'),
      floorLevel: elevationField(),
      footingDepth: lengthField(),
    },
  },
  shed: {
    ...area,
    layer: 'buildings',
    lineType: 'outline',
    reference: true,
    blocksTape: true,
    clearance: 'outline',
    fields: {},
  },
  porch: {
    ...area,
    layer: 'buildings',
    lineType: 'outline',
    reference: true,
    clearance: 'outline',
    fields: {},
  },
  deck: {
    ...area,
    layer: 'buildings',
    lineType: 'outline',
    reference: true,
    clearance: 'outline',
    fields: {},
  },
  cleanout: {
    ...point,
    layer: 'drain',
    symbol: 'cleanout',
    reference: true,
    entry: true,
    fields: {
      place: choiceField('house', 'yard', 'curb'),
      ways: choiceField('one-way', 'two-way'),
      diameter: diameterField(),
      riserDepth: lengthField(),
      invert: elevationField(),
    },
  },
  stack: {
    ...point,
    layer: 'drain',
    symbol: 'stack',
    entry: true,
    fields: { diameter: diameterField(), invert: elevationField() },
  },
  'floor-drain': {
    ...point,
    layer: 'drain',
    symbol: 'floor-drain',
    entry: true,
    fields: { diameter: diameterField(), invert: elevationField() },
  },
  fixture: { ...point, layer: 'drain', symbol: 'fixture', entry: true, fields: {} },
  manhole: {
    ...point,
    layer: 'drain',
    symbol: 'manhole',
    reference: true,
    lasts: true,
    entry: true,
    clearance: 'round',
    fields: { diameter: diameterField(), rimLevel: elevationField(), invert: elevationField() },
  },
  tap: {
    ...point,
    layer: 'drain',
    symbol: 'tap',
    entry: true,
    fields: { diameter: diameterField(), invert: elevationField(), depth: lengthField() },
  },
  main: {
    ...lineOf,
    layer: 'drain',
    lineType: 'main',
    fields: { diameter: diameterField(), material: pipeMaterial(), depth: lengthField() },
  },
  'septic-tank': {
    ...area,
    layer: 'drain',
    lineType: 'outline',
    reference: true,
    clearance: 'outline',
    fields: { depth: lengthField() },
  },
  tree: {
    ...point,
    layer: 'trees',
    symbol: 'tree',
    reference: true,
    tapedTo: 'face',
    clearance: 'round',
    fields: {
      species: textField(),
      trunkDiameter: diameterField(),
      stemDiameters: diametersField(),
      baseDiameter: diameterField(),
      crownSpread: lengthField(),
      tolerance: choiceField('good', 'moderate', 'poor'),
      age: choiceField('young', 'mature', 'overmature'),
      condition: choiceField('good', 'fair', 'poor', 'dead'),
      protected: flagField(),
    },
  },
  hedge: {
    ...lineOf,
    layer: 'trees',
    lineType: 'hedge',
    clearance: 'line',
    fields: { species: textField() },
  },
  boundary: {
    ...area,
    layer: 'land',
    lineType: 'boundary',
    reference: true,
    lasts: true,
    clearance: 'line',
    fields: { source: textField() },
  },
  'boundary-line': {
    ...lineOf,
    layer: 'land',
    lineType: 'boundary',
    reference: true,
    lasts: true,
    clearance: 'line',
    fields: { source: textField() },
  },
  easement: {
    ...area,
    layer: 'land',
    lineType: 'easement',
    clearance: 'outline',
    fields: { holder: textField() },
  },
  'right-of-way': {
    ...lineOf,
    layer: 'land',
    lineType: 'right-of-way',
    clearance: 'line',
    fields: { holder: textField() },
  },
  street: { ...area, layer: 'pavement', lineType: 'pavement', fields: { surface: textField() } },
  curb: { ...lineOf, layer: 'pavement', lineType: 'curb', reference: true, lasts: true, fields: {} },
  sidewalk: { ...area, layer: 'pavement', lineType: 'pavement', fields: { surface: textField() } },
  driveway: {
    ...area,
    layer: 'pavement',
    lineType: 'pavement',
    reference: true,
    fields: { surface: textField() },
  },
  patio: {
    ...area,
    layer: 'pavement',
    lineType: 'pavement',
    reference: true,
    fields: { surface: textField() },
  },
  fence: { ...lineOf, layer: 'structures', lineType: 'fence', reference: true, fields: {} },
  'retaining-wall': {
    ...lineOf,
    layer: 'structures',
    lineType: 'retaining-wall',
    reference: true,
    lasts: true,
    clearance: 'line',
    fields: { height: lengthField() },
  },
  well: {
    ...point,
    layer: 'services',
    symbol: 'well',
    reference: true,
    lasts: true,
    clearance: 'round',
    fields: { diameter: diameterField() },
  },
  pole: {
    ...point,
    layer: 'services',
    symbol: 'pole',
    reference: true,
    lasts: true,
    tapedTo: 'face',
    clearance: 'round',
    fields: { diameter: diameterField() },
  },
  hydrant: {
    ...point,
    layer: 'services',
    symbol: 'hydrant',
    reference: true,
    lasts: true,
    clearance: 'round',
    fields: {},
  },
  meter: {
    ...point,
    layer: 'services',
    symbol: 'meter',
    reference: true,
    clearance: 'round',
    fields: { carries: choiceField('water', 'gas', 'electric') },
  },
  service: {
    ...lineOf,
    layer: 'services',
    lineType: 'service',
    clearance: 'line',
    fields: {
      carries: choiceField('electric', 'gas', 'communication', 'water', 'reclaimed-water', 'storm-drain'),
      diameter: diameterField(),
      depth: lengthField(),
    },
  },
  locate: {
    ...point,
    layer: 'survey',
    symbol: 'locate',
    fields: {
      reading: readingField(),
      method: choiceField('crossed', 'peak', 'rough', 'exposed'),
      depth: lengthField(),
      sigma: sigmaField(),
    },
  },
  'reference-point': {
    ...point,
    layer: 'survey',
    symbol: 'reference-point',
    reference: true,
    fields: { what: textField() },
  },
  benchmark: {
    ...point,
    layer: 'survey',
    symbol: 'benchmark',
    reference: true,
    lasts: true,
    fields: { level: elevationField() },
  },
  'spot-level': { ...point, layer: 'survey', symbol: 'spot-level', fields: { level: elevationField() } },
  'photo-point': {
    ...point,
    layer: 'notes',
    symbol: 'note',
    fields: { photo: fileField(), text: textField() },
  },
  note: { ...point, layer: 'notes', symbol: 'note', fields: { text: textField() } },
} as const satisfies Record<string, KindSpec>;

export type FeatureKind = keyof typeof featureKinds;

export const featureKindIds = Object.keys(featureKinds) as readonly FeatureKind[]; // keys of a const table

/** The entry of a kind, widened to what every entry has. */
export function kindSpec(kind: FeatureKind): KindSpec {
  return featureKinds[kind];
}
