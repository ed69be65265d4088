import {
  type Finding,
  type FindingCode,
  type FindingOf,
  type Site,
  settings,
  type Target,
  WITHIN_95,
} from '@footmark/site';
import type { Sentences, Speech } from '../findingSpeech';
import { angleText, counterText, lengthText, slopeText } from '../measureText';
import { atStart } from '../named';
import { percentText } from '../percentText';
import { ratioText } from '../ratioText';
import type { Said } from '../said';
import { isPaintBeside, targetOfKey } from '../thing';
import { of, to } from './article';
import { foundSentences } from './foundSentences';
import { markInText, spokenName, targetInText } from './thingName';

const goodCut = `entre ${angleText(settings.weakCutBelow.value)} y ${angleText(settings.weakCutAbove.value)}`;

const sentences: Sentences = {
  'tapes-too-short': ({ gap, a, b }, { thing, name, length }) => ({
    text: `Las cintas desde ${name(a)} y ${name(b)} hasta ${thing} no se encuentran: quedan cortas por ${length(gap)}.`,
    cure: 'Compruebe desde qué puntos se tomaron, y vuelva a medir las dos.',
  }),
  'tapes-too-long': ({ gap, a, b }, { thing, name, length }) => ({
    text: `Las cintas desde ${name(a)} y ${name(b)} hasta ${thing} no se encuentran: una es ${length(gap)} demasiado larga para la otra.`,
    cure: 'Compruebe desde qué puntos se tomaron, y vuelva a medir las dos.',
  }),
  'tapes-same-place': ({ a, b }, { thing, name }) => ({
    text: `Para ${thing} las cintas salen ${of(name(a))} y ${of(name(b))}, que están en el mismo lugar.`,
    cure: 'Mida desde un segundo punto que esté en otro lugar.',
  }),
  'tapes-not-converged': ({ a }, { thing, name }) => ({
    text: `Ningún lugar concuerda con las cintas hasta ${thing}; la primera es desde ${name(a)}.`,
    cure: 'Compruebe desde qué puntos se tomaron, y cada cinta.',
  }),
  'tapes-one-way': ({ axis }, { thing, length }) => ({
    text:
      axis === null
        ? `Las cintas hasta ${thing} van todas en una misma dirección, así que no dicen qué tan a un lado está.`
        : `Las cintas hasta ${thing} van casi todas en una misma dirección, así que hacia los lados queda una duda de ${length(axis)}.`,
    cure: `Mida desde un punto más, de modo que dos cintas se crucen ${goodCut}.`,
  }),
  'tapes-disagree': ({ worst, by }, { thing, name, length }) => ({
    text: `Las cintas hasta ${thing} no concuerdan: la ${of(name(worst))} es ${length(Math.abs(by))} más ${by < 0 ? 'corta' : 'larga'} que hasta el lugar que mejor concuerda con todas.`,
    cure: `Vuelva a medir desde ${name(worst)}, o quite esa cinta.`,
  }),
  'weak-cut': ({ cut }, { thing }) => ({
    text: `Las dos cintas hasta ${thing} se cruzan a ${angleText(cut)}, así que un error pequeño lo mueve mucho.`,
    cure: `Mida desde dos puntos cuyas cintas se crucen ${goodCut}, o añada una tercera cinta.`,
  }),
  'line-has-no-length': ({ a, b }, { thing, name }) => ({
    text: `La medida ${of(thing)} va por la línea ${of(name(a))} ${to(name(b))}, que no tiene longitud.`,
    cure: 'Elija dos puntos separados.',
  }),
  'tree-has-no-diameter': (_, { thing }) => ({
    text: `Falta el diámetro del tronco ${of(thing)}, así que las distancias llegan a su centro.`,
    cure: 'Mida el tronco y dé su diámetro.',
  }),
  'outline-crosses-itself': (_, { thing }) => ({
    text: `El contorno ${of(thing)} se cruza a sí mismo.`,
    cure: 'Mueva la esquina que está fuera de lugar, o compruebe cómo se midió.',
  }),
  'boundary-misclosure': ({ misclosure, ratio, balanced }, { thing, length }) => ({
    text: `Los lados ${of(thing)} terminan a ${length(misclosure)} de donde empezaron, ${ratioText(ratio)} de su longitud${balanced ? '; ese error de cierre está repartido entre ellos por la regla de la brújula' : ''}.`,
    cure:
      ratio < 1 / settings.misclosure.value
        ? `Compare cada lado con el plano del lote: más de ${ratioText(1 / settings.misclosure.value)} suele ser un error en uno de ellos.`
        : balanced
          ? 'Compare cada lado con el plano del lote, o déjelo como está.'
          : 'Compare cada lado con el plano del lote, o reparta el error por la regla de la brújula.',
  }),
  'cannot-balance': ({ because }, { thing }) =>
    because === 'no-closing'
      ? {
          text: `Los lados ${of(thing)} no se pueden compensar: no se midió el último, el que vuelve a la primera esquina.`,
          cure: 'Dé el último lado con su dirección y distancia, o quite la compensación.',
        }
      : {
          text: `El contorno no se puede compensar: ${thing} tiene un lugar propio y no sigue del lado anterior.`,
          cure: 'Dé cada esquina menos la primera con dirección y distancia desde la anterior, o quite la compensación.',
        },

  'north-line-has-no-length': ({ a, b }, { name }) => ({
    text: `El norte se toma de la línea ${of(name(a))} ${to(name(b))}, que no tiene longitud.`,
    cure: 'Elija dos puntos bien separados.',
  }),
  'north-needs-two-control-points': ({ points }) => ({
    text:
      points === 0
        ? 'El norte debe salir de los puntos de control, y ninguno tiene lugar.'
        : 'El norte debe salir de los puntos de control, y uno solo no da dirección.',
    cure: 'Añada un segundo punto de control lejos del primero, o dé el norte con una línea o una brújula.',
  }),
  'control-points-coincide': () => ({
    text: 'Los puntos de control están todos en un mismo lugar, en el croquis o en la tierra, así que no dan dirección.',
    cure: 'Compruebe sus latitudes y longitudes, y elija puntos bien separados.',
  }),
  'control-too-close': ({ sigma, apart }, { length }) => ({
    text: `El norte según los puntos de control solo es seguro a ${angleText(sigma)}: entre ellos hay a lo más ${length(apart)}, poco para su exactitud.`,
    cure: 'Elija puntos más separados, tome otros más exactos, o dé el norte con una línea o una brújula.',
  }),
  'control-scale-differs': ({ scale }) => ({
    text: `Los puntos de control están ${percentText(Math.abs(scale - 1))} más ${scale > 1 ? 'separados' : 'juntos'} en la tierra que en el croquis.`,
    cure: 'Compruebe sus latitudes y longitudes, y las longitudes del croquis y su unidad.',
  }),
  'control-inaccurate': ({ accuracy, limit }, { thing, length }) => ({
    text: `El punto de control en ${thing} solo es seguro a ${length(accuracy)}; más de ${length(limit)} no sirve en un terreno así.`,
    cure: 'Espere a cielo abierto hasta que el aparato sea más seguro, o escriba coordenadas de un mapa.',
  }),
  'control-disagrees': ({ residual, accuracy }, { thing, length }) => ({
    text: `El punto de control en ${thing} está a ${length(residual)} de donde debería, y se dijo que era seguro a ${length(accuracy)}.`,
    cure: 'Compruebe su latitud y longitud, y que sea este punto.',
  }),
  'control-too-far': ({ reach }, { thing, length }) => ({
    text: `El punto de control en ${thing} está a más de ${length(reach)} del centro de los puntos de control, así que no se usa.`,
    cure: 'Compruebe su latitud y longitud: una de ellas está mal escrita.',
  }),

  'underlay-span-is-nothing': ({ underlay }) => ({
    text: `La imagen ${underlay} no tiene escala: los dos extremos de su longitud conocida son el mismo lugar.`,
    cure: 'Marque en la imagen dos lugares bien separados.',
  }),
  'underlay-pairs-coincide': ({ underlay }) => ({
    text: `La imagen ${underlay} no se puede ajustar: sus puntos son todos el mismo lugar, en la imagen o en el plano.`,
    cure: 'Elija dos puntos o más que estén bien separados.',
  }),
  'underlay-pair-disagrees': ({ underlay, pair, by }, { length }) => ({
    text: `El punto ${pair} de la imagen ${underlay} está a ${length(by)} de donde los demás lo ponen.`,
    cure: 'Márquelo de nuevo en la imagen, o compruebe el punto del plano que se le dio.',
  }),

  'path-too-few-points': (_, { thing }) => ({
    text: `${thing} tiene menos de dos puntos con lugar, así que no lleva a ninguna parte.`,
    cure: 'Corrija los puntos que no tienen lugar, o añada uno.',
  }),
  'path-arc-taken-straight': (_, { thing }) => ({
    text: `${thing} es el final de una curva, que una tubería no sigue: el tramo hasta ahí se toma como recto.`,
    cure: 'Ponga el punto donde se encontrarían las tuberías rectas de ambos lados, y dé ahí su radio al codo.',
  }),
  'path-leg-has-no-length': ({ leg }, { thing }) => ({
    text: `El tramo ${leg} ${of(thing)} no tiene longitud: sus dos extremos están en el mismo lugar.`,
    cure: 'Mueva uno de los dos puntos, o quítelo.',
  }),
  'bend-does-not-fit': ({ vertices }, { thing }) => ({
    text:
      vertices === 1
        ? `${thing} tiene un codo sin espacio para su radio, así que se toma más cerrado.`
        : `${thing} tiene ${vertices} codos sin espacio para su radio, así que se toman más cerrados.`,
    cure: 'Compruebe los puntos de ahí, o dé al codo un radio menor.',
  }),
  'branch-apart-from-path': ({ distance }, { thing, length }) => ({
    text: `${thing} termina a ${length(distance)} del punto donde se une a la otra tubería.`,
    cure: 'Ponga su último punto en el punto al que se une.',
  }),

  'slope-too-flat': ({ from, to: end, slope: falls, sigma, least }, { thing, length, slope }) => ({
    text: `${thing} cae ${slope(falls)}, con un margen de ${slope(WITHIN_95 * sigma)} (95 %), entre ${length(from)} y ${length(end)} desde su inicio; el mínimo para su diámetro es ${slope(least)}.`,
    cure: 'Compruebe los dos niveles. Si son correctos, ahí se asentará suciedad: pregunte qué dice el código local antes de volver a tenderla.',
  }),
  'slope-against-flow': ({ from, to: end, slope: falls, sigma }, { thing, length, slope }) => ({
    text: `${thing} sube con el flujo entre ${length(from)} y ${length(end)} desde su inicio: ${slope(-falls)}, con un margen de ${slope(WITHIN_95 * sigma)} (95 %).`,
    cure: 'Compruebe los dos niveles, y hacia dónde corre el agua. Si son correctos, ahí se estanca el agua.',
  }),
  'slope-unsure': (
    { from, to: end, slope: falls, sigma, least, others, whole },
    { thing, length, slope },
  ) => ({
    text: `Entre ${length(from)} y ${length(end)} desde su inicio ${thing} cae ${slope(falls)}, con un margen de ${slope(WITHIN_95 * sigma)} (95 %): los niveles no dicen si alcanza el mínimo para su diámetro, ${slope(least)}.${
      others > 0 ? ' Otros tramos no son más seguros.' : ''
    }${whole ? ' Del primer nivel al último sí cae lo suficiente.' : ''}`,
    cure: 'Tome ahí niveles más seguros, o más separados, si importa.',
  }),
  'levels-disagree': ({ by, allowed, a, b }, { name, length }) => ({
    text: `Los niveles de la tubería según ${name(a)} y según ${name(b)} difieren en ${length(by)}; hasta ${length(allowed)} no sería raro.`,
    cure: 'Mida los dos de nuevo, o quite el que está mal.',
  }),
  'invert-above-ground': ({ by, station }, { thing, length }) => ({
    text: `Según ${thing} el fondo de la tubería queda ${length(by)} por encima del terreno, a ${length(station)} del inicio de la tubería.`,
    cure: 'Compruebe ese nivel y los del terreno cercano, y que se cuenten desde el mismo banco de nivel.',
  }),

  'run-has-no-entry': (_, { thing }) => ({
    text: `${thing} no tiene una entrada con lugar, así que ninguna de sus lecturas lleva a una marca.`,
    cure: 'Elija por dónde entró la cámara, y dé un lugar a esa entrada.',
  }),
  'run-has-no-path': (_, { thing }) => ({
    text: `${thing} no tiene tubería que seguir, así que ninguna de sus lecturas lleva a una marca.`,
    cure: 'Elija la tubería a la que entró la cámara.',
  }),
  'path-cannot-be-computed': ({ path }, { thing, name }) => ({
    text: `${thing} sigue ${name(path)}, que no se puede calcular.`,
    cure: `Corrija primero lo que se dice ${of(name(path))}.`,
  }),
  'entry-not-on-path': ({ entry, path, distance, reach }, { thing, name, length }) => ({
    text: `${name(entry)}, por donde entra ${thing}, está a ${length(distance)} ${of(name(path))}; a más de ${length(reach)} no se cuenta como parte de la tubería.`,
    cure: 'Dibuje la tubería pasando por la entrada, o ponga la entrada donde está.',
  }),
  'entry-beside-path': ({ entry, path, distance }, { thing, name, length }) => ({
    text: `${name(entry)}, por donde entra ${thing}, está a ${length(distance)} a un lado ${of(name(path))}, así que las lecturas cuentan desde su punto más cercano.`,
    cure: 'Si la entrada está sobre la tubería, ponga ahí un punto de la tubería.',
  }),
  'branch-not-on-run': ({ branch }, { thing, name }) => ({
    text: `${thing} no puede entrar ${to(name(branch))}, que no se une a la tubería por delante de la cámara.`,
    cure: 'Compruebe qué ramales tomó y en qué orden, y dónde se une ese.',
  }),
  'zero-point-not-on-run': (_, { thing }) => ({
    text: `El punto donde se puso a cero ${thing} no está en su camino por las tuberías, así que sus lecturas cuentan desde la entrada.`,
    cure: 'Elija un punto de una tubería por la que pasó la cámara, o diga en qué otro lugar se puso a cero.',
  }),
  'sweep-does-not-fit': ({ riser, sweepRadius }, { thing, length }) => ({
    text: `Para ${thing} se dio un tubo vertical de ${length(riser)}, más corto que los ${length(sweepRadius)} de radio de la curva a su pie.`,
    cure: 'Mida el tubo vertical desde el borde hasta la tubería, o dé a su curva un radio menor.',
  }),

  'reading-before-zero': ({ reading, zero }, { thing, counter }) => ({
    text: `${thing} está antes del cero: la cuenta es ${counter(reading)} y el cero es ${counter(zero)}.`,
    cure: 'Compruebe la lectura, y qué marcaba el contador cuando se puso a cero.',
  }),
  'reading-in-riser': ({ short }, { thing, length }) => ({
    text: `${thing} está todavía en el tubo vertical, a ${length(short)} de llegar a la tubería.`,
    cure: 'Compruebe la longitud del tubo vertical, o déjela como está: no tiene marca.',
  }),
  'reading-off-known-way': ({ beyond, length: known }, { thing, length }) => ({
    text: `${thing} está ${length(beyond)} más allá de la parte conocida del camino, ${length(known)} de cable desde la entrada.`,
    cure: 'Corrija primero qué ramales tomó el recorrido.',
  }),
  'reading-past-end': ({ beyond, length: whole, path }, { thing, name, length }) => ({
    text: `${thing} está ${length(beyond)} más allá del final ${of(name(path))}, que está a ${length(whole)} de cable desde la entrada.`,
    cure: 'Compruebe la lectura, o prolongue el dibujo de la tubería hasta donde termina.',
  }),
  'counter-went-back': ({ before, beforeReading }, { thing, counter }) => ({
    text: `El contador retrocedió: ${thing} viene después de ${before} (${counter(beforeReading)}).`,
    cure: `Si el contador se puso de nuevo en ${before}, indíquelo ahí; si no, compruebe las dos lecturas.`,
  }),
  'reading-in-drop': (_, { thing }) => ({
    text: `${thing} está en una caída vertical, donde el lugar es el mismo y la profundidad cambia.`,
    cure: 'Vea la profundidad de la caída antes de excavar ahí.',
  }),
  'mark-under-building': ({ building }, { mark, name }) => ({
    text: `${mark} está debajo ${of(name(building))}, así que no tiene amarres.`,
    cure: 'Compruebe la tubería y el contorno, o llegue desde adentro.',
  }),
  'paint-under-building': ({ building }, { mark, name }) => ({
    text: `${mark} quedaría debajo ${of(name(building))}, así que no tiene amarres.`,
    cure: 'Elija otra dirección o distancia desde la marca, de modo que la pintura quede al descubierto.',
  }),
  'no-ties': ({ within }, { mark, length }) => ({
    text: `${mark} no tiene dos puntos de referencia a la vista al alcance de una cinta de ${length(within)}.`,
    cure: 'Mida puntos cercanos que se puedan volver a encontrar, como esquinas, postes o hidrantes.',
  }),
  'no-check-tie': (_, { mark }) => ({
    text: `${mark} tiene dos amarres y ninguno más con que comprobarlos.`,
    cure: 'Mida un punto cercano más que se pueda volver a encontrar.',
  }),
  'ties-weak': ({ cut }, { mark }) => ({
    text: `Los dos amarres ${of(mark)} se cruzan a ${angleText(cut)}, así que un error pequeño mueve mucho el punto.`,
    cure: `Mida un punto cercano desde el que una cinta cruce ${goodCut}.`,
  }),
  'tie-from-assumed': ({ from }, { mark, point }) => ({
    text: `Un amarre ${of(mark)} sale ${of(point(from))}, cuyo lugar respecto a la tubería no se midió.`,
    cure: `Mida ${point(from)} desde lo mismo que la tubería.`,
  }),

  'seen-point-not-on-run': (_, { thing }) => ({
    text: `El punto que vio ${thing} no está en su camino por las tuberías, así que no dice dónde está.`,
    cure: 'Elija un punto de una tubería por la que pasó la cámara, o quítelo de la lectura.',
  }),
  'locate-has-no-reading': (_, { thing }) => ({
    text: `${thing} no pertenece a ninguna lectura, así que no se compara con nada.`,
    cure: 'Elija la lectura en la que el receptor encontró ahí la sonda.',
  }),
  'locate-depth-rough': (_, { thing }) => ({
    text: `Se encontró de paso ${thing}, y así no se sabe la profundidad: la que está anotada no se usa.`,
    cure: 'Deténgase sobre el pico y lea la profundidad de nuevo; luego diga cómo se localizó.',
  }),
  'locate-reading-has-no-place': ({ reading }, { thing }) => ({
    text: `${thing} corresponde a la lectura ${reading}, que no tiene lugar, así que no se compara con nada.`,
    cure: `Corrija primero lo que se dice de la lectura ${reading}.`,
  }),

  'pair-of-one-run': ({ a, b }) => ({
    text: `Se dijo que ${a} y ${b} son una sola cosa, y las dos son lecturas del mismo recorrido.`,
    cure: 'Deshaga la pareja, y empareje cada una con una lectura de otro recorrido.',
  }),
  'pair-on-two-paths': ({ a, b, pathA, pathB }, { name }) => ({
    text: `Se dijo que ${a} y ${b} son una sola cosa, y están en dos tuberías: ${name(pathA)} y ${name(pathB)}.`,
    cure: 'Compruebe qué ramales tomaron los dos recorridos, o deshaga la pareja.',
  }),
  'cables-too-short': ({ a, b, pointA, pointB, gap }, { point, length }) => ({
    text: `Se dijo que ${a} y ${b} son una sola cosa, pero los cables hasta ellas desde ${point(pointA)} y desde ${point(pointB)} son, juntos, ${length(gap)} más cortos que la línea recta entre los dos.`,
    cure: `Compruebe las dos lecturas y sus ceros, los lugares ${of(point(pointA))} y ${of(point(pointB))}, o deshaga la pareja.`,
  }),

  ...foundSentences,
};

/** One sentence that names the thing, and one for the way out. */
export function findingText(finding: Finding, site: Site): Said {
  const said = say(finding, {
    thing: targetInText(finding.at, site),
    mark: paintedInText(finding.at, site),
    name: (carried) => spokenName(carried, site),
    point: (key) => targetInText(targetOfKey(key, site), site),
    length: (metres) => lengthText(metres, site.units),
    counter: (metres) => counterText(metres, site.units),
    slope: slopeText,
  });
  return { text: atStart(said.text), cure: atStart(said.cure) };
}

/** What is taped for a reading: its mark, or the paint that stands beside it. */
function paintedInText(at: Target, site: Site): string {
  const mark = markInText(at, site);
  return isPaintBeside(at, site) ? `la pintura junto ${to(mark)}` : mark;
}

function say<Code extends FindingCode>({ code, values }: FindingOf<Code>, speech: Speech): Said {
  return sentences[code](values, speech);
}
