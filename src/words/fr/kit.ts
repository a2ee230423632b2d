// French: the kit.
import type { Lens } from '../../kit/lens.ts';
import type { KitList } from '../../kit/change.ts';
import { byUnit } from '../countryInUse.ts';
import type { KitWords } from '../kitWords.ts';
import { FIELD_FAULT } from './fieldFaults.ts';
import { write } from './write.ts';

/** Each with what agrees with it. */
const CHANGED: Readonly<Record<KitList, string>> = {
  bodies: 'Ce boîtier a été modifié',
  lenses: 'Cet objectif a été modifié',
  converters: 'Ce multiplicateur a été modifié',
  situations: 'Cette configuration a été modifiée',
};

const GONE: Readonly<Record<KitList, string>> = {
  bodies: 'Ce boîtier n’est plus ici',
  lenses: 'Cet objectif n’est plus ici',
  converters: 'Ce multiplicateur n’est plus ici',
  situations: 'Cette configuration n’est plus ici',
};

const LACKS: Readonly<Record<'body' | 'lens' | 'converter', string>> = {
  body: 'Choisissez d’abord un boîtier pour cette configuration.',
  lens: 'Choisissez d’abord un objectif pour cette configuration.',
  converter: 'Choisissez d’abord un multiplicateur pour cette configuration.',
};

const named = (lenses: readonly Pick<Lens, 'name' | 'serial'>[]): string =>
  write.list(lenses.map(({ name, serial }) => (serial === null ? name : `${name} (${serial})`)));

const range = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? write.number(from, 1) : `${write.number(from, 1)}\u2013${write.number(to, 1)}`;

