import type { ChoiceValue, FieldName, FieldNamesByKind } from '../codes';

export const fieldNames: Record<FieldName, string> = {
  foundation: 'Cimentación',
  floorLevel: 'Nivel del piso',
  place: 'Lugar',
  ways: 'Sentidos de entrada',
  diameter: 'Diámetro',
  riserDepth: 'Profundidad del tubo vertical',
  invert: 'Cota de fondo',
  rimLevel: 'Cota del borde',
  depth: 'Profundidad',
  material: 'Material',
  footingDepth: 'Zapata, fondo bajo el terreno',
  baseDiameter: 'Diámetro sobre el cuello de la raíz',
  tolerance: 'Cómo soporta su especie la pérdida de raíces',
  age: 'Edad',
  species: 'Especie',
  trunkDiameter: 'Diámetro del tronco',
  stemDiameters: 'Diámetros de varios troncos',
  photo: 'Foto',
  crownSpread: 'Ancho de la copa',
  condition: 'Estado',
  protected: 'Protegido',
  source: 'De dónde se conoce',
  holder: 'Titular',
  surface: 'Superficie',
  height: 'Altura',
  carries: 'Lleva',
  what: 'Qué es',
  level: 'Nivel',
  text: 'Texto',
  reading: 'Lectura a la que pertenece',
  method: 'Cómo se encontró',
  sigma: 'Margen (1 de cada 3 queda fuera)',
};

export const fieldNamesByKind: FieldNamesByKind = {
  manhole: { diameter: 'Diámetro exterior' },
  well: { diameter: 'Diámetro del ademe' },
  'septic-tank': { depth: 'Profundidad hasta la tapa' },
};

export const choiceNames: Record<ChoiceValue, string> = {
  // of trees
  young: 'Joven, menos de un quinto de su vida',
  mature: 'Maduro',
  overmature: 'Viejo, más de cuatro quintos de su vida',
  moderate: 'Regular',
  // foundations
  basement: 'Sótano',
  'crawl-space': 'Espacio bajo el piso',
  slab: 'Losa',
  piers: 'Pilares',
  // cleanouts
  house: 'Junto a la casa',
  yard: 'En el jardín',
  curb: 'Junto al bordillo',
  'one-way': 'Un sentido',
  'two-way': 'Dos sentidos',
  // materials of a main
  clay: 'Barro',
  'cast-iron': 'Hierro fundido',
  plastic: 'Plástico',
  concrete: 'Concreto',
  'bituminised-fibre': 'Fibra bituminosa',
  steel: 'Acero',
  other: 'Otro',
  // trees: how they stand root loss, and how healthy they are
  good: 'Bien',
  fair: 'Aceptable',
  poor: 'Mal',
  dead: 'Muerto',
  // locates
  crossed: 'Pico y nulo coinciden, en ambos sentidos',
  peak: 'Solo el pico',
  rough: 'De paso',
  exposed: 'Tubería a la vista',
  // meters and service lines
  water: 'Agua',
  gas: 'Gas',
  electric: 'Electricidad',
  communication: 'Comunicaciones',
  'reclaimed-water': 'Agua reciclada',
  'storm-drain': 'Drenaje pluvial',
};
