import type { LevelSource, PathProfile, PipeLevel, Site, SlopeVerdict } from '@footmark/site';
import { slopeText } from '../measureText';
import { targetInText, targetTitle } from './thingName';

export const slopeVerdictNames: Record<SlopeVerdict, string> = {
  enough: 'Pendiente suficiente',
  'too-flat': 'Muy poca pendiente',
  'cannot-tell': 'Los niveles no lo dicen',
  'against-flow': 'Sube con el flujo',
};

const measured: Record<PipeLevel['is'], string> = {
  invert: 'cota de fondo',
  'depth-to-invert': 'profundidad hasta el fondo',
  'depth-to-top': 'profundidad hasta el lomo',
};

const fields = { invert: 'cota de fondo', depth: 'profundidad', riserDepth: 'tubo vertical' } as const;

export function levelSourceName(source: LevelSource, site: Site): string {
  switch (source.is) {
    case 'point':
      return `Punto ${source.vertex.toUpperCase()}, ${measured[source.measured]}`;
    case 'feature':
      return `${targetTitle({ kind: 'feature', id: source.feature }, site)}, ${fields[source.field]}`;
    case 'locate':
      return `${targetTitle({ kind: 'feature', id: source.feature }, site)}, profundidad de la sonda`;
    case 'join':
      return `Unión con ${targetInText({ kind: 'path', id: source.path }, site)}`;
  }
}

/** What the heights of a profile are counted from, and what they come to from end to end. */
export function profileHeightsText({ heights, whole, unused }: PathProfile): string {
  return [
    heights === 'below-ground'
      ? 'No se conoce ningún nivel: las alturas son profundidades bajo un terreno que se toma como parejo.'
      : 'Niveles sobre el plano de referencia del sitio.',
    ...(heights === 'below-ground' || whole === null
      ? []
      : [`Del primer nivel al último la tubería cae ${slopeText(whole.slope)}.`]),
    'Lo que sigue a ± se cumple 95 de cada 100 veces.',
    ...(unused.length === 0
      ? []
      : ['Algunas profundidades no se usan: cerca de ellas no se conoce el nivel del terreno.']),
  ].join(' ');
}
