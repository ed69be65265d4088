import type { ParseFailure, ParseProblem } from '@footmark/site';

type Values = Readonly<Record<string, number | string>>;

const quoted = (value: number | string | undefined) => `“${value ?? ''}”`;

const sentences: Record<ParseProblem, (values: Values) => string> = {
  empty: () => 'Aquí no hay nada escrito.',
  'not-a-number': ({ text }) => `${quoted(text)} no es un número que se pueda leer.`,
  'two-signs': ({ text }) => `${quoted(text)} tiene dos signos; quite uno.`,
  negative: ({ text }) => `${quoted(text)} es menor que cero, y esto no puede serlo.`,
  'unknown-unit': ({ unit }) =>
    `${quoted(unit)} no es una unidad que aquí se conozca; pruebe con ft, in, m, cm o mm.`,
  'mixed-units': ({ text }) => `${quoted(text)} mezcla unidades que no van juntas; escríbalo en una sola.`,
  'zero-denominator': ({ text }) => `${quoted(text)} divide entre cero.`,
  'improper-fraction': ({ text }) => `La fracción en ${quoted(text)} es uno o más; súmela al número entero.`,
  'ambiguous-comma': ({ text, asDecimal, asThousands }) =>
    `${quoted(text)} puede ser ${asDecimal} o ${asThousands}; escríbalo sin la coma.`,
  'too-large': () => 'Eso es demasiado grande para ser una medida.',
  'inches-too-large': ({ inches, limit }) =>
    `${inches} in junto a los pies es demasiado; las pulgadas quedan por debajo de ${limit} in.`,
  'feet-not-whole': ({ feet }) =>
    `${feet} ft no es un número entero de pies, así que no pueden seguirle pulgadas.`,
  'ambiguous-dash': ({ text }) =>
    `${quoted(text)} puede ser pies y pulgadas o una fracción; escriba los signos de ft o in.`,
  'not-positive': ({ text }) => `${quoted(text)} tiene que ser mayor que cero.`,
  'part-not-whole': ({ part }) =>
    `${part} tiene que ser entero: solo la última parte de un ángulo puede llevar decimales.`,
  'minutes-too-large': ({ minutes, limit }) =>
    `${minutes}′ es demasiado; los minutos quedan por debajo de ${limit}′.`,
  'seconds-too-large': ({ seconds, limit }) =>
    `${seconds}″ es demasiado; los segundos quedan por debajo de ${limit}″.`,
  'azimuth-out-of-range': ({ degrees }) =>
    `${degrees}° no es una dirección; las direcciones van de 0° a 360°.`,
  'not-a-quadrant': ({ text }) => `${quoted(text)} no es un rumbo; escríbalo como N 45°30′ E.`,
  'quadrant-over-90': ({ degrees, limit }) =>
    `${degrees}° es demasiado para un rumbo; su ángulo llega hasta ${limit}°.`,
  'side-missing': ({ text }) =>
    `${quoted(text)} no dice hacia dónde gira; ponga antes L (izquierda) o R (derecha).`,
  'turn-over-180': ({ degrees, limit }) =>
    `${degrees}° es demasiado para un giro; los giros llegan hasta ${limit}° a cada lado.`,
  'not-a-position': ({ text }) =>
    `${quoted(text)} no es un lugar en la tierra; escríbalo como 40.446195, -79.948862 o 40°26′46″ N 79°56′55″ W.`,
  'sign-and-hemisphere': ({ text }) =>
    `${quoted(text)} tiene un signo y además la letra de su hemisferio; quite uno de los dos.`,
  'east-or-west-missing': ({ text }) =>
    `${quoted(text)} no dice hacia qué lado; ponga después E (este) o W (oeste), como en la carta de declinación.`,
  'declination-over-180': ({ degrees, limit }) =>
    `${degrees}° es demasiado para una declinación; llegan hasta ${limit}° a cada lado.`,
  'latitude-out-of-range': ({ degrees, limit }) =>
    `Una latitud llega hasta ${limit}° a cada lado, y va primero; ${degrees}° es demasiado.`,
  'longitude-out-of-range': ({ degrees, limit }) =>
    `Una longitud llega hasta ${limit}° a cada lado; ${degrees}° es demasiado.`,
  'slope-needs-unit': ({ text }) =>
    `${quoted(text)} necesita una unidad; escríbalo como 1/4 in/ft, 2 % o 1:48.`,
  'clock-not-whole-hour': ({ text }) => `${quoted(text)} no es una hora entera.`,
  'clock-out-of-range': ({ hour }) => `${hour} no está en la carátula del reloj; las horas van de 1 a 12.`,
};

/** Why what was typed cannot be taken as a measurement, and how to type it. */
export function parseProblemText({ code, values }: ParseFailure): string {
  return sentences[code](values);
}
