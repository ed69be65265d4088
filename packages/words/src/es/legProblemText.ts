import type { LegProblem } from '@footmark/site';

/** Why the length of a leg cannot be changed as asked, and what can. */
export const legProblemTexts: Record<LegProblem, string> = {
  held: 'El extremo que se movería está fijado por sus propias medidas. Deje fijo el otro extremo, o corrija esas medidas.',
  curve: 'Una curva recibe su longitud de su radio y su ángulo.',
  closes: 'Este lado es lo que dejan los otros. Cambie uno de ellos, o deje fijo el otro extremo.',
  balanced:
    'Este contorno está compensado, así que sus lados no miden lo que se midió. Quite primero la compensación, o corrija una medida.',
};
