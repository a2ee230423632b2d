// Spanish: what asks the logbook, and what names the next lens. "Busca" begins too much of daily talk to ask for anything but a number or
// a known name.
import type { Naming, SpokenQuestion } from '../heardLanguage.ts';

export const QUESTION: SpokenQuestion = {
  openings: ['consulta', 'consultar', 'consúltame', 'consulto', 'haz una consulta'],
  everyday: [
    'busca, buscar, búscame, búscalo, buscando, encuentra, comprueba, muestra, muéstrame, enséñame, mira el, dime el, dame el',
    'qué era, qué es, qué valor tenía, qué valor tiene, qué valor, qué tenía, qué tiene, qué llevaba, qué lleva, qué hay de',
    'cuál era, cuál es, cuánto era, cuánto tenía, cuánto tiene, cuánto llevaba, cuánto lleva, a cuánto estaba, a cuánto está',
    'cómo estaba, cómo está',
  ].flatMap((several) => several.split(', ')),
  // As names are compared, so without accents.
  fillers: [
    'consulta consultar consultame consulto busca buscar buscame encuentra comprueba mira muestra muestrame ensename dime dame',
    'que cual cuanto como es era esta estaba tiene tenia lleva llevaba valor correccion por favor',
    'el la los las lo un una de del a al en con para mi y',
    'milimetro milimetros mm',
  ].flatMap((words) => words.split(' ')),
};

export const NAMING: Naming = {
  openings: ['siguiente objetivo', 'próximo objetivo', 'siguiente lente', 'próxima lente', 'siguiente', 'próximo', 'próxima'],
  noNames: ['objetivo', 'lente', 'paso', 'uno'],
};
