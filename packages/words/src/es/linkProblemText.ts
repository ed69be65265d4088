import type { LinkProblem } from '@footmark/link';
import { countText } from '../countText';
import { percentText } from '../percentText';
import type { Said, SaidOfFile } from '../said';
import { answerProblemText } from './answerProblemText';
import { fileProblemText } from './fileProblemText';

const ANEW = 'Escanee el código otra vez, o pida el enlace de nuevo.';
const AS_A_FILE = 'Envíe el sitio como archivo.';
const ASK_FOR_FILE = 'Pida el sitio como archivo.';

/** Why a link or a QR symbol cannot be opened or made, and what to do. */
export function linkProblemText(problem: LinkProblem): SaidOfFile {
  if (problem.code === 'not-an-answer') {
    const { text, cure, problems } = answerProblemText(problem.because);
    return { text, cure, problems };
  }
  if (problem.code !== 'not-a-site') return { ...said(problem), problems: [] };
  if (problem.because.code === 'newer-version') return { ...newer(), problems: [] };
  return {
    text: 'El enlace llegó entero, pero el sitio que trae no es correcto. No se abrió nada de él.',
    cure: ASK_FOR_FILE,
    problems: fileProblemText(problem.because).problems,
  };
}

function said(problem: Exclude<LinkProblem, { code: 'not-a-site' | 'not-an-answer' }>): Said {
  switch (problem.code) {
    case 'not-a-link':
      return {
        text: 'Este no es un enlace a un sitio.',
        cure: 'Escanee el código otra vez, o copie el enlace entero hasta su último carácter.',
      };
    case 'too-long':
      return {
        text: `El enlace es demasiado largo: ${countText(problem.characters)} caracteres, y el máximo es ${countText(problem.most)}.`,
        cure: ASK_FOR_FILE,
      };
    case 'cut-off':
      return {
        text: `El enlace se cortó en el camino: solo llegó el ${percentText(problem.have / problem.of)}.`,
        cure: 'Copie el enlace entero hasta su último carácter. Si los mensajes cortan los enlaces largos, pida un archivo.',
      };
    case 'damaged':
      return {
        text: 'El enlace cambió en el camino: su comprobación no da el resultado correcto.',
        cure: ANEW,
      };
    case 'newer-coding':
    case 'newer-version':
      return newer();
    case 'other-shape':
      return {
        text: 'El enlace se hizo con una versión de prueba de Footmark, y esta no lo lee.',
        cure: ASK_FOR_FILE,
      };
    case 'other-kind':
      return {
        text: 'El enlace llegó entero, pero lo que trae no es un sitio.',
        cure: 'Pregunte a quien lo envió para qué es; una versión más nueva de Footmark quizá lo conozca.',
      };
    case 'not-unpacked':
      return {
        text: 'Lo que trae el enlace no se puede desempacar: no lo hizo Footmark, o es demasiado grande.',
        cure: ASK_FOR_FILE,
      };
    case 'too-large':
      return { text: 'El sitio es demasiado grande para un enlace.', cure: AS_A_FILE };
    case 'too-many-symbols':
      return {
        text: `El sitio necesitaría ${countText(problem.needed)} códigos QR, más de los que alguien escanearía.`,
        cure: 'Deje fuera lo que no tiene que ir, o envíe el enlace o un archivo.',
      };
    case 'other-set':
      return {
        text: 'Este código es de otro juego que los que se escanearon antes.',
        cure: 'Escanee los códigos de una sola hoja, o empiece de nuevo con este.',
      };
  }
}

function newer(): Said {
  return {
    text: 'El enlace se hizo con una versión más nueva de Footmark.',
    cure: 'Vuelva a cargar Footmark mientras haya red, y abra el enlace otra vez.',
  };
}
