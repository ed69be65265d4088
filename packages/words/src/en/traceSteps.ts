import type { Derived, Mark, Site } from '@footmark/site';
import { counterText, lengthText } from '../measureText';
import { atStart, inSentence } from '../named';
import { scaleText } from '../sightings';
import { type ScaleFrom, type TraceFact, traceFacts } from '../traceFacts';
import type { TraceStep, TraceStepCode } from '../traceStep';
import { directionNames, zeroNames } from './drainNames';
import { featureInText, targetInText } from './thingName';

const labels: Record<TraceStepCode, string> = {
  counter: 'Counter',
  'new-zeros': 'Counted in all',
  zero: 'Zero',
  scale: 'Scale',
  cable: 'Cable out',
  'entry-leg': 'Entry leg',
  start: 'Zeroed at',
  ahead: 'Lens ahead by',
  along: 'Along the pipe',
  entry: 'Entry at',
  way: 'Way',
  station: 'Station',
  position: 'Position',
};

const scaleNotes: Record<ScaleFrom, string> = {
  fit: 'True length for each counted length, as the fit made it.',
  calibration: 'True length for each counted length, from a length that was counted.',
  true: 'The counter is taken as true.',
  said: 'True length for each counted length.',
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
      return fact.paths.map((id) => targetInText({ kind: 'path', id }, site)).join(', then ');
    case 'position':
      return `${length(fact.east)} east, ${length(fact.north)} north`;
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
      return `As if the counter had not been set anew${fact.fitted ? ', and as the fit made it' : ''}.`;
    case 'zero':
      return `${zeroNames[fact.at]}${fact.fitted ? '; as the fit made it' : ''}.`;
    case 'scale':
      return scaleNotes[fact.from];
    case 'cable':
      return 'What was counted since the zero, times the scale.';
    case 'entry-leg':
      if (fact.riser === null) return `Nothing to take off: ${inSentence(zeroNames[fact.at])}.`;
      return fact.saved === null
        ? `Riser of ${length(fact.riser)} with its sweep; as the fit made it.`
        : `Riser of ${length(fact.riser)} less the ${length(fact.saved)} that its sweep saves.`;
    case 'start':
      return 'Along the pipe from the entry.';
    case 'ahead':
      return 'The tail of the head stood at the zero.';
    case 'along': {
      const zeroed = fact.start ? ', and where the counter was zeroed' : '';
      return `Cable out less the entry leg${zeroed}${fact.ahead ? ', and the head' : ''}.`;
    }
    case 'entry': {
      const where = fact.feature === null ? '' : `${featureInText(fact.feature)}, `;
      return `${atStart(`${where}${inSentence(directionNames[fact.direction])}`)}.`;
    }
    case 'way':
      return 'The pipes that the camera went through, in order.';
    case 'station': {
      const lost = fact.lost === 0 ? '' : `; grade and drops take ${length(fact.lost)} off the cable`;
      return `On ${targetInText({ kind: 'path', id: fact.path }, site)}, in plan from its upstream end${lost}.`;
    }
    case 'position':
      return 'In the plan, from its origin.';
  }
}
