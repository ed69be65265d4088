import type { FileProblem, OpenFailure } from '@footmark/site';
import { filePathText } from '../filePath';
import { holdsNoNumber, megabytesText } from '../fileProblem';
import type { SaidOfFile } from '../said';

const problemNames: Record<FileProblem['code'], (detail: string) => string> = {
  'wrong-value': (detail) => `este valor no sirve (${detail})`,
  'unknown-field': (detail) => `un sitio no tiene aquí un campo llamado ${JSON.stringify(detail)}`,
  missing: () => 'esto falta',
  'duplicate-id': (name) => `el id ${JSON.stringify(name)} ya se usó antes`,
  'unknown-point': (name) => `no existe el punto ${JSON.stringify(name)}`,
  'unknown-path': (name) => `no existe la tubería ${JSON.stringify(name)}`,
  'unknown-entry': (name) => `no existe la cosa ${JSON.stringify(name)}`,
  'unknown-visit': (name) => `no existe la visita ${JSON.stringify(name)}`,
  'unknown-reading': (name) => `no existe la lectura ${JSON.stringify(name)}`,
  'paired-with-itself': (name) => `la lectura ${JSON.stringify(name)} forma pareja consigo misma`,
  'length-to-itself': (name) => `esta longitud empieza y termina en el punto ${JSON.stringify(name)}`,
  'dig-out-of-order': (name) => `la zanja ${JSON.stringify(name)} termina antes de empezar`,
  'nothing-before': (name) =>
    `el punto ${JSON.stringify(name)} se mide desde puntos anteriores, y son muy pocos`,
  'depends-on-itself': (name) =>
    `el punto ${JSON.stringify(name)} se mide, por medio de otros, desde sí mismo`,
  'joins-itself': (name) => `la tubería ${JSON.stringify(name)} se une, por medio de otras, a sí misma`,
  'stretches-out-of-order': (from) =>
    `los tramos empiezan en 0 y cada uno más adelante que el anterior; este está en ${from}`,
};

const NO_NUMBER_HINT =
  'NaN e Infinity no son números que se puedan medir: ponga ahí el número medido, o quite el campo.';

/** Why a file could not be opened, what to do, and each place in it that is wrong with the path to it. */
export function fileProblemText(failure: OpenFailure): SaidOfFile {
  switch (failure.code) {
    case 'too-large':
      return {
        text: `El archivo es demasiado grande para un sitio: ${megabytesText(failure.characters)}, y el máximo es ${megabytesText(failure.most)}.`,
        cure: 'Compruebe que sea el archivo correcto.',
        problems: [],
      };
    case 'not-json':
      return {
        text: 'El archivo no es JSON, así que no es un sitio o se dañó en el camino.',
        cure: holdsNoNumber(failure) ? NO_NUMBER_HINT : 'Vuelva a obtener el archivo de donde se escribió.',
        problems: notJsonPlaces(failure),
      };
    case 'not-a-site':
      return {
        text: 'El archivo es JSON, pero no es un sitio.',
        cure: 'Elija un archivo que se haya guardado como sitio; arriba dice "format": "footmark-site".',
        problems: [],
      };
    case 'newer-version':
      return {
        text: `El archivo es de la versión ${failure.version}, y este programa conoce hasta la versión ${failure.known}.`,
        cure: 'Ábralo con una versión más nueva del programa; el archivo se dejó como está.',
        problems: [],
      };
    case 'invalid': {
      const problems = failure.problems.map(problemText);
      const more = failure.more === 0 ? [] : [`y ${failure.more} más`];
      const count = failure.problems.length + failure.more;
      return {
        text:
          count === 1
            ? 'El archivo no es un sitio correcto: un lugar en él está mal.'
            : `El archivo no es un sitio correcto: ${count} lugares en él están mal.`,
        cure: holdsNoNumber(failure)
          ? NO_NUMBER_HINT
          : 'Corrija esos lugares en el archivo, o vuelva a obtenerlo de donde se escribió.',
        problems: [...problems, ...more],
      };
    }
  }
}

function problemText({ code, path, detail }: FileProblem): string {
  return `${filePathText(path) || 'todo el archivo'}: ${problemNames[code](detail)}`;
}

function notJsonPlaces({ position, near }: Extract<OpenFailure, { code: 'not-json' }>): readonly string[] {
  if (position === null && near === '') return [];
  const where = position === null ? 'en algún lugar' : `carácter ${position + 1}`;
  return [near === '' ? where : `${where}, cerca de ${JSON.stringify(near)}`];
}
