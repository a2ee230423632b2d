// French: the hearing check.
import type { HearingWords } from '../hearingWords.ts';
import { taught, vocabulary } from '../taught.ts';
import { capital } from '../run.ts';
import { NO_MICROPHONE } from './microphone.ts';
import { write } from './write.ts';

/** Digit by digit, as a number is said to be sure of it. */
const digits = (...each: readonly number[]): string => each.map((digit) => vocabulary().numbers.say(digit)).join(' ');

export const words: HearingWords = {
  title: 'Test d’écoute',
  stays: 'Le son est comparé sur cet ordinateur. Il n’est jamais gardé ni envoyé.',
  kept:
    'D’un mot appris, seule l’empreinte est gardée ; rien ne peut en être rejoué. Elle reste dans ce navigateur, et va dans une ' +
    'sauvegarde quand vous en faites une.',
  room: {
    title: 'La pièce',
    level: 'Niveau',
    listen: 'Écouter',
    toListen: 'Appuyez sur le bouton. Le navigateur demande alors si Sweepbook peut utiliser le micro.',
    refused: {
      ...NO_MICROPHONE,
      'not asked': 'Le micro n’est pas encore autorisé. Appuyez sur le bouton et répondez « Autoriser ».',
      blocked: 'Le micro est bloqué pour Sweepbook. Autorisez-le par l’icône à côté de l’adresse, puis appuyez de nouveau sur le bouton.',
    },
    stand: 'Placez-vous là où vous travaillerez, et dites un mot.',
    noSound: 'Ce navigateur ne transmet pas le son du micro : aucun mot ne peut être appris ici.',
    gone: 'Le micro a disparu. Branchez-le, puis appuyez de nouveau sur le bouton.',
    muted: 'Le micro est coupé. Réactivez-le par son bouton ou dans les paramètres de son du système.',
  },
  heard: {
    noWord: 'Quelque chose a été entendu, mais aucun mot appris.',
    word: (word) => `Entendu : « ${word} ».`,
    perhaps: (word) => `Peut-être « ${word} ». Le panneau demanderait si vous l’avez dit.`,
  },
  own: {
    title: 'Vos mots',
    about: (takes) => [
      `Chaque mot se dit ${write.count(takes, { other: '# fois' })}.`,
      'Les sept mots d’un balayage suffisent pour commencer. Pour ce qui n’est pas appris, servez-vous des touches, de la pédale ou du pointeur.',
    ],
    learns: 'Le panneau peut aussi retenir les mots justes à l’usage. Activez cela dans les paramètres, sous Voix.',
    group: (left, of) =>
      left === of
        ? write.count(of, { one: 'Apprendre ce mot', other: 'Appren\u00addre ces # mots' })
        : write.count(left, { one: 'Apprendre celui qui reste', other: 'Apprendre les # qui restent' }),
    teach: (word) => `Apprendre « ${word} »`,
    again: (word) => `Réapprendre « ${word} »`,
    short: { teach: 'Apprendre', again: 'Refaire' },
    is: {
      notTaught: 'pas appris',
      taught: 'appris',
      learned: (more) => `appris, et ${write.count(more, { one: '# retenu', other: '# retenus' })} à l’usage`,
    },
    forgetLearned: 'Oublier ce qui a été retenu, garder ce que j’ai appris au panneau',
    learnedForgotten: 'Ce qui a été retenu est oublié. Ce que vous avez appris au panneau est toujours là.',
    erase: 'Effacer tous les mots appris',
    erased: 'Tous les mots appris sont effacés.',
    rooms: { sweep: 'Un balayage', walk: 'La mise en place', logbook: 'Le carnet', rest: 'Le reste' },
    of: (count, all) => (count === all ? `tous appris (${write.number(all)})` : `${write.number(count)} sur ${write.number(all)}`),
    groups: {
      sweep: { name: 'Un balayage', for: 'De quoi mener tout un balayage, du premier essai à la valeur acceptée.' },
      walk: {
        name: 'La mise en place',
        get for() {
          return `Parcourir la mise en place. « ${capital(taught('repeat'))} » fait aussi redire une valeur.`;
        },
      },
      arrows: { name: 'Flèches', for: 'Pour les boîtiers qui affichent des flèches à côté du témoin.' },
      values: {
        name: 'Valeurs et carnet',
        get for() {
          const { signs, question } = vocabulary();
          return `Régler une valeur de votre choix, « ${taught('set')} ${signs.minus[0]} ${digits(1, 2)} », et interroger le carnet, « ${question.openings[0]} ${digits(8, 5)} ».`;
        },
      },
      rest: { name: 'Autres mots', for: 'Mettre en pause, passer, continuer, et le reste de ce qu’un balayage peut demander.' },
      lenses: {
        name: 'Vos objectifs',
        get for() {
          return `Demander au carnet un objectif par son nom : dites « ${vocabulary().question.openings[0]} », puis le nom.`;
        },
      },
    },
  },
  lesson: {
    say: (word) => `Dites « ${word} »`,
    takes: (done, of) => `${write.number(done)} sur ${write.number(of)}`,
    begin: 'Dites-le comme vous le direz près de l’appareil, avec du silence avant et après.',
    taught: (word) => `« ${word} » est appris.`,
    allTaught: 'Tous les mots sont appris. Revenez au panneau. D’autres mots à apprendre sont ci-dessous.',
    stop: 'Arrêter',
  },
};
