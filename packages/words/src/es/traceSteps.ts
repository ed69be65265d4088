import type { Derived, Mark, Site } from '@footmark/site';
import { counterText, lengthText } from '../measureText';
import { atStart, inSentence } from '../named';
import { scaleText } from '../sightings';
import { type ScaleFrom, type TraceFact, traceFacts } from '../traceFacts';
import type { TraceStep, TraceStepCode } from '../traceStep';
import { directionNames, zeroNames } from './drainNames';
import { featureInText, targetInText } from './thingName';

const labels: Record<TraceStepCode, string> = {
  counter: 'Contador',
  'new-zeros': 'Contado en total',
  zero: 'Cero',
  scale: 'Escala',
  cable: 'Cable metido',
  'entry-leg': 'Tramo de entrada',
  start: 'Puesto a cero en',
  ahead: 'Lente adelantado por',
  along: 'A lo largo de la tubería',
  entry: 'Entrada en',
  way: 'Camino',
  station: 'Estación',
  position: 'Posición',
};

const scaleNotes: Record<ScaleFrom, string> = {
  fit: 'Longitud real por cada longitud contada, según el ajuste.',
  calibration: 'Longitud real por cada longitud contada, de una longitud que se contó.',
  true: 'El contador se toma como exacto.',
  said: 'Longitud real por cada longitud contada.',
};

/** How a mark came about, from the counter to the place on the sketch; ends where the computation did. */
export function traceSteps(mark: Mark, site: Site, derived: Derived): readonly TraceStep[] {
  return traceFacts(mark, derived).map((fact) => {
    const note = noteText(fact, site);
    return {
      step: fact.step,
      label: labels[fact.step],
      value: valueText(fact, site),
      ...(note === '' ? {} : { note }),
    };
  });
}

function valueText(fact: TraceFact, site: Site): string {
  const length = (metres: number) => lengthText(metres, site.units);
  switch (fact.step) {
    case 'counter':
    case 'new-zeros':
    case 'zero':
      return counterText(fact.metres, site.units);
    case 'scale':
      return `× ${scaleText(fact.scale)}`;
    case 'way':
      return fact.paths.map((id) => targetInText({ kind: 'path', id }, site)).join(', luego ');
    case 'position':
      return `${length(fact.east)} al este, ${length(fact.north)} al norte`;
    default:
      return length(fact.metres);
  }
}

function noteText(fact: TraceFact, site: Site): string {
  const length = (metres: number) => lengthText(metres, site.units);
  switch (fact.step) {
    case 'counter':
      return '';
    case 'new-zeros':
      return `Como si el contador no se hubiera vuelto a ajustar${fact.fitted ? ', y según el ajuste' : ''}.`;
    case 'zero':
      return `${zeroNames[fact.at]}${fact.fitted ? '; según el ajuste' : ''}.`;
    case 'scale':
      return scaleNotes[fact.from];
    case 'cable':
      return 'Lo que se contó desde el cero, por la escala.';
    case 'entry-leg':
      if (fact.riser === null) return `Nada que restar: ${inSentence(zeroNames[fact.at])}.`;
      return fact.saved === null
        ? `Tubo vertical de ${length(fact.riser)} con su curva; según el ajuste.`
        : `Tubo vertical de ${length(fact.riser)} menos ${length(fact.saved)} que su curva ahorra.`;
    case 'start':
      return 'A lo largo de la tubería desde la entrada.';
    case 'ahead':
      return 'La cola del cabezal estaba en el cero.';
    case 'along': {
      const zeroed = fact.start ? ', más el lugar donde el contador se puso a cero' : '';
      return `Cable metido menos el tramo de entrada${zeroed}${fact.ahead ? ', más el cabezal' : ''}.`;
    }
    case 'entry': {
      const where = fact.feature === null ? '' : `${featureInText(fact.feature)}, `;
      return `${atStart(`${where}${inSentence(directionNames[fact.direction])}`)}.`;
    }
    case 'way':
      return 'Las tuberías por las que pasó la cámara, en orden.';
    case 'station': {
      const lost = fact.lost === 0 ? '' : `; la pendiente y las caídas quitan ${length(fact.lost)} del cable`;
      return `En ${targetInText({ kind: 'path', id: fact.path }, site)}, en planta desde su extremo aguas arriba${lost}.`;
    }
    case 'position':
      return 'En el plano, desde su origen.';
  }
}
