import type { TreeAssumption, TreeFindingValues } from '@footmark/dig';
import type { DigSpeech } from '../digSpeech';
import type { Said } from '../said';
import type { Words } from '../words';
import { of } from './article';
import { leastText, shareText } from './digMeasure';
import { zoneOfRule } from './digZone';
import { andList } from './listText';
import { sureText } from './sureText';

type Sentences = {
  readonly [Code in keyof TreeFindingValues]: (values: TreeFindingValues[Code], speech: DigSpeech) => Said;
};

const missing: Record<TreeAssumption['fact'], string> = {
  tolerance: 'qué tan bien soporta la pérdida de raíces',
  age: 'qué edad tiene',
  condition: 'qué tan sano está',
  'base-diameter': 'qué grosor tiene sobre el cuello de la raíz',
};

const taken: Readonly<Record<string, string>> = {
  poor: 'uno que soporta mal la pérdida de raíces',
  moderate: 'uno que soporta regular la pérdida de raíces',
  good: 'sano',
  mature: 'adulto',
  overmature: 'viejo',
  'trunk-diameter': 'tan grueso como su tronco',
};

const heldWithin = {
  'structural-root-zone': 'su zona de raíces estructurales',
  stability: 'los diámetros que se citan para la estabilidad',
} as const;

/** What is said of trees beside pipes and digs. */
export const treeSentences: Sentences = {
  'tree-without-diameter': ({ tree }, speech) => ({
    text: `Falta el diámetro del tronco ${of(speech.feature(tree))}, así que no se puede decir hasta dónde importan sus raíces.`,
    cure: 'Mida el tronco a la altura del pecho y dé su diámetro.',
  }),
  'tree-facts-assumed': ({ tree, assumed }, speech) => ({
    text: `Nadie ha dicho ${of(speech.feature(tree))} ${andList(assumed.map(({ fact }) => missing[fact]))}; se toma como ${takenAs(assumed)}.`,
    cure: 'Anótelo en la ficha del árbol.',
  }),
  'pipe-in-root-zone': (v, speech) => ({
    text: `${speech.path(v.path)} pasa ${speech.size(v.length)} por ${zoneOfRule[v.zone]} ${of(guarded(v, speech))}, ${
      v.distance < 0 ? 'por debajo de su tronco' : `a ${speech.size(v.distance)} de la cara de su tronco`
    }; el árbol está a la ${v.side === 'left' ? 'izquierda' : 'derecha'} del flujo.`,
    cure:
      v.state === 'proposed'
        ? `Saque la línea de ahí, o perfore por debajo a ${speech.length(v.boreDepth)} o más${v.cover === null ? '' : `, donde se prevén ${speech.size(v.cover)} de recubrimiento, ${v.enough ? 'suficiente' : 'muy poco'}`}; pregunte a un arborista.`
        : `Para reemplazarla, perforar por debajo a ${speech.length(v.boreDepth)} o más respeta las raíces${v.cover === null ? '; no se sabe su recubrimiento' : `; la tubería tiene ${speech.size(v.cover)} de recubrimiento, ${v.enough ? 'suficiente para eso' : 'muy poco para eso'}`}.`,
  }),
  'dig-in-root-zone': (v, speech) => ({
    text: `${speech.dig(v.dig)} ocupa ${leastText(v.atLeast)}${shareText(v.share)} ${of(zoneOfRule[v.zone])} ${of(guarded(v, speech))}.`,
    cure: `Haga la excavación más pequeña con un escudo, ponga la tierra en otro lado, o perfore. ${ask(v)} antes de cortar raíces.`,
  }),
  'spoil-in-root-zone': (v, speech) => ({
    text: `La tierra excavada ${of(speech.dig(v.dig))} cubre ${shareText(v.share)} ${of(zoneOfRule[v.zone])} ${of(guarded(v, speech))}.`,
    cure: 'Póngala del otro lado o en un camión: el peso sobre las raíces las daña.',
  }),
  'dig-in-structural-roots': (v, speech) => ({
    text: `${speech.dig(v.dig)} corta raíces que sostienen ${guarded(v, speech)}, a menos de ${speech.size(v.radius)} del centro de su tronco, ${heldWithin[v.is]}${v.fromTrunk ? ' según el grosor de su tronco' : ''}: puede caer.`,
    cure: `No haga zanja ahí: perfore, o rodéelo. ${ask(v)} primero.`,
  }),
  'minor-encroachment': (v, speech) => ({
    text: `Todas las excavaciones juntas ocupan ${shareText(v.share)} ${of(zoneOfRule[v.zone])} ${of(guarded(v, speech))}, no más de ${shareText(v.limit)}.`,
    cure: 'Otro tanto de terreno se debe proteger junto a la zona.',
  }),
  'major-encroachment': (v, speech) => ({
    text: `Todas las excavaciones juntas ocupan ${shareText(v.share)} ${of(zoneOfRule[v.zone])} ${of(guarded(v, speech))}${
      v.structural ? ', y cortan raíces que lo sostienen' : `, más de ${shareText(v.limit)}`
    }.`,
    cure: 'Hágalas más pequeñas o perfore; un arborista debe demostrar que el árbol sigue sano.',
  }),
};

function ask(v: { readonly protected: boolean }): string {
  return v.protected ? 'Pregunte a un arborista y a quien protege el árbol' : 'Pregunte a un arborista';
}

function takenAs(assumed: readonly TreeAssumption[]): string {
  return andList(assumed.map(({ as }) => taken[as] ?? as));
}

/** Of a zone: what nobody gave, and what the tree was taken as for it. */
export const treeTakenText: Words['treeTakenText'] = (assumed) => `Se toma como ${takenAs(assumed)}.`;

export const boreText: Words['boreText'] = ({ asked, cover, enough }, units) => {
  const deep = `La perforación por debajo debe ir a ${sureText(asked, units)} de profundidad`;
  if (cover === null || enough === null) return `${deep}; no se sabe el recubrimiento de la tubería.`;
  const has = `la tubería tiene ${sureText(cover, units)} de recubrimiento`;
  return `${deep}; ${has}, que ${enough ? 'es suficiente' : 'es muy poco'}.`;
};

function guarded({ tree, protected: isProtected }: { tree: string; protected: boolean }, speech: DigSpeech) {
  return isProtected ? `${speech.feature(tree)}, que está protegido` : speech.feature(tree);
}
