import type { SigmaName } from '@footmark/site';

/** What each standard deviation is of. */
export const sigmaNames: Record<SigmaName, string> = {
  counter: 'Una lectura del contador',
  zero: 'Dónde estaba el cabezal en el cero',
  scale: 'Escala de un contador que no se comprobó, como fracción',
  riser: 'Cable en un tubo vertical y su curva',
  drawnPipePoint: 'Punto de una tubería puesto a ojo',
  tiedPipePoint: 'Punto de una tubería debajo de algo que se midió',
  pipeDirection: 'Dirección de una tubería dada como rumbo o giro',
  pipeStray: 'Cuánto se desvía a un lado una tubería recta en el centro de 10 m',
  fittingAngle: 'Giro de un accesorio conocido',
  knownLength: 'Longitud conocida de tubería',
  sameThing: 'La misma cosa vista dos veces',
  locateCrossed: 'Localización donde pico y nulo coinciden en ambos sentidos',
  locateCrossedShare:
    'Localización donde pico y nulo coinciden en ambos sentidos, como fracción de la profundidad',
  locatePeak: 'Localización solo por el pico',
  locatePeakShare: 'Localización solo por el pico, como fracción de la profundidad',
  locateRough: 'Localización de paso',
  exposed: 'Tubería que se excavó y se vio',
  locateDepthShare: 'Profundidad donde pico y nulo coinciden, como fracción de ella',
  locatePeakDepthShare: 'Profundidad solo por el pico, como fracción de ella',
  tapedLevel: 'Cota de fondo o profundidad medida con cinta',
  waterShare: 'Profundidad del agua juzgada en la pantalla, como fracción del diámetro',
};
