import type { BlunderGroup, FitObservation, ObservationTag, Site, Units } from '@footmark/site';
import { type BlunderWay, blunderOf } from '../blunder';
import { angleText } from '../measureText';
import { inSentence } from '../named';
import { percentText } from '../percentText';
import { knownLengthOf, markLabel, readingOf, readingOfLocate, tellingMethod } from '../sightings';
import { targetOfPoint } from '../thing';
import { of, to } from './article';
import { choiceNames } from './fieldNames';
import { sureText } from './sureText';
import { featureInText, targetInText } from './thingName';

type Part = Extract<ObservationTag, { is: 'leg' }>['part'];

const legParts: Record<Part, string> = {
  length: 'la longitud',
  direction: 'la dirección',
  turn: 'el giro',
};

/** What an observation of the fit is, as it stands in the middle of a sentence. */
export function evidenceInText(tag: ObservationTag, site: Site): string {
  switch (tag.is) {
    case 'locate':
      return locateInText(tag.feature, site);
    case 'pair': {
      const pair = site.pairs.find((p) => p.id === tag.pair);
      if (pair === undefined) return tag.pair;
      return `que ${markLabel(pair.a.reading, site)} y ${markLabel(pair.b.reading, site)} son una sola cosa`;
    }
    case 'seen':
      return `que ${markLabel(tag.reading, site)} está en ${seenInText(tag.reading, site)}`;
    case 'counter':
      return `el contador en ${markLabel(tag.reading, site)}`;
    case 'length': {
      const known = knownLengthOf(tag, site);
      const name = of(targetInText({ kind: 'path', id: tag.path }, site));
      return known === undefined
        ? `la longitud conocida ${name}`
        : `la longitud conocida ${name} de ${known.from.toUpperCase()} a ${known.to.toUpperCase()}`;
    }
    case 'bend':
      return `el accesorio en ${pointInText(tag, site)}`;
    case 'scale':
      return `la escala del contador ${of(runInText(tag.run, site))}`;
    case 'zero':
      return `el cero ${of(runInText(tag.run, site))}`;
    case 'riser':
      return `el tubo vertical ${of(runInText(tag.run, site))}`;
    case 'point':
      return `el lugar ${of(pointInText(tag, site))}`;
    case 'leg':
      return `${legParts[tag.part]} del tramo ${to(pointInText(tag, site))}`;
    case 'stray':
      return `lo recto del tramo ${to(pointInText(tag, site))}`;
  }
}

function legOffText({ tag, residual }: FitObservation, units: Units): string {
  const off = Math.abs(residual);
  return `${tag.is === 'leg' && tag.part !== 'length' ? angleText(off) : sureText(off, units)} de diferencia`;
}

/** How far off an observation came out. `parts`: all of one name. */
export function offText(parts: readonly FitObservation[], { units }: Site): string {
  const [first] = parts;
  if (first === undefined) return '';
  const { tag } = first;
  const off = Math.hypot(...parts.map((p) => p.residual));
  switch (tag.is) {
    case 'bend':
      return `${angleText(off)} de diferencia`;
    case 'scale':
      return `${percentText(off)} de diferencia`;
    case 'leg':
      return parts.map((p) => legOffText(p, units)).join(' y ');
    case 'pair':
      return `a ${sureText(off, units)} entre sí`;
    default:
      return `${sureText(off, units)} de diferencia`;
  }
}

const WAYS: Record<BlunderWay, string> = {
  upstream: 'aguas arriba',
  downstream: 'aguas abajo',
  left: 'a la izquierda, mirando con el flujo',
  right: 'a la derecha, mirando con el flujo',
  'plan-left': 'a la izquierda en el plano',
  'plan-right': 'a la derecha en el plano',
  'plan-down': 'hacia abajo en el plano',
  'plan-up': 'hacia arriba en el plano',
  'line-back': 'hacia atrás por su línea',
  'line-on': 'hacia adelante por su línea',
  'line-left': 'a la izquierda de su línea',
  'line-right': 'a la derecha de su línea',
};

/** What the only wrong one would have to be, in a sentence. */
export function blunderText(suspect: BlunderGroup[number], site: Site): string {
  const found = blunderOf(suspect, site);
  const by = 'by' in found ? sureText(found.by, site.units) : '';
  switch (found.is) {
    case 'elsewhere':
      return `Tendría que estar ${by} más ${WAYS[found.way]}.`;
    case 'two-things':
      return `Tendrían que ser dos cosas, a ${by} una de otra.`;
    case 'off':
      return `Tiene un error de ${by}.`;
    case 'seen':
      return `Tendría que estar ${by} ${found.short ? 'antes' : 'después'} ${of(seenInText(found.reading, site))}.`;
    case 'counter':
      return `Dice ${found.said} y tendría que decir ${found.wouldBe}.`;
    case 'zero':
      return `Se dijo que el contador marcaba ${found.said} ahí; tendría que ser ${found.wouldBe}.`;
    case 'given':
      return `Se dio como ${found.said} y tendría que ser ${found.wouldBe}.`;
    case 'scale':
      return `Se toma como × ${found.said} y tendría que ser × ${found.wouldBe}.`;
    case 'turn':
      return `Gira ${found.said} y tendría que girar ${found.wouldBe}.`;
    case 'riser':
      return `Tendría que haber ${by} ${found.more ? 'más' : 'menos'} de cable en él.`;
    case 'stray':
      return `La tubería tendría que desviarse ${by} más ${WAYS[found.way]}.`;
    case 'unexplained':
      return 'Ningún valor posible lo explicaría por sí solo.';
  }
}

function locateInText(id: string, site: Site): string {
  const feature = site.features.find((f) => f.id === id);
  if (feature === undefined) return id;
  const reading = readingOfLocate(feature);
  if (reading === null) return featureInText(feature);
  const name = `${feature.name || 'la localización'} en ${markLabel(reading, site)}`;
  const method = tellingMethod(feature, site);
  return method === undefined ? name : `${name} (${inSentence(choiceNames[method])})`;
}

function seenInText(reading: string, site: Site): string {
  const seenAt = readingOf(reading, site)?.reading.seenAt;
  return seenAt === undefined ? 'el punto que vio' : targetInText(targetOfPoint(seenAt, site), site);
}

function pointInText(
  { path, vertex }: { readonly path: string; readonly vertex: string },
  site: Site,
): string {
  return targetInText(targetOfPoint({ of: path, at: vertex }, site), site);
}

export function runInText(id: string, site: Site): string {
  return targetInText({ kind: 'run', id }, site);
}
