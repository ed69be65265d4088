import { isEvidence, type RunsFit, type Site } from '@footmark/site';
import {
  chanceOf,
  countedEvidence,
  furthestMove,
  looseTags,
  TEST_CHANCE,
  timesOf,
  worstEvidence,
} from '../fitFacts';
import type { Said } from '../said';
import { evidenceInText } from './evidenceText';
import { orList } from './listText';
import { sureText } from './sureText';

/** How surprising a misfit is, from how many of its own standard deviations it comes to. */
export function surpriseText(standardized: number): string {
  const chance = chanceOf(standardized);
  if (chance === null) return 'como se espera';
  return `${timesOf(standardized)} veces lo normal, una probabilidad menor que 1 en ${chance}`;
}

/** What is said where no fit is there to show: it is on its way, could not be made, or has nothing to be made of. */
export function noFitText({ busy, failed }: Readonly<{ busy: boolean; failed: boolean }>): string {
  if (busy) return 'Se está ponderando lo que se sabe.';
  if (failed) return 'Lo que se sabe no se pudo ponderar. Las marcas quedan como se dibujaron.';
  return 'Sin un recorrido no hay nada que ponderar.';
}

/** What is said beside a fit of an earlier state of the site; null where it is of this one. */
export function oldFitText({ busy, failed }: Readonly<{ busy: boolean; failed: boolean }>): string | null {
  if (busy) return 'Se está ponderando de nuevo.';
  return failed ? 'El último cambio no se pudo ponderar; esto es de antes.' : null;
}

/** How the evidence stands, and what to do next. */
export function fitText(fit: RunsFit, site: Site): Said {
  switch (fit.status) {
    case 'no-evidence':
      return fit.aside.some(isEvidence)
        ? {
            text: 'Toda la evidencia se dejó a un lado, así que nada comprueba estas marcas.',
            cure: 'Vuelva a contar una parte.',
          }
        : { text: 'Todavía nada comprueba estas marcas.', cure: firstEvidence(site) };
    case 'undetermined':
      return {
        text: `Algo no depende de nada${afterColon(looseTags(fit).map((tag) => evidenceInText(tag, site)))}.`,
        cure: 'Vuelva a contar aquello de lo que dependía, o añada lo que se sabe de ahí. El croquis queda como está.',
      };
    case 'not-converged':
      return {
        text: `Ningún lugar concuerda con toda la evidencia${worstOf(fit, site)}.`,
        cure: 'Deje a un lado lo que no puede ser correcto, y vea qué pasa. El croquis queda como está.',
      };
    case 'fitted':
      return fittedText(fit, site);
  }
}

/** How many things may have been seen from two runs, and that saying so helps. */
export function suggestedText(count: number): string {
  return count === 1
    ? 'Es posible que una cosa se haya visto desde dos recorridos. Si fue así, indíquelo: cada marca será más segura.'
    : `Es posible que ${count} cosas se hayan visto desde dos recorridos. Donde fue así, indíquelo: cada marca será más segura.`;
}

/** What the misfit of it all means; null where nothing checks anything. */
export function misfitText({ sigma0, test }: RunsFit): Said | null {
  if (sigma0 === null || test === null) return null;
  const text = `En conjunto, la diferencia es ${timesOf(sigma0)} veces lo esperado.`;
  return test.passed
    ? { text, cure: 'No es señal de un error.' }
    : {
        text,
        cure: `Es más de lo que el azar explica: menos de 1 de cada ${TEST_CHANCE} sitios correctos sale así.`,
      };
}

function fittedText(fit: RunsFit, site: Site): Said {
  const [worst] = fit.blunders;
  const [only, ...others] = worst ?? [];
  if (only !== undefined && others.length === 0) {
    return {
      text: `No concuerda ${evidenceInText(only.tag, site)}: ${surpriseText(only.standardized)}.`,
      cure: 'Vea cuánto tendría que ser. Compruébelo, o déjelo a un lado y vea qué pasa.',
    };
  }
  if (worst !== undefined && only !== undefined) {
    return {
      text: `Algo de esto está mal, y nada dice qué: ${orList(worst.map((s) => evidenceInText(s.tag, site)))}.`,
      cure: 'Compruebe cada cosa, o deje una a un lado y vea qué pasa.',
    };
  }
  const count = countedEvidence(fit);
  if (fit.test?.passed === false) {
    return {
      text: `La evidencia concuerda menos de lo que debería: la diferencia es ${timesOf(fit.sigma0 ?? 0)} veces lo esperado.`,
      cure: 'Nada destaca por sí solo. Compruebe qué tan segura es cada medida, o encuentre una lectura más con el receptor.',
    };
  }
  const text = count === 1 ? 'Una evidencia concuerda.' : `${count} evidencias concuerdan.`;
  return { text, cure: movedText(fit, site) };
}

function movedText(fit: RunsFit, { units }: Site): string {
  const by = furthestMove(fit);
  if (by === 0)
    return fit.taken
      ? 'Las marcas están donde el ajuste las pone.'
      : 'Tomar el ajuste deja las marcas donde están.';
  return fit.taken
    ? `Con lo que se sabe desde entonces, tomarlo de nuevo mueve las marcas hasta ${sureText(by, units)}.`
    : `Tomar el ajuste mueve las marcas hasta ${sureText(by, units)}.`;
}

function firstEvidence({ runs }: Site): string {
  return runs.length > 1
    ? 'Diga qué cosas vieron dos recorridos, o encuentre la sonda con un receptor en una o dos lecturas.'
    : 'Encuentre la sonda con un receptor en una o dos lecturas, e indíquelo en su marca.';
}

function worstOf(fit: RunsFit, site: Site): string {
  const worst = worstEvidence(fit);
  return worst === null ? '' : `; lo que menos concuerda es ${evidenceInText(worst, site)}`;
}

function afterColon(names: readonly string[]): string {
  return names.length === 0 ? '' : `: ${names.join(', ')}`;
}
