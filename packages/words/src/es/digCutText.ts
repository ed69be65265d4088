import type { ExcavationFindingValues } from '@footmark/dig';
import { WITHIN_95 } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { inSentence } from '../named';
import type { Said } from '../said';
import { of } from './article';
import { acrossText, leastText } from './digMeasure';
import { soilNames } from './ruleNames';

type Sentences = {
  readonly [Code in keyof ExcavationFindingValues]: (
    values: ExcavationFindingValues[Code],
    speech: DigSpeech,
  ) => Said;
};

const sideNames = { left: 'a la izquierda del flujo', right: 'a la derecha del flujo' } as const;

const depthMissing = {
  'no-pipe-level': {
    text: 'ahí no se conoce ningún nivel de la tubería',
    cure: 'Dé un nivel o una profundidad de la tubería, o diga qué tan profunda es la excavación.',
  },
  'no-ground': {
    text: 'ahí no se conoce ningún nivel del terreno',
    cure: 'Dé un punto acotado cercano, o diga qué tan profunda es la excavación.',
  },
  indoors: {
    text: 'ahí la tubería va debajo de un edificio',
    cure: 'Termine la zanja en el muro, o diga qué tan profunda es la excavación.',
  },
} as const;

/** What is said of planned digs. */
export const cutSentences: Sentences = {
  'dig-without-place': ({ dig }, speech) => ({
    text: `${speech.dig(dig)} no tiene lugar: aquello a lo que se refiere no se puede situar en el plano.`,
    cure: 'Corrija su marca o su tubería, o borre la excavación.',
  }),
  'trench-without-length': ({ dig, from, to }, speech) => ({
    text: `${speech.dig(dig)} no tiene longitud: va desde ${speech.length(from)} hasta ${speech.length(to)}.`,
    cure: 'Elija dos lugares separados de la tubería.',
  }),
  'trench-past-end': ({ dig, beyond, length }, speech) => ({
    text: `${speech.dig(dig)} pasa ${speech.length(beyond)} más allá del final de la tubería, que mide ${speech.length(length)}, así que se toma como si terminara ahí.`,
    cure: 'Termínela dentro de la tubería, o prolongue el dibujo de la tubería.',
  }),
  'pit-without-size': ({ dig }, speech) => ({
    text: `No se puede decir el tamaño ${of(speech.dig(dig))}: su marca todavía no tiene zona de búsqueda.`,
    cure: 'Espere a que se ponderen los recorridos, o dé el largo y el ancho del foso.',
  }),

  'depth-not-known': ({ dig, because, station }, speech) => ({
    text: `No se puede decir la profundidad ${of(speech.dig(dig))} a los ${speech.size(station)}: ${depthMissing[because].text}. Lo que encuentra se dice por su fondo y por lo que se sabe de sus lados, así que es lo mínimo.`,
    cure: depthMissing[because].cure,
  }),
  'depth-carried-on': ({ dig, sigma }, speech) => ({
    text: `La profundidad ${of(speech.dig(dig))} sale de un nivel prolongado por la pendiente que se dijo, con un margen de ${speech.size(WITHIN_95 * sigma)}.`,
    cure: 'Encuentre la profundidad de la tubería cerca de ahí antes de excavar.',
  }),
  'depth-not-positive': ({ dig, depth, station }, speech) => ({
    text: `El fondo ${of(speech.dig(dig))} queda ${depth < 0 ? `${speech.length(-depth)} por encima` : `a ${speech.length(depth)}`} del terreno a los ${speech.size(station)}.`,
    cure: 'Compruebe los niveles del terreno y de la tubería, o la profundidad que se dijo.',
  }),

  'soil-not-chosen': ({ dig, slope }, speech) => ({
    text: `Nadie ha dicho qué suelo es, así que los lados ${of(speech.dig(dig))} se toman con el talud más tendido, ${acrossText(slope)}.`,
    cure: 'Pida a una persona competente que juzgue el suelo y diga qué es, o use un escudo.',
  }),
  'disturbed-soil-is-not': ({ dig, chosen, as, slope }, speech) => ({
    text: `Un terreno ya excavado antes nunca es ${inText(chosen)}: ${speech.dig(dig)} se toma como ${inText(as)}, ${acrossText(slope)}.`,
    cure: 'Pida a una persona competente que juzgue el suelo, o use un escudo.',
  }),
  'protective-system-needed': ({ dig, depth, atLeast, limit, planned }, speech) => ({
    text: `${speech.dig(dig)} tiene ${leastText(atLeast)}${speech.size(depth)} de profundidad; desde ${speech.length(limit)} nadie entra antes de que sus lados estén cortados en talud o sostenidos.`,
    cure: held[planned],
  }),
  'short-term-may-be-steeper': ({ dig, slope, limit, width }, speech) => ({
    text: `${speech.dig(dig)} se muestra con el talud del suelo A para más tiempo; hasta ${speech.length(limit)} de profundidad, y si la excavación no queda abierta más de 24 horas, se permite ${acrossText(slope)}, con ${speech.size(width)} de ancho arriba.`,
    cure: 'Solo puede elegirlo una persona competente que haya encontrado suelo de tipo A, y se rellena el mismo día.',
  }),
  'competent-person-decides': ({ dig, depth, limit }, speech) => ({
    text: `${speech.dig(dig)} tiene ${speech.size(depth)} de profundidad, menos de ${speech.length(limit)}, y aun así sus lados pueden derrumbarse.`,
    cure: 'Una persona competente revisa el terreno antes de que alguien entre, y decide.',
  }),
  'depth-may-pass-limit': ({ dig, depth, sigma, limit }, speech) => ({
    text: `${speech.dig(dig)} resulta con ${speech.size(depth)} de profundidad, con un margen de ${speech.size(WITHIN_95 * sigma)}, así que puede pasar de ${speech.length(limit)}.`,
    cure: 'Lleve lo que sostiene los lados, o encuentre primero la profundidad.',
  }),
  'rock-must-be-stable': ({ dig, depth, atLeast }, speech) => ({
    text: `${speech.dig(dig)} tiene lados verticales por ${leastText(atLeast)}${speech.size(depth)} en lo que se dijo que es roca estable.`,
    cure: 'Una persona competente debe encontrarla estable hasta el fondo; si no, se corta en talud o se sostiene.',
  }),
  'engineer-designs': ({ dig, depth, atLeast, limit }, speech) => ({
    text: `${speech.dig(dig)} tiene ${leastText(atLeast)}${speech.size(depth)} de profundidad, más de ${speech.length(limit)}: lo que sostiene sus lados es trabajo de un ingeniero.`,
    cure: 'Haga que lo diseñe un ingeniero profesional registrado.',
  }),
  'shield-stands-above': ({ dig, above, upright, slope }, speech) => ({
    text: `Los lados ${of(speech.dig(dig))} son verticales por ${speech.size(upright)} detrás del escudo, que sobresale ${speech.length(above)} por encima de ellos; de ahí hacia arriba se cortan en talud, ${acrossText(slope)}.`,
    cure: 'Coloque el escudo como dice su fabricante, y mantenga su borde superior a esa altura sobre el lado vertical.',
  }),
  'shield-reaches-ground': ({ dig, depth, atLeast }, speech) => ({
    text: `Los lados ${of(speech.dig(dig))} se toman verticales hasta arriba, así que su escudo debe llegar al terreno, con ${leastText(atLeast)}${speech.size(depth)} de altura.`,
    cure: 'Pida uno así de alto, o diga qué altura tiene: entonces el terreno de arriba se corta en talud.',
  }),
  'egress-needed': ({ dig, depth, atLeast, limit, places, travel }, speech) => ({
    text: `${speech.dig(dig)} tiene ${leastText(atLeast)}${speech.size(depth)} de profundidad; desde ${speech.length(limit)} debe haber una escalera o rampa a no más de ${speech.length(travel)} de cada persona que esté adentro.`,
    cure:
      places === 1
        ? 'Ponga una escalera en el lugar indicado.'
        : `Ponga ${places} escaleras en los lugares indicados.`,
  }),

  'spoil-kept-back': ({ dig, setback, width, height, volume, side }, speech) => ({
    text: `La tierra excavada ${of(speech.dig(dig))} ocupa, ya suelta, cerca de ${speech.volume(volume)}: un montón de ${speech.size(width)} de ancho y ${speech.size(height)} de alto ${sideNames[side]}.`,
    cure: `Manténgala, con todo el equipo, a ${speech.length(setback)} del borde o más.`,
  }),
  'spoil-without-room': ({ dig, side, suggested, features }, speech) => ({
    text: `La tierra excavada ${of(speech.dig(dig))} no tiene espacio ${side === null ? 'a ningún lado' : sideNames[side]}${features.length === 0 ? '' : `: ${features.length === 1 ? 'estorba' : 'estorban'} ${speech.features(features)}`}.`,
    cure:
      side === null || suggested === 'away'
        ? 'Cárguela en un camión, o haga la excavación más pequeña con un escudo.'
        : `Póngala ${sideNames[suggested]}, donde hay espacio.`,
  }),

  'dig-crosses-boundary': ({ dig, feature, length, atLeast }, speech) => ({
    text: `${speech.dig(dig)} pasa sobre ${speech.feature(feature)} por ${leastText(atLeast)}${speech.size(length)}.`,
    cure: 'Pida permiso por escrito al dueño del otro lado, o mantenga la excavación de este lado con un escudo.',
  }),
  'dig-in-easement': ({ dig, feature, area, atLeast }, speech) => ({
    text: `${speech.dig(dig)} ocupa ${leastText(atLeast)}${speech.area(area)} ${of(speech.feature(feature))}.`,
    cure: 'Pregunte al titular de la servidumbre antes de excavar.',
  }),
  'dig-reaches-building': ({ dig, feature, area, atLeast }, speech) => ({
    text: `La parte superior ${of(speech.dig(dig))} alcanza ${leastText(atLeast)}${speech.area(area)} debajo ${of(speech.feature(feature))}.`,
    cure: 'Use un escudo, termine la excavación antes, o haga que un ingeniero diga cómo se sostiene el edificio.',
  }),
  'dig-takes-pavement': ({ dig, feature, area, atLeast }, speech) => ({
    text: `${speech.dig(dig)} levanta ${leastText(atLeast)}${speech.area(area)} ${of(speech.feature(feature))}.`,
    cure: 'Prevea cortarlo con sierra y reponerlo; pida permiso donde sea público.',
  }),
  'dig-crosses-service': ({ dig, feature, length, atLeast, unknown }, speech) => ({
    text:
      unknown === null
        ? `${speech.dig(dig)} deja al descubierto ${leastText(atLeast)}${speech.size(length)} ${of(speech.feature(feature))}.`
        : `${speech.dig(dig)} pasa sobre ${speech.feature(feature)} por ${leastText(atLeast)}${speech.size(length)} y puede dejar la línea al descubierto: no se sabe la profundidad de la ${unknown === 'service' ? 'línea' : 'excavación'}.`,
    cure: `Haga que la localicen${unknown === null ? '' : ' y encuentren su profundidad'}, excave a mano o con succión junto a ella, y sosténgala mientras cuelga.`,
  }),
  'dig-takes-thing': ({ dig, feature }, speech) => ({
    text: `La parte superior ${of(speech.dig(dig))} se lleva ${speech.feature(feature)}.`,
    cure: 'Haga la excavación más pequeña con un escudo, muévala, o acuerde qué pasa con eso.',
  }),
  'dig-takes-trunk': ({ dig, feature }, speech) => ({
    text: `El tronco ${of(speech.feature(feature))} está en el corte ${of(speech.dig(dig))}: el árbol caería.`,
    cure: 'Rodéelo o perfore por debajo. Pregunte a un arborista antes de cortar raíces, y si el árbol se puede talar.',
  }),
  'dig-under-footing': ({ dig, feature, depth, atLeast, footing, distance, reach, assumed }, speech) => ({
    text: `${speech.dig(dig)}, con ${leastText(atLeast)}${speech.size(depth)} de profundidad y a ${speech.size(Math.max(0, distance))} ${of(speech.feature(feature))}, baja por debajo del terreno que sostiene su zapata, ${footingText(footing, assumed, speech)}.`,
    cure: `Quédese ${leastText(atLeast)}a ${speech.size(reach)} de distancia, o haga que un ingeniero diga cómo se sostiene el edificio${assumed === null ? '' : '; averigüe la profundidad de la zapata'}.`,
  }),
  'footing-taken': ({ dig, feature, depth, footing, distance, reach, shallowest, assumed }, speech) => ({
    text: `${speech.dig(dig)}, con ${speech.size(depth)} de profundidad y a ${speech.size(Math.max(0, distance))} ${of(speech.feature(feature))}, respeta su zapata solo si se encuentra ${footingText(footing, assumed, speech)}; una a ${speech.length(shallowest)} quedaría socavada.`,
    cure: `Averigüe la profundidad de la zapata y anótela en la ficha del edificio; hasta entonces quédese a ${speech.size(reach)} de distancia.`,
  }),
  'footing-not-judged': ({ dig, feature, footing, distance, deepest, assumed }, speech) => ({
    text: `No se puede decir si ${speech.dig(dig)} socava ${speech.feature(feature)}, ${distance > 0 ? `a ${speech.size(distance)}` : 'que toca'}, porque no se sabe su profundidad: a más de ${speech.size(deepest)} baja por debajo del terreno que sostiene la zapata, ${footingText(footing, assumed, speech)}.`,
    cure: `Diga qué tan profunda es la excavación, y no baje más antes de que un ingeniero diga cómo se sostiene el edificio${assumed === null ? '' : '; averigüe la profundidad de la zapata'}.`,
  }),
};

const held = {
  slope:
    'Corte los lados con el talud indicado, o coloque un escudo; una persona competente revisa cada día y después de la lluvia.',
  shield:
    'Coloque el escudo antes de que alguien entre, y quédese dentro de él; una persona competente revisa cada día y después de la lluvia.',
  engineer:
    'Nadie entra antes de que esté puesto lo que un ingeniero diseñó: ningún talud de la tabla vale para tanta profundidad, y el talud indicado solo dice cuánto espacio ocuparía.',
} as const;

function footingText(
  footing: number,
  assumed: ExcavationFindingValues['dig-under-footing']['assumed'],
  speech: DigSpeech,
): string {
  const deep = `a ${speech.length(footing)} de profundidad`;
  if (assumed === null) return deep;
  return `${deep}, supuesta ${assumed === 'nothing' ? 'porque no se sabe nada de ella' : 'por su tipo de cimentación'}`;
}

function inText(soil: keyof typeof soilNames): string {
  const [name = ''] = inSentence(soilNames[soil]).split(',');
  return name;
}