export const words: KitWords = {
  title: 'Matériel',
  lists: {
    body: { title: 'Boîtiers', add: 'Ajouter un boîtier', unnamed: 'Nouveau boîtier' },
    lens: { title: 'Objectifs', add: 'Ajouter un objectif', unnamed: 'Nouvel objectif' },
    converter: { title: 'Multiplicateurs', add: 'Ajouter un multiplicateur', unnamed: 'Nouveau multiplicateur' },
  },
  none: 'Encore aucun.',
  retired: (count) => `Retirés (${write.number(count)})`,
  save: 'Enregistrer',
  retire: 'Retirer, en gardant toutes ses mesures',
  bringBack: 'Remettre en service',
  warning: (warning) => {
    const body = warning.body.name;
    if (warning.about === 'memory') {
      const left = warning.left === 0 ? 'il ne reste pas de place' : write.count(warning.left, { one: 'il reste # place', other: 'il reste # places' });
      return `${body} mémorise ${write.count(warning.remembers, { one: '# objectif', other: '# objectifs' })}, et ${left}. Supprimez de sa mémoire un objectif que vous n’utilisez plus avant d’en saisir un autre.`;
    }
    const lenses = named(warning.lenses);
    return warning.surely
      ? `${body} ne distingue pas ces objectifs : ${lenses}. Ils partagent une seule valeur mémorisée : saisissez celle de l’objectif monté.`
      : `Ces objectifs partagent peut-être une seule valeur mémorisée sur ${body} : ${lenses}. Consultez son mode d’emploi, puis indiquez-le dans le matériel.`;
  },
  fields: {
    name: 'Nom',
    yourName: 'Le nom que vous lui donnez.',
    serial: 'Numéro de série',
    model: 'Modèle inscrit dans ses photos',
    sensor: { legend: 'Capteur, mm', width: 'largeur', height: 'hauteur' },
    scale: { legend: 'Plage de corrections', from: 'de', to: 'à', step: 'pas' },
    remembers: { label: 'Nombre d’objectifs mémorisés', hint: 'Laissez vide si vous ne le savez pas. C’est dans le mode d’emploi.' },
    focal: { legend: 'Focale, mm', hint: 'Laissez la plus longue vide si l’objectif n’est pas un zoom.', from: 'plus courte', to: 'plus longue' },
    widest: { legend: 'Ouverture maximale, f/', from: 'à la plus courte', to: 'à la plus longue' },
    get closest() {
      return byUnit({ m: 'Distance minimale, m', ft: 'Distance minimale, pi' });
    },
    factor: 'Facteur',
  },
  arrows: {
    label: 'Flèches à côté du témoin',
    is: { absent: 'Sans flèches', 'right-is-up': 'Flèche droite : monter, vers +', 'right-is-down': 'Flèche droite : descendre, vers \u2212' },
  },
  zoomStore: { label: 'Pour un zoom, il mémorise', is: { one: 'une valeur', two: 'une valeur par extrémité' } },
  copies: {
    label: 'Deux exemplaires d’un objectif',
    is: { 'not known': 'inconnu', 'told apart': 'sont distingués', 'share a value': 'partagent une valeur' },
  },
  trigger: { label: 'La mise au point démarre', is: { 'half-press': 'à mi-course', 'rear button': 'au bouton arrière' } },
  manualFocus: {
    label: 'La mise au point manuelle se règle',
    is: { 'not known': 'inconnu', 'on the lens': 'sur l’objectif', 'on the body': 'sur le boîtier', 'on both': 'sur les deux' },
  },
  choices: 'Flèches, bouton, zooms et exemplaires',
  card: 'Carte pour le sac, à imprimer',
  happened: {
    open: 'Noter un micro\u00adlogiciel ou une révision',
    form: 'Événement',
    what: 'Événement',
    is: { firmware: 'Nouveau micro\u00adlogiciel', service: 'Révision' },
    note: 'Note',
    save: 'Enregistrer la note',
    saved: 'Enregistré. Ce qui a été mesuré avant est à remesurer.',
  },
  photograph: {
    title: 'Reprendre les données d’une photo',
    choose: 'Une photo',
    drop: 'Choisissez-la, ou déposez-la ici.',
    stays: 'Elle est lue sur cet ordinateur et n’est envoyée nulle part.',
    use: 'Reprendre les données cochées',
    used: 'Les données sont dans le matériel.',
    fault: {
      gone: 'Ce fichier ne peut pas être lu. Vérifiez qu’il existe toujours, puis choisissez-le de nouveau.',
      'no photograph': 'Ce fichier n’est pas une photo lisible ici. Choisissez un JPEG tel que l’appareil l’a écrit.',
      'no camera data': 'Cette photo ne contient pas de données de l’appareil. Choisissez-en une telle que l’appareil l’a écrite.',
      'camera data unread': 'Les données de l’appareil dans cette photo ne peuvent pas être lues. Choisissez-en une autre.',
    },
    openSituation: 'Ouvrir sa configuration dans le carnet',
    read: ({ taken, focalLength, aperture, distance }, body, lens) =>
      [
        taken !== null && `Prise le ${write.day(taken)}.`,
        focalLength !== null && `À ${write.millimetres(focalLength)}.`,
        aperture !== null && `f/${write.number(aperture, 1)}.`,
        distance !== null && `Mise au point à ${write.distance(distance)}.`,
        body === null ? 'Le boîtier n’est pas encore dans votre matériel.' : `Boîtier de votre matériel : ${body}.`,
        lens === null ? 'L’objectif n’est pas encore dans votre matériel.' : `Objectif de votre matériel : ${lens}.`,
      ].filter((sentence) => sentence !== false),
    offer: (offer) => {
      switch (offer.field) {
        case 'model':
          return offer.to === 'body' ? `Modèle du boîtier : ${offer.value}` : `Modèle de l’objectif : ${offer.value}`;
        case 'serial':
          return offer.to === 'body' ? `Numéro de série du boîtier : ${offer.value}` : `Numéro de série de l’objectif : ${offer.value}`;
        case 'focal':
          return `Focale de l’objectif : ${range(offer.value)} mm`;
        case 'widest':
          return `Ouverture maximale de l’objectif : f/${range(offer.value)}`;
        case 'focalLength':
          return `Focale : ${write.millimetres(offer.value)}`;
        case 'distance':
          return `Distance : ${write.distance(offer.value)}`;
      }
    },
    body: 'Boîtier',
    lens: 'Objectif',
  },
  fault: FIELD_FAULT,
  unsaved: (fault) => {
    switch (fault.is) {
      case 'changed elsewhere':
        return `${CHANGED[fault.list]} dans une autre fenêtre. Revenez à la liste, puis refaites votre changement.`;
      case 'gone':
        return `${GONE[fault.list]}. Rechargez la liste.`;
      case 'situation lacks':
        return LACKS[fault.what];
    }
  },
};
