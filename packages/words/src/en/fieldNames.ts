import type { ChoiceValue, FieldName, FieldNamesByKind } from '../codes';

export const fieldNames: Record<FieldName, string> = {
  foundation: 'Foundation',
  floorLevel: 'Floor level',
  place: 'Place',
  ways: 'Ways in',
  diameter: 'Diameter',
  riserDepth: 'Riser depth',
  invert: 'Invert level',
  rimLevel: 'Rim level',
  depth: 'Depth',
  material: 'Material',
  footingDepth: 'Footing, bottom below ground',
  baseDiameter: 'Diameter above the root flare',
  tolerance: 'How well its kind stands root loss',
  age: 'Age',
  species: 'Species',
  trunkDiameter: 'Trunk diameter',
  stemDiameters: 'Diameters of several stems',
  photo: 'Photo',
  crownSpread: 'Crown spread',
  condition: 'Condition',
  protected: 'Protected',
  source: 'Where it is known from',
  holder: 'Held by',
  surface: 'Surface',
  height: 'Height',
  carries: 'Carries',
  what: 'What it is',
  level: 'Level',
  text: 'Text',
  reading: 'Reading that it belongs to',
  method: 'How it was found',
  sigma: 'Give or take (1 in 3 lies outside)',
};

export const fieldNamesByKind: FieldNamesByKind = {
  manhole: { diameter: 'Outside diameter' },
  well: { diameter: 'Casing diameter' },
  'septic-tank': { depth: 'Depth to the lid' },
};

export const choiceNames: Record<ChoiceValue, string> = {
  // of trees
  young: 'Young, under a fifth of its life',
  mature: 'Mature',
  overmature: 'Overmature, past four fifths of its life',
  moderate: 'Moderate',
  // foundations
  basement: 'Basement',
  'crawl-space': 'Crawl space',
  slab: 'Slab',
  piers: 'Piers',
  // cleanouts
  house: 'At the house',
  yard: 'In the yard',
  curb: 'At the curb',
  'one-way': 'One way',
  'two-way': 'Two ways',
  // materials of a main
  clay: 'Clay',
  'cast-iron': 'Cast iron',
  plastic: 'Plastic',
  concrete: 'Concrete',
  'bituminised-fibre': 'Bituminised fibre',
  steel: 'Steel',
  other: 'Other',
  // trees
  good: 'Good',
  fair: 'Fair',
  poor: 'Poor',
  dead: 'Dead',
  // locates
  crossed: 'Peak and null agree, both ways',
  peak: 'Peak only',
  rough: 'In passing',
  exposed: 'Pipe seen',
  // meters and service lines
  water: 'Water',
  gas: 'Gas',
  electric: 'Electric',
  communication: 'Communication',
  'reclaimed-water': 'Reclaimed water',
  'storm-drain': 'Storm drain',
};
