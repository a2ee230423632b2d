// French: what stands before the catalogue can be read.
import type { FirstWords } from '../firstWords.ts';

export const words: FirstWords = {
  name: 'Sweepbook',
  places: 'Plus',
  place: { logbook: 'Carnet', plan: 'Programme', kit: 'Matériel', settings: 'Paramètres', help: 'Aide' },
  field: 'Chercher un objectif, ou en nommer un nouveau',
  placeholder: 'Objectif connu ou nouveau',
  start: 'Démarrer',
  back: 'Retour',
  dismiss: 'Fermer',
  announcement: 'Annonce',
  opening: 'Ouverture…',
  unread: 'Une partie de ce panneau ne peut pas être lue. Fermez le panneau et rouvrez-le. Rien n’est perdu.',
  notRead: 'Les données n’ont pas été lues : rien ne peut donc être enregistré. Fermez ce panneau et rouvrez-le.',
  mark: { word: 'voix coupée', press: 'voix coupée : l’activer' },
};
