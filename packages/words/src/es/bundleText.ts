import type { BundleFailure, BundleNote } from '../bundle';
import { megabytesText } from '../fileProblem';
import { quotedNames } from '../quotedNames';
import type { SaidOfFile } from '../said';
import { fileProblemText } from './fileProblemText';

const AGAIN = 'Vuelva a obtener el archivo de donde se escribió.';
const RIGHT_FILE = 'Compruebe que sea el archivo correcto.';
const A_BUNDLE = 'Elija un archivo que se haya guardado como paquete.';
const NO_TRUST = 'No confíe en este archivo; pregunte a quien lo envió.';

/** Why a bundle of a site and its pictures is not opened. */
export function bundleProblemText(failure: BundleFailure): SaidOfFile {
  const said = (text: string, cure: string) => ({ text, cure, problems: [] });
  switch (failure.code) {
    case 'bundle-too-large':
      return said(
        `El archivo es demasiado grande: ${megabytesText(failure.bytes)}, y el máximo es ${megabytesText(failure.most)}.`,
        RIGHT_FILE,
      );
    case 'not-a-bundle':
      return said('El archivo no es un zip, así que no es el paquete de un sitio.', A_BUNDLE);
    case 'bundle-damaged':
      return said('El archivo se dañó o se cortó en el camino.', AGAIN);
    case 'bundle-not-read':
      return said(
        'El zip está cifrado, o comprimido de un modo que aquí no se usa.',
        'Haga que lo escriban de nuevo como un zip común.',
      );
    case 'bundle-too-many-files':
      return said(`Trae más de ${failure.most} archivos.`, RIGHT_FILE);
    case 'bundle-swells':
      return said(`Lo que trae crecería a más de ${megabytesText(failure.most)}. No se desempacó.`, NO_TRUST);
    case 'bundle-path-outside':
      return said(
        `Un archivo en él tiene un nombre que lleva afuera: “${failure.name}”. No se abrió nada de él.`,
        NO_TRUST,
      );
    case 'bundle-name-twice':
      return said(`Dos archivos en él tienen un mismo nombre: “${failure.name}”.`, AGAIN);
    case 'bundle-without-site':
      return said('No trae ningún sitio.', A_BUNDLE);
    case 'bundle-site':
      return fileProblemText(failure.failure);
  }
}

/** What of a bundle was left, or is missing. */
export function bundleNoteText(note: BundleNote): string {
  switch (note.code) {
    case 'unknown-files':
      return `Archivos que no son del sitio, y que se dejaron como están: ${namesText(note.names)}.`;
    case 'not-pictures':
      return `Archivos que deberían ser imágenes y no lo son, y que se dejaron fuera: ${namesText(note.names)}.`;
    case 'pictures-missing':
      return note.count === 1
        ? 'Le falta una imagen del sitio.'
        : `Le faltan ${note.count} imágenes del sitio.`;
    case 'names-not-read':
      return 'No se puede leer cómo se llamaban las imágenes: cada una se llama como su archivo en el zip.';
  }
}

function namesText(names: readonly string[]): string {
  const { shown, more } = quotedNames(names);
  return more === 0 ? shown : `${shown} y ${more} más`;
}
