import type { PairExplanation, Site, SiteAccuracy } from '@footmark/site';
import { counterText, lengthText } from '../measureText';
import { atStart } from '../named';
import type { PairProblem } from '../pairProblem';
import { percentText } from '../percentText';
import type { Said } from '../said';
import { scaleText } from '../sightings';
import { of } from './article';
import { runInText } from './evidenceText';
import { surpriseText } from './fitText';
import { sureText } from './sureText';

/** Why two readings cannot be said to have seen one thing. */
export const pairProblemTexts: Record<PairProblem, string> = {
  itself: 'Es la misma lectura dos veces. Elija una de cada recorrido.',
  'one-run': 'Las dos son del mismo recorrido. Una pareja es de dos recorridos que vieron una misma cosa.',
  paired: 'Estas dos ya forman pareja.',
};

/** How far apart two runs have one thing, and how surprising that is. */
export function apartText(
  { closure, sigma }: Readonly<{ closure: number; sigma: number }>,
  site: Site,
): string {
  return `Como se muestran, están a ${sureText(closure, site.units)} entre sí: ${surpriseText(closure / sigma)}.`;
}

/** What one thing alone would have to be to make two runs agree. */
export function explanationText(explanation: PairExplanation, site: Site): string {
  const { units } = site;
  const { by, wouldBe } = explanation;
  const more = by > 0 ? 'más' : 'menos';
  switch (explanation.is) {
    case 'zero':
      return `El contador ${of(runInText(explanation.run, site))} tendría que haber marcado ${counterText(wouldBe, units)} en su cero, ${sureText(by, units)} ${more} de lo que se dijo.`;
    case 'riser':
      return `${atStart(runInText(explanation.run, site))} tendría que tener ${lengthText(wouldBe, units)} de cable entre su cero y la tubería, ${sureText(by, units)} ${more} de lo que se dijo.`;
    case 'scale':
      return `El contador ${of(runInText(explanation.run, site))} tendría que contar × ${scaleText(wouldBe)}, ${percentText(Math.abs(by / (wouldBe - by)))} ${more} de lo que se dijo.`;
    case 'pipe':
      return `La tubería entre las dos entradas tendría que medir ${lengthText(wouldBe, units)}, ${sureText(by, units)} ${more} de lo que se dibujó.`;
  }
}

const CHECKS = {
  receiver: {
    one: 'localización',
    several: 'localizaciones',
    computed: { one: 'el cálculo pone la sonda', several: 'el cálculo pone la sonda' },
  },
  digging: {
    one: 'marca que se descubrió',
    several: 'marcas que se descubrieron',
    computed: { one: 'la pone el cálculo', several: 'las pone el cálculo' },
  },
} as const;

/** How well the computation agrees on this site with the receiver, or with what was laid bare, and what that is worth. */
export function accuracyText(
  accuracy: SiteAccuracy,
  { units }: Site,
  by: 'receiver' | 'digging' = 'receiver',
): Said {
  const { count, enough, independent } = accuracy;
  const { one, several, computed } = CHECKS[by];
  const off =
    count === 1
      ? `La única ${one} está a ${sureText(accuracy.rmse, units)} de donde ${computed.one}.`
      : `Las ${count} ${several} están, en conjunto, a ${sureText(accuracy.rmse, units)} de donde ${computed.several}; según ellas, 19 de cada 20 quedan dentro de ${sureText(accuracy.accuracy, units)}.`;
  return {
    text: off,
    cure: [
      ...(independent
        ? []
        : ['Las líneas se ajustaron a algunas de ellas, así que esto no es una segunda opinión.']),
      ...(enough ? [] : ['Son pocas: hacen falta 20 para declarar una exactitud.']),
    ].join(' '),
  };
}
