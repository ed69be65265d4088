import type { Blocked, Change, Relaxation, RequestProblem, RouteFault } from '@footmark/route';
import type { Site } from '@footmark/site';
import { angleText, slopeText } from '../measureText';
import type { Said } from '../said';
import { standStraight } from '../trenchSides';
import { of } from './article';
import { acrossText } from './digMeasure';
import { andList } from './listText';
import { sureText } from './sureText';
import { mindedInText } from './wayText';

/** An obstacle of a request, which is a thing of the site or its roots. */
function obstacleName(id: string, site: Site): string {
  return mindedInText(id, id.replace(/^roots\//, ''), site);
}

/** What keeps a route from being one. */
export function blockedText(blocked: Blocked, site: Site): string {
  const names = 'obstacles' in blocked ? andList(blocked.obstacles.map((id) => obstacleName(id, site))) : '';
  switch (blocked.code) {
    case 'ground':
      return `No hay terreno por donde pasar: todo queda cerrado por ${names}.`;
    case 'obstacles':
      return `En el camino: ${names}.`;
    case 'together':
      return names === '' ? 'Lo que se pide no deja ningún camino.' : `En el camino, en conjunto: ${names}.`;
    case 'fall':
      return 'La caída no alcanza para rodear.';
    case 'headings':
      return 'No puede entrar como lo pide una ye.';
    case 'bends':
      return 'Necesitaría más codos de los que se permiten.';
    case 'straight':
      return 'No hay espacio para la tubería recta entre accesorios.';
  }
}

/** The smallest change that opens a way, and how long that way is. */
export function relaxationText({ change, route }: Relaxation, site: Site): string {
  return `${changeText(change, site)}: ${sureText(route.cost.length, site.units)} de tubería.`;
}

function changeText(change: Change, site: Site): string {
  const size = (metres: number) => sureText(metres, site.units);
  switch (change.is) {
    case 'less-clearance': {
      const name = obstacleName(change.obstacle, site);
      return `A ${size(change.to)} ${of(name)} (exigido ${size(change.from)})`;
    }
    case 'through':
      return `A través ${of(obstacleName(change.obstacle, site))}`;
    case 'less-fall':
      return `Con una pendiente de ${slopeText(change.to)} donde se exige ${slopeText(change.from)}`;
    case 'any-heading':
      return 'Entrando desde otro lado';
    case 'more-bends':
      return `Con ${change.to} codos, no ${change.from}`;
    case 'no-straight':
      return 'Con accesorios pegados uno a otro';
  }
}

/** How the sides of a trench have to be kept where it comes so near. */
export function sidesText(slope: number): string {
  return standStraight(slope)
    ? 'Los lados de su zanja quedan entonces rectos: apuntálelos, o use un escudo.'
    : `Los lados de su zanja se cortan entonces en talud de ${acrossText(slope)} a lo más; donde el terreno no se sostenga así, apuntálelos o use un escudo.`;
}

/** What is wrong with what is asked for, and what to change. */
export function routeProblemText({ code, values }: RequestProblem, site: Site): Said {
  const size = (metres: number) => sureText(metres, site.units);
  const obstacle = 'obstacle' in values ? obstacleName(values.obstacle, site) : '';
  switch (code) {
    case 'start-inside':
      return {
        text: `Empezaría ${size(values.depth)} dentro ${of(obstacle)}.`,
        cure: 'Haga que salga de la tubería vieja más abajo, después de eso.',
      };
    case 'end-inside':
      return {
        text: `Volvería ${size(values.depth)} dentro ${of(obstacle)}.`,
        cure: 'Haga que vuelva en otra estación, fuera de eso.',
      };
    case 'start-is-end':
      return { text: 'Empezaría donde termina.', cure: 'Dé dos estaciones separadas.' };
    case 'end-not-lower':
      return {
        text:
          values.rise > 0
            ? `Su final queda ${size(values.rise)} más alto que su inicio.`
            : 'No tiene caída: su final queda al mismo nivel que su inicio.',
        cure: 'Compruebe los niveles de la tubería en las dos estaciones.',
      };
    case 'too-little-fall':
      return {
        text: `Aun en línea recta necesita una caída de ${size(values.needed)}, y hay ${size(values.available)}.`,
        cure: 'Compruebe los niveles, o admita rutas que no caen lo suficiente y pregunte al inspector de códigos.',
      };
    case 'no-ground':
      return {
        text: `A ${size(values.clearance)} ${of(obstacle)} no queda terreno donde tenderla.`,
        cure:
          values.most > 0
            ? `Solo puede ayudar quien pueda permitir menos: con ${size(values.most)} quedaría espacio.`
            : '',
      };
    case 'no-bends':
      return {
        text: 'No hay ningún codo con que girar.',
        cure: 'Dé a las reglas un giro más cerrado para los accesorios.',
      };
    case 'bend-turn':
      return {
        text: `Un codo de ${angleText(values.turn)} no es un codo.`,
        cure: 'Revise las reglas de los codos.',
      };
    case 'bend-laying':
      return { text: 'Un accesorio es más corto que su arco.', cure: 'Revise las reglas de los codos.' };
    case 'too-few-points':
    case 'bad-number':
    case 'no-end':
      return {
        text: 'Algo de lo que se pide no es un número o no es una forma.',
        cure: 'Revise lo que la ruta respeta.',
      };
  }
}

/** What is wrong with a drawn pipe as a route, and what would cure it. `letters`: the names of its points. */
export function routeFaultText({ code, values }: RouteFault, letters: readonly string[], site: Site): Said {
  const size = (metres: number) => sureText(metres, site.units);
  const point = (vertex: number) => letters[vertex] ?? '';
  switch (code) {
    case 'wrong-turn':
    case 'unknown-bend':
      return {
        text:
          code === 'wrong-turn'
            ? `En ${point(values.vertex)} gira ${angleText(Math.abs(values.turn))}, y ningún codo estándar gira así.`
            : `En ${point(values.vertex)} no hay codo.`,
        cure: 'Mueva el punto hasta que gire como un codo, o ponga dos codos.',
      };
    case 'short-leg':
      return {
        text: `De ${point(values.leg)} a ${point(values.leg + 1)} hay ${size(values.length)}; sus accesorios necesitan ${size(values.least)}.`,
        cure: 'Separe los codos, o gire con uno solo.',
      };
    case 'too-near': {
      const name = obstacleName(values.obstacle, site);
      return {
        text:
          values.clearance < 0
            ? `Pasa a través ${of(name)}.`
            : `Pasa a ${size(values.clearance)} ${of(name)}; lo exigido es ${size(values.asked)}.`,
        cure: 'Dibújela más lejos, o pregunte a quien pueda permitir menos.',
      };
    }
    case 'too-little-fall':
      return {
        text: `Necesita una caída de ${size(values.needed)}, y hay ${size(values.available)}.`,
        cure: 'Hágala más corta, o compruebe los niveles en los dos extremos.',
      };
    case 'too-many-bends':
      return {
        text: `Tiene ${values.bends} codos; lo usual es ${values.most} a lo más.`,
        cure: 'Dibújela más recta.',
      };
    case 'no-line':
    case 'bend-count':
    case 'start-elsewhere':
    case 'start-heading':
    case 'end-elsewhere':
    case 'end-heading':
    case 'unknown-end':
      return { text: 'No se puede juzgar como ruta.', cure: 'Revise sus puntos.' };
  }
}
