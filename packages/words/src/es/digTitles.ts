import { WITHIN_95 } from '@footmark/site';
import type { DigSpeech } from '../digSpeech';
import { atStart, inSentence } from '../named';
import type { DigFindingTable } from '../sayFinding';
import { of } from './article';
import { owners } from './digLandText';
import { leastText, shareText } from './digMeasure';
import { soilNames } from './ruleNames';
import { dateText } from './visitText';

/** What is found and how much of it, in a line that is read at a glance; what it is said of stands beside it. */
export const digTitles: DigFindingTable<DigSpeech, string> = {
  'dig-without-place': () => 'Sin lugar en el plano',
  'trench-without-length': () => 'Sin longitud',
  'trench-past-end': ({ beyond }, say) => `${say.length(beyond)} más allá del final de la tubería`,
  'pit-without-size': () => 'Tamaño todavía no conocido',
  'depth-not-known': ({ station }, say) => `Profundidad no conocida a los ${say.size(station)}`,
  'depth-carried-on': ({ sigma }, say) =>
    `Profundidad prolongada, con un margen de ${say.size(WITHIN_95 * sigma)}`,
  'depth-not-positive': ({ station }, say) => `El fondo no queda bajo el terreno a los ${say.size(station)}`,
  'soil-not-chosen': () => 'Nadie ha juzgado el suelo',
  'disturbed-soil-is-not': ({ as }) => `Ya excavado: se toma como ${inSentence(soilNames[as]).split(',')[0]}`,
  'protective-system-needed': ({ depth, atLeast, planned }, say) =>
    `${leastText(atLeast)}${say.size(depth)} de profundidad: ${held[planned]}`,
  'short-term-may-be-steeper': ({ width }, say) => `Solo por un día: ${say.size(width)} de ancho arriba`,
  'competent-person-decides': ({ depth }, say) =>
    `${say.size(depth)} de profundidad: aun así puede derrumbarse`,
  'depth-may-pass-limit': ({ limit }, say) => `Puede tener más de ${say.length(limit)} de profundidad`,
  'rock-must-be-stable': ({ depth, atLeast }, say) =>
    `Lados verticales por ${leastText(atLeast)}${say.size(depth)} en roca`,
  'engineer-designs': ({ depth, atLeast }, say) =>
    `${leastText(atLeast)}${say.size(depth)} de profundidad: trabajo de un ingeniero`,
  'shield-stands-above': ({ above, upright }, say) =>
    `Vertical por ${say.size(upright)}, escudo ${say.length(above)} más alto`,
  'shield-reaches-ground': ({ depth, atLeast }, say) =>
    `Escudo hasta el terreno, ${leastText(atLeast)}${say.size(depth)}`,
  'egress-needed': ({ places, travel }, say) =>
    `${places === 1 ? 'Una escalera' : `${places} escaleras`} a no más de ${say.length(travel)}`,
  'spoil-kept-back': ({ setback, volume }, say) =>
    `Tierra a ${say.length(setback)} del borde, ${say.volume(volume)} suelta`,
  'spoil-without-room': () => 'Sin espacio para la tierra excavada',
  'dig-crosses-boundary': ({ feature, length, atLeast }, say) =>
    `Sobre ${say.feature(feature)} por ${leastText(atLeast)}${say.size(length)}`,
  'dig-in-easement': ({ feature, area, atLeast }, say) =>
    `${leastText(atLeast)}${say.area(area)} ${of(say.feature(feature))}`,
  'dig-reaches-building': ({ feature, area, atLeast }, say) =>
    `${leastText(atLeast)}${say.area(area)} debajo ${of(say.feature(feature))}`,
  'dig-takes-pavement': ({ feature, area, atLeast }, say) =>
    `Reponer ${leastText(atLeast)}${say.area(area)} ${of(say.feature(feature))}`,
  'dig-crosses-service': ({ feature, length, atLeast, unknown }, say) =>
    unknown === null
      ? `${leastText(atLeast)}${say.size(length)} ${of(say.feature(feature))} al descubierto`
      : `Puede descubrir ${say.feature(feature)}: falta una profundidad`,
  'dig-takes-thing': ({ feature }, say) => `Se lleva ${say.feature(feature)}`,
  'dig-takes-trunk': ({ feature }, say) => `El tronco ${of(say.feature(feature))} está en el corte`,
  'footing-taken': ({ feature, footing }, say) =>
    `Respeta ${say.feature(feature)} solo con zapata a ${say.length(footing)}`,
  'footing-not-judged': ({ feature, deepest }, say) =>
    `A más de ${say.size(deepest)} socava ${say.feature(feature)}`,
  'dig-under-footing': ({ feature, reach, atLeast }, say) =>
    `Bajo la zapata ${of(say.feature(feature))}: quédese ${leastText(atLeast)}a ${say.size(reach)}`,

  'tree-without-diameter': () => 'Sin diámetro del tronco',
  'tree-facts-assumed': ({ assumed }) =>
    assumed.length === 1 ? 'Se supone un dato' : `Se suponen ${assumed.length} datos`,
  'pipe-in-root-zone': ({ tree, length }, say) =>
    `${say.size(length)} en las raíces ${of(say.feature(tree))}`,
  'dig-in-root-zone': ({ tree, share, atLeast }, say) =>
    `Ocupa ${leastText(atLeast)}${shareText(share)} de las raíces ${of(say.feature(tree))}`,
  'spoil-in-root-zone': ({ tree, share }, say) =>
    `Tierra sobre ${shareText(share)} de las raíces ${of(say.feature(tree))}`,
  'dig-in-structural-roots': ({ tree }, say) => `Corta raíces que sostienen ${say.feature(tree)}`,
  'minor-encroachment': ({ share }) => `Las excavaciones ocupan ${shareText(share)} de su zona`,
  'major-encroachment': ({ share }) => `Las excavaciones ocupan ${shareText(share)} de su zona`,

  'pipe-too-near': ({ feature, distance, required }, say) =>
    `${
      distance < 0
        ? `${say.size(distance)} dentro ${of(say.feature(feature))}`
        : `A ${say.size(distance)} ${of(say.feature(feature))}`
    }, exigido ${say.length(required)}`,
  'service-nearer-than-elsewhere': ({ feature, distance }, say) =>
    `A ${say.size(distance)} ${of(say.feature(feature))}, suficiente aquí`,
  'mark-in-tolerance-zone': ({ feature, distance }, say) =>
    `Excave a mano: ${
      distance > 0 ? `a ${say.size(distance)} ${of(say.feature(feature))}` : `sobre ${say.feature(feature)}`
    }`,
  'pipe-along-wall': ({ feature, distance }, say) =>
    `A lo largo ${of(say.feature(feature))}, a ${say.size(distance)}`,
  'outline-doubtful': () => 'El contorno se cruza a sí mismo',

  'no-boundary': () => 'No hay lindero dibujado',
  'boundary-crosses-itself': () => 'El contorno se cruza a sí mismo',
  'boundary-not-closed': ({ gap }, say) => `No cierra por ${say.size(gap)}`,
  'lot-not-told': ({ lots }) => `${lots} lotes, y ninguno contiene el edificio`,
  'right-of-way-without-house': () => 'No se sabe qué lado es público',
  'path-on-neighbour': ({ from, to }, say) => `${say.size(to - from)} ${owners.neighbour}`,
  'path-on-public': ({ from, to }, say) => `${say.size(to - from)} ${owners.public}`,
  'path-in-easement': ({ from, to, features }, say) => `${say.size(to - from)} en ${say.features(features)}`,
  'path-outside': ({ from, to }, say) => `${say.size(to - from)} ${owners.outside}`,
  'path-along-boundary': ({ from, to, features }, say) =>
    `${say.size(to - from)} a lo largo ${of(say.features(features))}`,
  'path-crosses-open-boundary': ({ feature, station }, say) =>
    `Cruza ${say.feature(feature)} a los ${say.size(station)}`,
  'mark-not-private': ({ whose }) => atStart(owners[whose]),

  'service-crossed': ({ feature, station }, say) =>
    `Cruza ${say.feature(feature)} a los ${say.size(station)}`,
  'dig-in-tolerance-zone': ({ feature, handDig, atLeast }, say) =>
    handDig === null
      ? `Excave a mano cerca ${of(say.feature(feature))}`
      : `${leastText(atLeast)}${say.size(handDig)} a mano cerca ${of(say.feature(feature))}`,
  'tolerance-under-floor': ({ floor }, say) => `Zona de tolerancia bajo el mínimo, ${say.length(floor)}`,
  'service-without-diameter': () => 'Sin diámetro',
  'one-call-missing': () => 'Sin boleto de llamada única',
  'one-call-not-called': () => 'Falta llamar al centro de llamada única',
  'one-call-waiting': ({ from }) =>
    from === null
      ? 'Marcas de llamada única todavía sin hacer'
      : `Marcas de llamada única desde el ${dateText(from)}`,
  'one-call-expired': ({ until }) =>
    until === null
      ? 'Marcas de llamada única vencidas'
      : `Marcas de llamada única vencidas el ${dateText(until)}`,
  'one-call-dates-clash': () => 'Los días del boleto se contradicen',
  'one-call-without-end': () => 'Boleto de llamada única sin último día',

  'fall-too-little': ({ slope, least }, say) => `Cae ${say.slope(slope)}, el mínimo es ${say.slope(least)}`,
  'fall-against-flow': ({ slope }, say) => `Sube con el flujo, ${say.slope(-slope)}`,
  'fall-not-sure': ({ least }, say) => `No es seguro que caiga ${say.slope(least)}`,
  'fall-said-too-little': ({ slope, least }, say) =>
    `Se planeó ${say.slope(slope)} de caída, el mínimo es ${say.slope(least)}`,
  'fall-less-than-elsewhere': ({ slope, elsewhere }, say) =>
    `Cae ${say.slope(slope)}, algunos códigos exigen ${say.slope(elsewhere)}`,
  'fall-not-known': () => 'No se sabe si cae lo suficiente',
  'end-below-tap': ({ by }, say) => `Llega ${say.size(by)} por debajo del entronque`,
  'cover-too-thin': ({ cover, station }, say) => `${coverText(cover, say)} a los ${say.size(station)}`,
  'cover-above-frost': ({ cover, station }, say) =>
    `${coverText(cover, say)} a los ${say.size(station)}, sobre la helada`,
  'cover-not-known': ({ length }, say) => `Recubrimiento no conocido en ${say.size(length)}`,
  'cleanout-at-head': () => 'Sin registro en el extremo superior',
  'cleanout-at-junction': ({ station }, say) => `Sin registro afuera del muro, a los ${say.size(station)}`,
  'manhole-along': ({ station }, say) => `Sin pozo de visita hasta ${say.size(station)}`,
  'cleanout-too-small': ({ feature }, say) => `Diámetro muy chico: ${say.feature(feature)}`,
  'cleanout-at-turn': ({ station }, say) => `Sin registro en el giro a los ${say.size(station)}`,
  'cleanout-after-turns': ({ station }, say) => `Sin registro tras sus giros, a los ${say.size(station)}`,
  'cleanout-along': ({ spacing }, say) => `Sin registro en ${say.length(spacing)}`,
  'turn-needs-sweep': ({ station }, say) => `Giro muy cerrado a los ${say.size(station)}`,
  'water-too-near': ({ service, crosses, distance, main }, say) =>
    `${waterAt(service, crosses, distance, say)}, ${
      main && crosses ? 'muy poco espacio entre las dos' : 'no lo bastante arriba'
    }`,
  'water-depth-not-known': ({ service, crosses, distance }, say) =>
    `${waterAt(service, crosses, distance, say)}, no se sabe si se permite`,
  'water-allowed': ({ service, crosses, distance, by }, say) =>
    `${waterAt(service, crosses, distance, say)}, se permite por ${by === 'height' ? 'su altura' : 'el material de la alcantarilla'}`,
  'water-nearer-than-elsewhere': ({ service, distance }, say) =>
    `A ${say.size(distance)} ${of(say.feature(service))}, suficiente aquí`,
};

const held = {
  slope: 'corte en talud o sostenga los lados',
  shield: 'ponga primero el escudo',
  engineer: 'ningún talud de la tabla vale',
} as const;

function coverText(cover: number, say: DigSpeech): string {
  return cover < 0 ? `${say.size(-cover)} fuera del terreno` : `${say.size(cover)} de recubrimiento`;
}

function waterAt(service: string, crosses: boolean, distance: number, say: DigSpeech): string {
  return crosses ? `Cruce ${of(say.feature(service))}` : `${say.feature(service)} a ${say.size(distance)}`;
}
