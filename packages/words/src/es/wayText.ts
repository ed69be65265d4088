import { boredLength, type Way, type WayFacts, type WayIs } from '@footmark/reroute';
import { formatDiameter, type Site, type Units } from '@footmark/site';
import { volumeText } from '../amountText';
import { angleText } from '../measureText';
import { atStart, inSentence } from '../named';
import type { WayRow } from '../said';
import { type Asked, askedBefore, bendCount, mostRooted, nearestOf, partsOf } from '../wayFacts';
import { coverAsked, type WayPipe, wayMaterials } from '../wayMaterials';
import { of } from './article';
import { areaText, shareText } from './digMeasure';
import { materialNames } from './drainNames';
import { belowGroundText, dropText } from './heightText';
import { andList } from './listText';
import { sureText } from './sureText';
import { targetInText, targetTitle } from './thingName';

export const wayNames: Record<WayIs, string> = {
  new: 'Tubería nueva en zanja',
  bored: 'Tubería nueva, perforada bajo las raíces',
  repair: 'Tubería vieja excavada y tendida de nuevo',
  'in-place': 'Tubería vieja reventada o encamisada desde fosos',
  drawn: 'Como está dibujada',
};

/** What a way is in a line: how long, with how many bends, what of root zones it takes. */
export function wayText({ facts, bored }: Way, site: Site): string {
  const { units } = site;
  const bends = bendCount(facts);
  const most = mostRooted(facts);
  return [
    sureText(facts.length, units),
    bends === 0 ? 'ningún codo' : bends === 1 ? '1 codo' : `${bends} codos`,
    most === null ? 'ninguna zona de raíces' : rootsText(most, site),
    ...(bored.length === 0 ? [] : [`${sureText(boredLength(bored), units)} sin zanja`]),
  ].join(', ');
}

/** The side alone may be what tells one way from another. */
function rootsText({ tree, share, side }: WayFacts['trees'][number], site: Site): string {
  const roots = `${shareText(share)} de las raíces ${of(targetInText({ kind: 'feature', id: tree }, site))}`;
  if (side !== 'left' && side !== 'right') return roots;
  return `${roots} por su ${side === 'left' ? 'izquierda' : 'derecha'}`;
}

/** What a way takes, row by row; the same rows in the same order for every way. */
export function wayRows(way: Way, site: Site): readonly WayRow[] {
  const { facts, bored, branches } = way;
  const { units } = site;
  const length = (metres: number) => sureText(metres, units);
  const feature = (id: string) => targetInText({ kind: 'feature', id }, site);
  return [
    { name: 'Longitud de tubería', text: length(facts.length) },
    { name: 'Codos', text: bendsText(facts) },
    { name: 'Materiales', text: materialsText(way, site) },
    { name: 'Caída', text: fallText(facts, site) },
    { name: 'Recubrimiento mínimo', text: coverText(facts, site) },
    { name: 'Zanja', text: facts.dug.length === 0 ? 'ninguna' : trenchText(facts, length) },
    { name: 'Sin zanja', text: bored.length === 0 ? 'nada' : length(boredLength(bored)) },
    {
      name: 'Tierra excavada',
      text: facts.dug.volume === null ? 'no se conoce' : volumeText(facts.dug.volume, units),
    },
    {
      name: 'Superficies que reponer',
      text: joined(
        [
          [facts.dug.paved, 'de pavimento'],
          [facts.dug.lawn, 'de césped'],
          [facts.dug.beyond, 'fuera del lote'],
        ],
        (squareMetres) => areaText(squareMetres, units),
        'ninguna',
      ),
    },
    {
      name: 'Zonas de raíces',
      text:
        facts.trees.length === 0
          ? 'ninguna'
          : atStart(
              andList(
                facts.trees.map(
                  (t) => `${shareText(t.share)} ${of(feature(t.tree))}, ${length(t.length)} de tubería`,
                ),
              ),
            ),
    },
    { name: 'Lo más cercano', text: nearestText(facts, site) },
    {
      name: 'Otros servicios que cruza',
      text: facts.services.length === 0 ? 'ninguno' : atStart(andList(facts.services.map(feature))),
    },
    {
      name: 'Terreno que no es de la casa',
      text: joined(
        [
          [facts.public, 'público'],
          [facts.shared, 'compartido'],
          [facts.others, 'ajeno'],
          [facts.unknownLand, 'no se sabe de quién'],
        ],
        length,
        'ninguno',
      ),
    },
    {
      name: 'Ramales que pasar a la nueva',
      text:
        branches.length === 0
          ? 'ninguno'
          : atStart(andList(branches.map((id) => targetInText({ kind: 'path', id }, site)))),
    },
    {
      name: 'Registros que poner',
      text:
        facts.cleanouts.missing.length === 0
          ? 'ninguno'
          : `${facts.cleanouts.missing.length} de ${facts.cleanouts.asked} exigidos, a los ${andList(facts.cleanouts.missing.map(length))}`,
    },
    { name: 'A quién preguntar', text: atStart(andList(askedBefore(facts, site).map((who) => asked[who]))) },
  ];
}

