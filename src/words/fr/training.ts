// French: the trainer.
import { countedRight, namedRight, type TrainingHold, type TrainingLight } from '../../practice/training/round.ts';
import { RELIABLE, type Confusion } from '../../practice/training/score.ts';
import { taught } from '../taught.ts';
import type { TrainingWords } from '../trainingWords.ts';
import { write } from './write.ts';

type Slip = Exclude<keyof Confusion, 'right' | 'of'>;

const WAS: Readonly<Record<TrainingLight, string>> = {
  steady: 'Il était fixe.',
  late: 'Il s’est allumé en retard.',
  flicker: 'Il a clignoté.',
  dark: 'Il est resté éteint.',
};

/** The costly ones first. */
const SLIPS: Readonly<Record<Slip, string>> = {
  lateAsSteady: 'Tardif, pris pour fixe',
  flickerAsSteady: 'Clignotant, pris pour fixe',
  darkAsSteady: 'Éteint, pris pour fixe',
  steadyAsFailing: 'Fixe, pris pour un échec',
  wrongKind: 'Échec, pris pour un autre',
};

/** Of two that come as often, the one that can be unlearned best. */
const WATCH_FOR: Readonly<Record<Slip, () => string>> = {
  lateAsSteady: () => 'Regardez le témoin avant d’appuyer. Un témoin tardif est éteint au premier instant.',
  flickerAsSteady: () => 'Ne quittez pas le témoin des yeux avant la fin. Une seule brève coupure, et il clignote.',
  steadyAsFailing: () => 'Ne dites qu’il n’a pas tenu que si vous l’avez vu. Votre propre clignement d’œil ressemble à une coupure.',
  wrongKind: () => 'Éteint d’abord, puis allumé : tardif. Allumé d’abord, puis une coupure : clignotant. Jamais allumé : éteint.',
  darkAsSteady: () => `Pour un témoin qui ne s’est jamais allumé, dites « ${taught('nothing')} ».`,
};

const keysOf = (record: Readonly<Record<Slip, unknown>>): readonly Slip[] => Object.keys(record) as Slip[];

function counts(hold: TrainingHold): string {
  if (namedRight(hold)) return 'Juste.';
  if (!countedRight(hold)) return 'Non.';
  return hold.told === 'untold' ? 'Juste : il n’a pas tenu.' : 'Juste : il n’a pas tenu, mais d’une autre façon.';
}

export const words: TrainingWords = {
  title: 'Exercer l’œil',
  about:
    'Dix essais de deux secondes sur le témoin simulé. Répondez comme dans un balayage : à la voix, au clavier, au pointeur ou au contacteur. ' +
    'Après deux réponses justes de suite, les témoins tardifs et clignotants deviennent plus difficiles à voir. Après une erreur, plus faciles.',
  begin: 'Commencer une série',
  another: 'Autre série',
  hold: {
    label: 'Essai d’exercice',
    title: (number, of) => `Essai ${write.number(number)} sur ${write.number(of)}`,
    answers: 'Réponses comprises maintenant',
    ready: 'Appuyez dès que vous voulez.',
    watch: 'Observez le témoin.',
    over: 'Le temps est écoulé. Qu’avez-vous vu ?',
    tooSoon: 'Pas encore. Maintenez jusqu’à la fin.',
    was: (hold) => `${counts(hold)} ${WAS[hold.shown]}`,
  },
  round: {
    label: 'Cette série',
    right: ({ right, of }) => write.count(right, { one: `# juste sur ${write.number(of)}`, other: `# justes sur ${write.number(of)}` }),
    slips: (confusion) =>
      keysOf(SLIPS)
        .filter((slip) => confusion[slip].missed > 0)
        .map((slip) => `${SLIPS[slip]} : ${write.number(confusion[slip].missed)} sur ${write.number(confusion[slip].shown)}.`),
    watchFor(confusion) {
      const [worst] = keysOf(WATCH_FOR).toSorted((a, b) => confusion[b].missed - confusion[a].missed);
      return worst && confusion[worst].missed > 0 ? WATCH_FOR[worst]() : 'Aucune erreur dans cette série.';
    },
    level: (level, last) => `Vous êtes au niveau ${write.number(level)} sur ${write.number(last)}.`,
  },
  standing: {
    title: 'Votre fiabilité',
    reliability: ({ right, of, low, high, reached }) => [
      `${write.count(right, { one: `# essai facile sur ${write.number(of)} bien jugé`, other: `# essais faciles sur ${write.number(of)} bien jugés` })}.`,
      `Donc, de ${write.percent(Math.floor(low * 100) / 100)} à ${write.percent(Math.ceil(high * 100) / 100)} de vos essais sont bien jugés, sûr à ${write.percent(0.95)}.`,
      reached ? 'C’est assez fiable pour un balayage.' : `Pour un balayage, le plus petit chiffre doit atteindre ${write.percent(RELIABLE)}.`,
    ],
    kept: (rounds, newest) => [
      `${write.count(rounds, { one: '# série est gardée', other: '# séries sont gardées' })}, la plus récente du ${write.day(newest)}.`,
      'Les huit dernières comptent, et seulement leurs témoins faciles à voir.',
    ],
    tooFew: (enough, sofar) =>
      `À partir de ${write.count(enough, { one: '# essai facile', other: '# essais faciles' })}, un balayage peut tenir compte de vos propres erreurs. Jusqu’ici : ${write.number(sofar)}.`,
    own: {
      label: 'Utiliser ma propre fiabilité',
      note: (lapse) =>
        `Dès le prochain balayage, il est tenu compte de ${write.percent(lapse, 1)} d’essais gâchés de votre part, au lieu des ${write.percent(0.02)} habituels.`,
    },
    forget: 'Oublier mes séries',
    forgetNow: 'Les oublier',
    keep: 'Les garder',
  },
};
