// French: the sound check, and what is so where nothing sounds or nothing is spoken.
import type { SoundWords } from '../soundWords.ts';
import { write } from './write.ts';
import { correctionSaid } from '../taught.ts';

const said = (): string => `« ${correctionSaid(6)} »`;

const percent = (value: number): string => write.percent(value / 100);

export const words: SoundWords = {
  title: 'Test du son',
  offer: 'Test du son : écouter une fois les signaux et la voix',
  play: 'Jouer les signaux et une valeur',
  loudness: 'Volume',
  percent,
  loudnessAt: (value) => `Volume : ${percent(value)}`,
  playing: 'Un signal montant commence un essai, un signal descendant le termine. Puis une valeur est dite.',
  get heard() {
    return `Avez-vous entendu deux signaux et ${said()} ? Sinon, montez le son de l’ordinateur, ou choisissez une autre sortie.`;
  },
  done: 'Terminé',
  tonesOnly: 'Avez-vous entendu deux signaux ? Les valeurs ne sont pas dites, seulement affichées.',
  get speechOnly() {
    return `Avez-vous entendu ${said()} ? Les signaux sont coupés : rien ne sonne au début ni à la fin d’un essai.`;
  },
  standsStill: 'Cet ordinateur ne joue aucun son. Branchez un haut-parleur ou un casque. D’ici là, tout est affiché.',
  mute: (language) =>
    `Le navigateur ne trouve pas de voix en ${language} sur cet ordinateur : tout est affiché, avec les signaux, mais rien n’est dit. ` +
    'Pour l’entendre, installez une voix dans les paramètres vocaux du système.',
  off: 'Ni signaux ni valeurs dites : seul l’écran montre quand un essai commence et finit.',
  switchOn: 'Activer les deux',
};
