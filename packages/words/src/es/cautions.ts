import type { CautionCode } from '../caution';

/*
 * The rules behind them: 49 CFR 196.103, .107 and .109 (call first, respect marks, report damage); 29 CFR 1926.651 and .652
 * (trenches: protection from 5 ft or where the ground may cave in, egress from 4 ft, spoil back 2 ft); 29 CFR 1910.146 and its
 * Appendix E (sewer air, hydrogen sulfide deadens the sense of smell); state one-call centres on private lines. That hand
 * digging is asked for in the tolerance zone, and that its width is the state's, and that crossing services are exposed before a
 * pipe is pulled or bored, are common practice, no source.
 */
export const cautions: Record<CautionCode, { readonly title: string; readonly text: string }> = {
  'not-a-utility-locate': {
    title: 'No es una localización de servicios',
    text: 'Estas posiciones se calculan con un contador y un croquis. Muestran un drenaje, y nada de las otras líneas que pueda haber en el terreno.',
  },
  'call-before-digging': {
    title: 'Llame antes de excavar',
    text: 'Llame primero al centro de llamada única (811 en los Estados Unidos), espere las marcas, y excave respetándolas y respetando la fecha en que vencen.',
  },
  'hand-dig': {
    title: 'Excave a mano cerca de las marcas',
    text: 'Excave a mano o con succión en la zona de tolerancia, a ambos lados de una marca. La ley del estado dice qué ancho tiene.',
  },
  bored: {
    title: 'Antes de jalar o perforar',
    text: 'Descubra a mano cada servicio que cruce o pase cerca, donde la tubería nueva lo pasa, antes de jalar, reventar o perforar nada, y vigílelo ahí mientras tanto. Lo que pasa bajo tierra sin verse puede romper una línea de gas, un cable o un drenaje. Esto es práctica común; el operador de la línea puede pedir más.',
  },
  'private-lines': {
    title: 'Líneas privadas',
    text: 'Las líneas después del medidor o en terreno privado por lo general no están marcadas: alberca, luces del jardín, riego, gas del asador, drenajes. Pregunte al dueño y haga que las localicen.',
  },
  'depths-are-estimates': {
    title: 'Las profundidades son estimadas',
    text: 'Una profundidad es una estimación hasta que la tubería queda a la vista. El terreno pudo rellenarse o rebajarse desde que se tendió la tubería.',
  },
  damage: {
    title: 'Si se golpea una línea',
    text: 'Avise de inmediato a su operador, por pequeño que sea el daño. Si sale gas o líquido, aléjese y llame al 911.',
  },
  'sewer-gas': {
    title: 'Gas de alcantarilla',
    text: 'El aire del alcantarillado puede arder, envenenar y asfixiar, y el gas que huele a huevo podrido pronto deja de olerse. No entre en un foso ni en un pozo de visita, mantenga llamas y chispas lejos de las aberturas, y lávese después de todo contacto.',
  },
  'trench-safety': {
    title: 'Seguridad en la zanja',
    text: 'Una persona competente revisa la zanja cada día y después de la lluvia. Desde 5 ft (1.5 m) de profundidad, o donde los lados puedan derrumbarse, necesita talud, apuntalamiento o un escudo; desde 4 ft (1.2 m), una escalera a no más de 25 ft (7.6 m); la tierra excavada queda a 2 ft (0.6 m) del borde o más. Deciden las reglas locales.',
  },
  trees: {
    title: 'Árboles',
    text: 'Un árbol puede estar protegido o ser de un vecino. Pregunte a un arborista y a la autoridad antes de cortar raíces.',
  },
  boundaries: {
    title: 'Linderos',
    text: 'Un lindero en este croquis no es un levantamiento. Donde importe de quién es el terreno, pregunte a un topógrafo con licencia.',
  },
  'people-decide': {
    title: 'Deciden las personas, no este plano',
    text: 'La última palabra la tienen una persona competente en el sitio, el inspector de códigos, un arborista y un topógrafo. Aquí hay valores modelo hasta que ellos den los suyos.',
  },
};

/** Of values that were taken from a model code or a guide. */
export const modelValuesText =
  'Valores modelo, para empezar. Deciden el código local y los profesionales con licencia: ponga su valor donde sea otro.';