function bendsText({ bends }: WayFacts): string {
  if (bends.length === 0) return 'ninguno';
  return bends.map(({ name, turn, count }) => `${count} × ${name ?? angleText(turn)}`).join(', ');
}

/** What has to be brought for it. */
function materialsText(way: Way, { units }: Site): string {
  const { pipe, pulled, bends, cleanouts } = wayMaterials(way);
  return [
    `${sureText(way.facts.length, units)} de ${pipeText(pipe, units)}`,
    ...(pulled === null ? [] : [`${sureText(pulled, units)} de ella apta para jalarse`]),
    ...bends.map(({ name, turn, count }) => `${count} × codo ${name ?? `de ${angleText(turn)}`}`),
    ...(cleanouts === 0 ? [] : [cleanouts === 1 ? '1 registro' : `${cleanouts} registros`]),
  ].join(', ');
}

function pipeText(pipe: WayPipe, { diameter }: Units): string {
  switch (pipe.is) {
    case 'anew':
      return 'tubería nueva';
    case 'in-place':
      return 'encamisado o de tubería jalada';
    case 'not-said':
      return 'tubería';
    case 'laid': {
      const material = pipe.material === null ? '' : ` de ${inSentence(materialNames[pipe.material])}`;
      return `tubería${material} de ${formatDiameter(pipe.diameter, diameter)}`;
    }
  }
}

/** With what is asked for where that is more. */
function coverText(facts: WayFacts, { units }: Site): string {
  if (facts.cover === null) return 'no se conoce';
  const asked = coverAsked(facts).map(({ by, metres }) =>
    by === 'rule'
      ? `exigido ${sureText(metres, units)}`
      : `la helada llega a ${sureText(metres, units)} de profundidad`,
  );
  return [belowGroundText(facts.cover, units), ...asked].join(', ');
}

function fallText({ fall: { required, available } }: WayFacts, { units }: Site): string {
  const needs = `necesita ${sureText(required, units)}`;
  if (available === null) return `${needs}, no se sabe cuánta tiene`;
  return `${needs}, ${available < 0 ? '' : 'tiene '}${dropText(available, units)}`;
}

function trenchText({ dug }: WayFacts, length: (metres: number) => string): string {
  const deep =
    dug.deepest === null ? 'profundidad no conocida' : `hasta ${length(dug.deepest)} de profundidad`;
  return `${length(dug.length)}, ${deep}`;
}

function joined(
  parts: readonly (readonly [number | null, string])[],
  print: (value: number) => string,
  none: 'ninguna' | 'ninguno',
): string {
  const found = partsOf(parts);
  if (found === null) return 'no se conoce';
  return found.length === 0 ? none : found.map(([value, what]) => `${print(value)} ${what}`).join(', ');
}

function nearestText(facts: WayFacts, site: Site): string {
  const nearest = nearestOf(facts);
  if (nearest === null) return 'nada';
  const { feature, distance, required, toCentre } = nearest;
  return [
    `${targetTitle({ kind: 'feature', id: feature }, site)} a ${sureText(distance, site.units)}`,
    ...(toCentre ? ['hasta su centro'] : []),
    ...(required === null || required === 0 ? [] : [`exigido ${sureText(required, site.units)}`]),
  ].join(', ');
}

const asked: Record<Asked, string> = {
  'one-call': 'el centro de llamada única',
  'street-owner': 'el dueño de la calle',
  'easement-holder': 'el titular de la servidumbre',
  neighbour: 'el vecino',
  arborist: 'un arborista y quien protege el árbol',
};

/** A thing that a route minds, as it stands inside a sentence. */
export function mindedInText(id: string, feature: string, site: Site): string {
  if (id === 'beyond') return 'el terreno fuera del lote';
  const name = targetInText({ kind: 'feature', id: feature }, site);
  return id.startsWith('roots/') ? `las raíces ${of(name)}` : name;
}

/** The same as a label. */
export function mindedName(id: string, feature: string, site: Site): string {
  if (id === 'beyond') return 'Terreno fuera del lote';
  if (!id.startsWith('roots/')) return targetTitle({ kind: 'feature', id: feature }, site);
  return `Raíces ${of(targetInText({ kind: 'feature', id: feature }, site))}`;
}
