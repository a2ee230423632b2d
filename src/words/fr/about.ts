// French: what Sweepbook is, and what is new in it.
import type { AboutWords } from '../aboutWords.ts';

export const words: AboutWords = {
  title: 'À propos de Sweepbook',
  version: (version) => `Version ${version}`,
  updated: (version) => `Sweepbook passe à la version ${version} : nouveautés`,
  news: {
    title: 'Nouveautés',
    of: [
      {
        version: '0.1.0',
        lines: [
          'La première version : des balayages à la voix, au clavier ou avec un seul contacteur, et un carnet de tous les objectifs.',
          'Des photos contrôlent une valeur. Un simulateur montre ce que le témoin peut faire.',
        ],
      },
    ],
  },
  privacy: {
    title: 'Confiden\u00adtialité',
    sentences: [
      'Ce que vous indiquez et mesurez reste dans ce navigateur, sur cet ordinateur.',
      'Sweepbook n’envoie rien de lui-même et ne lit aucune des pages que vous visitez.',
      'Deux choses n’en sortent que si vous les activez : les dernières valeurs, par votre compte du navigateur, et votre voix, là où la reconnais\u00adsance vocale du navigateur l’envoie à son éditeur.',
    ],
  },
  licences: { title: 'Licences', about: 'Sweepbook contient des éléments faits par d’autres. Leurs licences sont jointes.', open: 'Lire les licences' },
  fault: {
    title: 'Signaler une erreur',
    about:
      'Le rapport contient les paramètres, les versions, les langues et la quantité de données. Il ne contient ni noms de matériel, ni numéros de série, ni notes.',
    give: 'Rien n’est envoyé : donnez le fichier à la personne qui vous aide.',
    save: 'Enregistrer un rapport',
  },
};
