// French: the logbook's list.
import type { DueReason } from '../../logbook/due.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { LogbookWords } from '../logbookWords.ts';
import { focusFell } from './focusFell.ts';
import { small } from '../run.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const DAYS_IN_A_MONTH = 30.44;

const RECORDS = { one: '# fiche', other: '# fiches' };

const FOUND = { one: '# trouvé', other: '# trouvés' };

const since = (happened: string, note: string): string =>
  note === '' ? `${happened} depuis la mesure.` : `${happened} depuis la mesure : ${note.replace(/\.$/, '')}.`;

function due(reason: DueReason): string {
  switch (reason.why) {
    case 'age':
      return reason.days < 60
        ? `Dernière mesure il y a ${write.count(reason.days, { one: '# jour', other: '# jours' })}.`
        : `Dernière mesure il y a ${write.number(Math.floor(reason.days / DAYS_IN_A_MONTH))} mois.`;
    case 'firmware':
      return since('Nouveau micro\u00adlogiciel', reason.note);
    case 'service':
      return since('Révision en atelier', reason.note);
    case 'temperature':
      return `Mesuré à ${write.unit(reason.before, 'celsius')}, et il fait maintenant ${write.unit(reason.now, 'celsius')}.`;
    case 're-check':
      return `À la dernière vérification rapide, le témoin n’était pas fixe à ${writeSteps(reason.value)}, la valeur saisie.`;
    case 'drift':
      return `Les deux dernières mesures diffèrent de ${write.count(reason.apart, { other: '# pas' }, 1)}.`;
    case 'photographs':
      return `Des photos ont montré un décalage : à ${writeSteps(reason.value)}, le point est tombé ${focusFell(reason.bias)}.`;
  }
}

export const words: LogbookWords = {
  title: 'Carnet',
  find: { label: 'Chercher un boîtier, un objectif, une focale ou une distance', short: 'Chercher', found: 'Trouvé', aloud: 'Lire à voix haute' },
  found: (count) => (count === 0 ? 'aucun trouvé' : write.count(count, FOUND)),
  files: 'Sauvegarde et tableaux',
  practised: (count) => `Balayages simulés (${write.number(count)})`,
  filter: {
    open: (on) => (on ? 'Filtre : actif' : 'Filtre'),
    body: 'Boîtier',
    everyBody: 'Tous les boîtiers',
    show: 'Montrer',
    is: {
      all: 'Tout en service',
      'due again': 'À remesurer',
      'never measured': 'Jamais mesuré',
      'not entered': 'Mesuré, non saisi',
      retired: 'Retiré',
    },
    temperature: { label: 'Température actuelle, °C', hint: 'Les valeurs mesurées à une température très différente sont alors à remesurer.' },
  },
  nothing: {
    of: {
      all: 'Rien dans le carnet n’est en service.',
      'due again': 'Rien n’est à remesurer.',
      'never measured': 'Tout a été mesuré.',
      'not entered': 'Tout ce qui est mesuré a été saisi.',
      retired: 'Rien n’est retiré.',
    },
    like: (typed) => `Rien dans le carnet ne correspond à « ${typed} ». Essayez avec moins de lettres.`,
  },
  backUp: (reminder) =>
    reminder.is === 'none yet'
      ? `${write.count(reminder.unsaved, RECORDS)} sans aucune sauvegarde. Faites-en une maintenant.`
      : `La dernière sauvegarde date de ${write.count(reminder.days, { one: '# jour', other: '# jours' })} ; il y manque ${write.count(reminder.unsaved, RECORDS)}. Faites-en une nouvelle maintenant.`,
  noValue: 'aucune',
  more: (count) => `Montrer la suite (${write.number(count)} en tout)`,
  details: (subject) => line([place(subject), subject.body]),
  standing: ({ state, at, value, measured }) => {
    if (state === 'never measured' || at === null) return 'jamais mesuré';
    if (measured?.service) return `à faire réviser, mesuré le ${write.day(measured.at)}`;
    if (value === null) return `aucune valeur trouvée, ${write.day(at)}`;
    switch (state) {
      case 'measured':
        return `mesuré le ${write.day(at)}, pas encore saisi`;
      case 'entered':
        return `saisi le ${write.day(at)}`;
      case 'differ':
        return `saisi le ${write.day(at)}, mais ${writeSteps(measured?.chosen ?? value)} a été mesuré`;
    }
  },
  due,
  dueAgain: (reason) => `À remesurer : ${small(due(reason))}`,
  result: (outcome) => {
    switch (outcome.found) {
      case 'band':
        return writeSteps(outcome.chosen);
      case 'carried over':
        return outcome.service ? (outcome.side === 'high' ? 'au-dessus de la plage' : 'au-dessous de la plage') : writeSteps(outcome.chosen);
      case 'past the limit':
        return 'limite dépassée';
      case 'beyond the scale':
        return outcome.side === 'above' ? 'au-dessus de la plage' : 'au-dessous de la plage';
      case 'nothing':
        return 'sans bande';
    }
  },
  day: write.day,
};
