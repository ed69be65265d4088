import type { MarkState, ZoneSource } from '@footmark/site';

/** From what a search zone's size comes. */
export const zoneSourceNames: Record<ZoneSource, string> = {
  counter: 'La lectura del contador',
  zero: 'El cero',
  scale: 'La escala del contador',
  riser: 'El tubo vertical',
  path: 'La línea como se dibujó',
  locate: 'Las localizaciones',
  pair: 'Lo que se vio desde ambos extremos',
  known: 'Lo que se sabe de la tubería',
};

/** How far a mark has come. */
export const markStateNames: Record<MarkState, string> = {
  computed: 'Calculada',
  located: 'Localizada',
  painted: 'Pintada',
  flagged: 'Con bandera',
  dug: 'Excavada',
  found: 'Encontrada',
};
