// German: signs, and what stands around a command or a value.
import type { SaysNothing } from '../heardLanguage.ts';

/** Words for the sign of a correction. */
export const SIGNS = { plus: ['plus', 'positiv'], minus: ['minus', 'negativ'] } as const;

const phrases = (lines: string): readonly string[] =>
  lines
    .trim()
    .split(/[,\n]/)
    .map((phrase) => phrase.trim())
    .filter(Boolean);

/** What people say to whoever they tell something, and while they think, before it or after it. */
const COURTESIES = phrases(`
  bitte, bitte schön, bitte sehr, danke, danke schön, dankeschön, danke sehr, vielen dank
  okay, ok, okey, gut, na gut, alles klar, also, so, ja, jo, jawohl, genau, na, naja, na ja, tja, nun, und, dann, doch, einfach, moment
  nein, nee
  hm, hmm, mhm, aha, ach, ach so, ähm, äh, öhm, öh, eh
  bitte mal, doch mal, dann mal, bitte einmal, kannst du, kannst du mal, kannst du bitte, können sie, könntest du, könnten sie, würdest du, würden sie, kann ich, darf ich, lass uns
  entschuldigung, entschuldige, verzeihung, pardon, sorry
  ich brauche, wir brauchen, ich hätte gern, ich hätte gerne
  ich möchte, ich will, ich würde, ich würde gern, ich würde gerne, gern, gerne, ich glaube, ich denke, ich meine, ich sage, ich sagte, sagen wir, würde ich sagen
  und so weiter, weiter so, und weiter
  setze den, setz den, stelle den, stell den
`);

export const AROUND = {
  courtesies: COURTESIES,
  articles: phrases('der, die, das, den, dem, ein, eine, einen, einem, einer, diesen, dieses, diese, dieser, diesem'),
  // What a statement is made of.
  frames: phrases(`
    es, er, sie, ist, ists, war, wars, ich, wir, bin, sind, habe, hab, habs, hat, hats, kam, kommt, sich, licht, pfeil, pfeile
    ganz, sehr, etwas, leicht, ziemlich, eher, nur, kurz, kurze, alles
  `),
  // When and where.
  places: ['jetzt', 'da', 'hier', 'dort', 'wieder', 'immer', 'noch'],
  // "Das ist rechts", "gleich zurück", "weiter so", "das hilft".
  everyday: ['left', 'right', 'back', 'next', 'same', 'repeat', 'pause', 'resume', 'go on', 'finish', 'help'],
} as const satisfies SaysNothing;

/** What may stand before a value. */
export const SETTING = phrases(`
  wert, wert auf, den wert auf, wert ist, der wert ist, wert gleich
  setze, setze auf, setz auf, stelle auf, stell auf, stelle ein, auf, korrektur, korrektur auf
`);
