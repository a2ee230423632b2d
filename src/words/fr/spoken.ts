// French: whatever a sweep says.
import type { NotNow, Prompt } from '../../sweep/effect.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Rival } from '../../sweep/end/story.ts';
import type { Hold } from '../../sweep/hold.ts';
import type { Word } from '../../sweep/inputs.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { TurnWay } from '../../sweep/transfer/turning.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import type { Steps } from '../../units.ts';
import { sayCorrection, sayNumber } from '../../hearing/languages/fr/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import type { SpokenWords } from '../spokenWords.ts';
import { taught, vocabulary } from '../taught.ts';
import { drifted } from './drift.ts';
import { outcome } from './outcomes.ts';
import { reason, startAloud } from './reasons.ts';
import { capital } from '../run.ts';
import { sentences, together } from './sentence.ts';
import { TROUBLE_SAID } from './troubleSaid.ts';
import { readBack } from './verdict.ts';
import { write } from './write.ts';

const both = (text: string): InWords => ({ spoken: text, written: text });

/** A word to say, as it is written in a sentence. */
const quoted = (word: Word): string => `« ${taught(word)} »`;

/** Two words to choose from, as they are asked: the question is answered with one of them. */
const sameOrShifted = (): string => `${capital(taught('same'))} ou ${taught('shifted')} ?`;

function prompt(one: Prompt): InWords {
  switch (one.say) {
    case 'opening': {
      const start = startAloud(one.next);
      const value = `réglez ${sayCorrection(one.next.value)}`;
      return { spoken: sentences(start === null ? value : `${value}, ${start}`), written: set(one.next) };
    }
    case 'next':
      return next(together(noted(one.noted), found(one.trouble)), one.next);
    case 'too early':
      return tooEarly(Math.max(1, Math.ceil(one.left)));
    case 'did it hold':
      return { spoken: 'Était-il fixe ?', written: `Le temps est écoulé à ${writeSteps(one.value)}. Le témoin était-il fixe ?` };
    case 'hold again':
      return holdAgain(one.value, one.why);
    case 'offer': {
      const { spoken, written } = one.trouble ? both(TROUBLE_SAID[one.trouble.trouble]) : outcome(one.outcome);
      const look = one.look && !one.trouble;
      return {
        spoken: together(noted(one.noted), spoken, look ? 'Toujours net en visée écran ?' : null, `Dites ${taught('accept')} ou ${taught('go on')}.`),
        written: together(noted(one.noted), written, look ? 'L’image en visée écran est-elle encore nette ?' : null, 'Accepter, ou continuer ?'),
      };
    }
    case 'check focus': {
      const before = together(noted(one.noted), found(one.trouble));
      return {
        spoken: together(before, DISAGREE[one.rival ?? 'none'], 'Vérifiez la netteté en visée écran.', sameOrShifted()),
        written: together(before, drifted(one.drift, one.rival), 'Regardez en visée écran : la mise au point est-elle la même, ou a-t-elle bougé ?'),
      };
    }
    case 'turn the focus': {
      const turn = one.practice ? 'Le simulateur tourne sa propre bague.' : TURN[one.way];
      return {
        spoken: together(noted(one.noted), turn, `Puis dites ${taught('shifted')}.`),
        written: together(noted(one.noted), turn, `Puis dites ${quoted('shifted')}.`),
      };
    }
    case 'fresh series':
      return next('Nouvelle série.', one.next);
    case 'undone':
      return next('Annulé.', one.next);
    case 'nothing to undo':
      return both('Il n’y a rien à annuler.');
    case 'paused':
      return both('En pause.');
    case 'outcome':
      return one.trouble ? both(`${TROUBLE_SAID[one.trouble.trouble]} Voyez ce qu’il faut vérifier.`) : afterwards(one.outcome, one.practice);
    case 'not now':
      return NOT_NOW[one.why]();
  }
}

const noted = (hold: Hold | null): string | null => hold && sentences(readBack(hold.verdict));
const found = (trouble: Trouble | undefined): string | null => (trouble ? TROUBLE_SAID[trouble.trouble] : null);
const set = (suggested: Suggestion): string => `Réglez ${writeSteps(suggested.value)} : ${reason(suggested)}.`;

const next = (before: string, suggested: Suggestion): InWords => ({
  spoken: together(before, sentences(sayCorrection(suggested.value))),
  written: together(before, set(suggested)),
});

/** A value is to be entered, and said to be. After a width transfer the focus still stands aside. */
function afterwards(one: Outcome, practice: boolean): InWords {
  const words = outcome(one);
  if (one.found === 'carried over') return { ...words, spoken: `${words.spoken} Refaites maintenant le point en visée écran.` };
  if (one.found !== 'band' || practice) return words;
  return { ...words, spoken: `Saisissez ${sayCorrection(one.chosen)}, puis dites ${taught('entered')}.` };
}

const tooEarly = (left: number): InWords => ({
  spoken: left === 1 ? 'Encore une seconde.' : sentences(`encore ${sayNumber(left)} secondes`),
  written: `Pas encore : maintenez ${write.count(left, { one: '# seconde', other: '# secondes' })} de plus.`,
});

