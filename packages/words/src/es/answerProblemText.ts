import type { AnswerFailure } from '@footmark/site';
import type { SaidOfFile } from '../said';
import { fileProblemText } from './fileProblemText';

/** Why a file is not a crew's answer that can be read, and what to do. */
export function answerProblemText(failure: AnswerFailure): SaidOfFile {
  switch (failure.code) {
    case 'not-an-answer':
      return {
        text: 'El archivo es JSON, pero no es la respuesta de una cuadrilla.',
        cure: 'Elija un archivo que se haya enviado desde la vista de la cuadrilla; arriba dice "format": "footmark-answer".',
        problems: [],
      };
    case 'too-large':
      return {
        text: 'El archivo es demasiado grande para la respuesta de una cuadrilla.',
        cure: 'Compruebe que sea el archivo correcto.',
        problems: [],
      };
    case 'same-id':
      return {
        text: `La respuesta tiene dos anotaciones con el id ${JSON.stringify(failure.id)}, así que se dañó en el camino.`,
        cure: 'Pida a la cuadrilla que la envíe de nuevo.',
        problems: [],
      };
    case 'invalid': {
      const count = failure.problems.length + failure.more;
      return {
        ...fileProblemText(failure),
        text:
          count === 1
            ? 'El archivo no es una respuesta correcta: un lugar en él está mal.'
            : `El archivo no es una respuesta correcta: ${count} lugares en él están mal.`,
        cure: 'Pida a la cuadrilla que la envíe de nuevo.',
      };
    }
    case 'not-json':
      return {
        ...fileProblemText(failure),
        text: 'El archivo no es JSON, así que no es la respuesta de una cuadrilla o se dañó en el camino.',
      };
    case 'newer-version':
      return fileProblemText(failure);
  }
}
