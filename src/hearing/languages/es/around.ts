// Spanish: signs, and what stands around a command or a value.
import type { SaysNothing } from '../heardLanguage.ts';

/** Words for the sign of a correction; "más" is often written without its accent. */
export const SIGNS = { plus: ['más', 'mas', 'positivo', 'plus'], minus: ['menos', 'negativo'] } as const;

/** What people say to whoever they tell something, and while they think, before it or after it. */
const COURTESIES: readonly string[] = [
  'por favor, porfavor, porfa, por fa, gracias, muchas gracias, mil gracias, perdón, hola',
  'vale, ok, okay, okey, bueno, bien, muy bien, pues, entonces, claro, sí, listo, venga, dale, eso es, ya está, ya',
  'de acuerdo, perfecto, genial, correcto, anda, hombre, pues nada, en fin, la verdad, nada más, si puedes, cuando puedas, si no te importa',
  'eh, e, em, ehm, emm, eem, eeh, ejem, mm, mmm, hm, hmm, mhm, ah, oh, ay, uh, uy, um, uf, o sea, y',
  'a ver, veamos, vamos a ver, oye, oiga, digamos, solo, ahora, otra vez, de nuevo',
  'me puedes, me podrías, serías tan amable de, sería tan amable de, puedes, puede, podrías, podría, quieres, quiero, quisiera, querría, me gustaría, te importa, haz el favor de',
  'necesito, necesitamos, de hecho',
  'creo, creo que, yo creo, yo creo que, creo yo, diría yo, diría, diría que, yo diría que, digo, digo que, dije, he dicho, me parece, me parece que, parece que',
].flatMap((several) => several.split(', '));

export const AROUND = {
  courtesies: COURTESIES,
  articles: ['el', 'la', 'los', 'las', 'lo', 'un', 'una'],
  // What a statement is made of; "no" turns it round and stays.
  frames: [
    'es, era, fue, son, eran, está, están, estaba, estaban, estuvo, estado, ha, han, he, hay, hubo, sido, sale, salió, queda, quedó',
    'se, me, le, te, yo, eso, esto, esta, ese, este, esa, a, que, muy, flecha, flechas, foco, enfoque',
  ].flatMap((several) => several.split(', ')),
  // When and where.
  places: ['ahora', 'aquí', 'ahí', 'allí', 'acá', 'allá', 'ya', 'todavía'],
  // "A la derecha", "más atrás", "el siguiente", "es tarde", "me ayudas", "se terminó".
  everyday: ['delayed', 'left', 'right', 'back', 'next', 'help', 'finish'],
} as const satisfies SaysNothing;

/** What may stand before a value. */
export const SETTING: readonly string[] = [
  'pon, pon en, ponlo, ponlo en, ponlo a, pon el valor, pon valor, ponme, poner, ponga, pongo, valor, el valor, en',
  'ajusta, ajusta a, ajusta en, ajústalo a, ajústalo en, fija, fija en, fíjalo en, marca, deja, deja en, déjalo en, pon a, sube a, subo a, baja a, bajo a, a',
].flatMap((several) => several.split(', '));
