import type { Units } from '@footmark/site';
import type { ArcProblem, SpotProblem } from '../measureProblem';
import { angleText, lengthText } from '../measureText';

/** What contradicts itself in an arc that is told by its radius, length, angle and chord. */
export function arcProblemText(problem: ArcProblem, units: Units): string {
  switch (problem.code) {
    case 'not-positive':
      return 'El radio, la longitud y el ángulo son todos mayores que cero.';
    case 'past-full-circle':
      return `Este arco giraría ${angleText(problem.given)}, un círculo completo o más. Compruebe su longitud y su radio.`;
    case 'delta-against-arc-length':
      return `La longitud y el ángulo se contradicen: con este radio y este ángulo el arco mide ${lengthText(problem.computed, units)}, no ${lengthText(problem.given, units)}.`;
    case 'chord-past-diameter':
    case 'chord-against-delta':
    case 'chord-against-arc-length':
      return `La cuerda contradice lo demás: tendría que medir ${lengthText(problem.computed, units)}, no ${lengthText(problem.given, units)}.`;
  }
}

/** Why measurements from two points lead to no place. */
export function spotProblemText(problem: SpotProblem, units: Units): string {
  switch (problem.code) {
    case 'same-reference':
      return 'Las dos medidas empiezan en el mismo lugar. Elija otro punto.';
    case 'too-short':
      return `Estas cintas no se alcanzan: entre ellas falta ${lengthText(problem.gap, units)}. Compruebe las dos longitudes y dónde empiezan.`;
    case 'too-long':
      return `Una cinta es demasiado larga para la otra: no coinciden por ${lengthText(problem.gap, units)}. Compruebe las dos longitudes y dónde empiezan.`;
  }
}
