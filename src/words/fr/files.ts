// French: backups, tables, and the copies that the browser keeps.
import type { FilesWords } from '../filesWords.ts';
import { brings, item, setAside } from './restoring.ts';
import { columnSaid, lineFault } from './tableFaults.ts';
import { write } from './write.ts';

const UNCHANGED = 'Rien n’est encore modifié.';

export const words: FilesWords = {
  title: 'Sauvegarde et tableaux',
  drop: 'Choisissez le fichier, ou déposez-le ici.',
  unread: 'Ce fichier ne peut pas être lu. Vérifiez qu’il existe toujours, puis choisissez-le de nouveau.',
  howFar: {
    writing: (share) => `Écriture de la sauvegarde : ${write.percent(share)}.`,
    reading: (share) => `Lecture du fichier : ${write.percent(share)}.`,
    comparing: (share) => `Comparaison avec ce qui est ici : ${write.percent(share)}.`,
    bringing: (share) => `Rétablissement : ${write.percent(share)}.`,
  },
  backup: {
    title: 'Sauvegarde',
    about: 'Elle contient le matériel, le carnet et les mots appris. Les petits extraits gardés des photos n’y sont pas.',
    newest: (made) => (made === null ? 'Aucune sauvegarde n’a encore été faite d’ici.' : `La dernière sauvegarde est du ${write.day(made)}.`),
    write: 'Faire une sauvegarde',
    withoutWords: 'La sauvegarde est faite, mais sans les mots appris. Ils ne peuvent pas être lus pour l’instant.',
  },
  reminder: {
    label: 'Sauvegarde',
    unsaved: (count) => write.count(count, { one: '# fiche n’est dans aucune sauvegarde.', other: '# fiches ne sont dans aucune sauvegarde.' }),
    uninstall: 'Désinstaller Sweepbook efface le carnet.',
    notNow: 'Pas maintenant',
  },
  restore: {
    choose: 'Rétablir une sauvegarde',
    fault: {
      'too large': 'Ce fichier est trop gros pour une sauvegarde. Choisissez-en un écrit par Sweepbook.',
      'no backup': 'Ce n’est pas une sauvegarde. Choisissez un fichier écrit par Sweepbook.',
      damaged: 'Ce fichier est tronqué ou abîmé. Choisissez une autre sauvegarde.',
      'no logbook': 'Ce fichier ne contient pas de carnet. Choisissez-en un écrit par Sweepbook.',
      'no version': 'Le carnet de ce fichier n’indique pas sa version. Choisissez un fichier écrit par Sweepbook.',
      newer: 'Cette sauvegarde a été faite par un Sweepbook plus récent. Mettez d’abord celui-ci à jour.',
    },
    plan: (made, plan) => [`Faite le ${write.day(made)}.`, ...brings(plan), UNCHANGED],
    taught: (count) =>
      `Elle contient aussi ${write.count(count, { one: '# mot appris', other: '# mots appris' })}. Si vous réunissez les deux, un mot déjà appris ici reste tel quel.`,
    conflict: 'Si vous réunissez les deux, les fiches en conflit sont toutes gardées. Pour le matériel, la modification la plus récente l’emporte.',
    each: 'Le détail',
    item,
    more: (count) => write.count(count, { one: 'et # autre élément', other: 'et # autres éléments' }),
    aside: setAside,
    join: 'Réunir avec ce qui est ici',
    replace: 'Remplacer tout ce qui est ici',
    leave: 'Tout laisser tel quel',
    done: 'C’est fait. Une copie de l’état précédent est gardée ci-dessous.',
    withoutWords: (why) => `Le carnet est rétabli. ${why}`,
  },
  table: {
    title: 'Tableau',
    about: 'Chaque mesure, saisie et contrôle par photos sur une ligne, pour un tableur. Les essais ne sont que dans la sauvegarde.',
    write: 'Exporter un tableau',
    choose: 'Importer un tableau',
    fault: (fault) => {
      switch (fault.is) {
        case 'open quote':
          return `Ligne ${write.number(fault.line)} : un guillemet n’est pas fermé. Fermez-le, puis choisissez de nouveau le fichier.`;
        case 'stray quote':
          return `Ligne ${write.number(fault.line)} : un guillemet se trouve au milieu d’un champ. Supprimez-le, puis choisissez de nouveau le fichier.`;
        case 'empty':
          return 'Ce tableau est vide. Il lui faut une ligne d’en-têtes et une ligne par valeur.';
        case 'too many lines':
          return `Ce tableau a plus de ${write.number(fault.most)} lignes. Divisez-le en plus petits.`;
      }
    },
    meanings: 'Ce que signifie chaque en-tête',
    passedOver: 'non utilisé',
    column: (number) => `Colonne ${write.number(number)}`,
    meaning: ({ key, heading }) => columnSaid(key, heading),
    missing: (meanings) => `Choisissez les en-têtes qui signifient : ${write.list(meanings)}.`,
    plan: ({ added, same, withoutValue, faults, newKit }) => [
      `Lignes : ${write.list([
        write.count(added, { one: '# nouvelle', other: '# nouvelles' }),
        `${write.number(same)} déjà ici`,
        `${write.number(withoutValue)} sans valeur`,
        `${write.number(faults.length)} avec une erreur`,
      ])}.`,
      ...(newKit.length === 0 ? [] : [`Nouveau dans le matériel : ${write.list(newKit)}.`]),
      UNCHANGED,
    ],
    line: lineFault,
    more: (count) => write.count(count, { one: 'et # autre ligne avec une erreur', other: 'et # autres lignes avec une erreur' }),
    bring: 'Importer ce qui convient',
    done: 'Le tableau est dans le carnet.',
  },
  copies: {
    title: 'Copies dans ce navigateur',
    none: 'Il n’y en a pas encore.',
    unread: 'Les copies quotidiennes ne peuvent pas être lues. Les données n’en souffrent pas.',
    bringBack: (at) => `Rétablir celle du ${write.dayAndSecond(at)}`,
    done: 'Tout est comme à ce moment-là.',
  },
};