function holdAgain(value: Steps, why: 'unanswered' | 'cut off'): InWords {
  const because = why === 'unanswered' ? 'Sans réponse, l’essai ne compte pas.' : 'L’essai a été interrompu : il ne compte pas.';
  return { spoken: sentences('encore', sayCorrection(value)), written: `${because} Réglez ${writeSteps(value)} et recommencez.` };
}

/** Where two stories fit, both are said. */
const DISAGREE: Readonly<Record<Rival | 'none', string>> = {
  none: 'Les essais se contredisent.',
  drifting: 'Les essais se contredisent : la mise au point a bougé, ou la bande dérive.',
  play: 'Les essais se contredisent : la mise au point a bougé, ou le sens de réglage compte.',
};

const TURN: Readonly<Record<TurnWay, string>> = {
  first: 'En visée écran, tournez un peu la bague, juste assez pour perdre la netteté.',
  further: 'C’est le bon sens. Tournez encore un peu.',
  'other way': 'C’est le mauvais sens. Revenez au-delà du point net.',
  back: 'Trop loin. Revenez de moitié.',
};

const NOT_NOW: Readonly<Record<NotNow, () => InWords>> = {
  'hold first': () => ({ spoken: 'D’abord l’essai.', written: 'Aucun essai n’est en cours. Commencez-en un d’abord.' }),
  'hold under way': () => ({ spoken: 'Essai en cours.', written: 'Un essai est en cours. Répondez-y ou annulez-le d’abord.' }),
  'answer first': () => ({ spoken: 'Était-il fixe ?', written: 'Dites d’abord ce qu’a fait le témoin.' }),
  'off the scale': () => ({ spoken: 'Hors plage.', written: 'Ce boîtier n’a pas cette correction. Choisissez-en une dans sa plage.' }),
  paused: () => ({ spoken: 'En pause.', written: 'Le balayage est en pause. Reprenez-le d’abord.' }),
  'not paused': () => ({ spoken: 'Pas en pause.', written: 'Le balayage n’est pas en pause.' }),
  finished: () => ({ spoken: 'Terminé.', written: 'Le balayage est terminé. Annuler permet d’y revenir.' }),
  'no arrows': () => ({
    spoken: 'Pas de flèches sur ce boîtier.',
    written: 'D’après le matériel, ce boîtier n’affiche pas de flèches. S’il en affiche, modifiez-le dans le matériel.',
  }),
  'check focus first': () => ({
    spoken: sameOrShifted(),
    written: 'Vérifiez d’abord la mise au point en visée écran : est-elle la même, ou a-t-elle bougé ?',
  }),
  'turn first': () => ({
    spoken: `${capital(taught('shifted'))} ?`,
    written: `Décalez d’abord la mise au point en visée écran. Puis dites ${quoted('shifted')}.`,
  }),
  'nothing to check': () => ({ spoken: 'Rien à vérifier.', written: 'La mise au point n’est pas en question pour l’instant.' }),
  'nothing to enter': () => ({ spoken: 'Pas de valeur à saisir.', written: 'Ce résultat ne donne pas de valeur à saisir.' }),
  'not offered': () => ({
    spoken: 'Pas encore.',
    written: `Il n’y a pas encore de résultat. Pour terminer le balayage en l’état, dites ${quoted('finish')}.`,
  }),
};

function spelled(value: number): string {
  const digits = [...String(Math.abs(value))];
  const whole = sayCorrection(value);
  return digits.length < 2 ? whole : `${whole}, ${digits.map((digit) => sayNumber(Number(digit))).join(' ')}`;
}

const setPlusOrMinus = (): string => {
  const { plus, minus } = vocabulary().signs;
  return `${taught('set')} ${plus[0]} ou ${minus[0]} et un nombre`;
};

export const words: SpokenWords = {
  prompt,
  correction: sayCorrection,
  brief: (one) => (one.say === 'did it hold' ? 'Fixe ?' : sentences(sayCorrection(one.next.value))),
  reason,
  outcome,
  help: (now) => both(`Vous pouvez dire : ${now.map((word) => (word === 'set' ? setPlusOrMinus() : taught(word))).join(', ')}.`),
  askBack: {
    // "Gauche ?", "Moins quinze, un cinq ?"
    question: ({ input, words: heard }) => ({
      spoken: `${capital(input.told === 'set' ? spelled(input.value) : heard)} ?`,
      written: `Était-ce « ${heard} » ? Si oui, redites-le. Sinon, dites ${quoted('undo')} ou un autre mot.`,
    }),
    notTaken: { spoken: 'Non noté.', written: 'Cela n’a pas été noté. Dites ce que c’était.' },
    sayAgain: { spoken: 'Redites-le.', written: 'Ce n’était pas clair. Redites-le.' },
  },
  mark: {
    made: (value) => ({
      spoken: `${capital(sayCorrection(value))} est marqué comme saisi.`,
      written: `${writeSteps(value)} est marqué comme saisi dans l’appareil. Annuler retire la marque.`,
    }),
    madeBefore: (value) => ({
      spoken: `${capital(sayCorrection(value))} est déjà marqué.`,
      written: `${writeSteps(value)} est déjà marqué comme saisi dans l’appareil.`,
    }),
    takenBack: (value) => ({ spoken: 'La marque est retirée.', written: `La marque est retirée : ${writeSteps(value)} ne compte pas comme saisi.` }),
  },
};
