// French: what to enter for a lens on a body.
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { ShownThere } from '../../logbook/entering/shown.ts';
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import type { EnteringWords } from '../enteringWords.ts';
import { correctionBetween, focusFell, marginOf } from './focusFell.ts';
import { pair, place } from './subject.ts';
import { write } from './write.ts';

const KEEPS = { one: 'Le boîtier mémorise une valeur par objectif.', two: 'Le boîtier mémorise une valeur à chaque extrémité d’un zoom.' } as const;

const WHY: Readonly<Record<MemoryPlace['uncounted'][number]['why'], string>> = {
  'never measured': 'jamais mesuré',
  'only a value is known': 'seule une valeur est connue',
  'past the limit': 'la bande dépasse la limite',
  'beyond the scale': 'la bande est hors plage',
  'nothing held': 'aucune bande trouvée',
};

const CAME: Readonly<Record<Measured['by'], string>> = {
  sweep: 'Trouvé par un balayage',
  'by hand': 'Noté à la main',
  'from a table': 'Venu d’un tableau',
  'from another computer': 'Venu d’un autre ordinateur',
};

const CHECK = 'Contrôlez à cet endroit par photos.';

const SURE = `sûr à ${write.percent(0.95)}`;

const long = (focalLength: number): string => write.millimetres(millimetres(focalLength));
const where = ({ band }: Fit): string => place(band);
const missed = (fit: Fit): string => `${where(fit)} (${write.count(fit.past, { other: '# pas au-delà de l’extrémité' }, 1)})`;

function lies(linear: Fit, logarithmic: Fit): readonly string[] {
  if (linear.inside && logarithmic.inside) return ['Les deux valeurs sont dans sa bande.'];
  if (!linear.inside && !logarithmic.inside) return ['Aucune des deux n’est dans sa bande.', CHECK];
  return [linear.inside ? 'Seule la première est dans sa bande.' : 'Seule la seconde est dans sa bande.', CHECK];
}

function bracketSaid({ subject, bracket }: ShownThere): readonly string[] {
  if (bracket === null) return [];
  const { centre, at } = bracket;
  const head = `${place(subject)} : la fourchette du ${write.day(at)} place le centre à ${correctionBetween(centre)}.`;
  if (bracket.is === 'alone') return [head, ...(bracket.value === null ? ['C’est hors plage.'] : [])];
  const { band, difference } = bracket;
  if (bracket.is === 'agree')
    return [
      head,
      `Cela concorde avec le centre de la bande, ${write.signed(band, 1)}. Ensemble, ils donnent ${correctionBetween(bracket.joint)}, qui compte ici.`,
    ];
  const apart = `${write.signed(difference.value, 1)} ± ${write.number(marginOf(difference), 1)} pas`;
  return [
    head,
    `Cela diffère du centre de la bande, ${write.signed(band, 1)}, de ${apart} : la bande compte donc seule. Vérifiez la mise en place, puis mesurez de nouveau les deux.`,
  ];
}

function checkSaid({ subject, check }: ShownThere): string {
  if (check === null) return '';
  const { correction, bias, found, at } = check;
  const which = `${place(subject)} : le contrôle du ${write.day(at)}`;
  return found === 'confirmed'
    ? `${which} a confirmé ${writeSteps(correction)}.`
    : `${which} a montré un décalage à ${writeSteps(correction)} : le point tombe ${focusFell(bias)}.`;
}

export const words: EnteringWords = {
  title: 'Que saisir',
  gone: 'Ce boîtier ou cet objectif n’est plus dans le matériel.',
  about: ({ body, lens }) => [`${pair({ lens: lens.name, body: body.name })}.`, KEEPS[body.zoomStore]],
  bare: 'Objectif seul',
  behind: (converter) => `Avec ${converter}`,
  bands: 'Place dans chaque bande',
  toPrint: 'Page à imprimer',
  entered: 'Marquer comme saisi',
  enteredAt: (focalLength) => `Marquer comme saisi à ${long(focalLength)}`,
  weigh: {
    legend: 'Pondération',
    by: {
      'worst share': { label: 'À égalité', note: 'La configuration la moins bien servie l’est aussi bien que possible.' },
      use: { label: 'Par usage', note: 'Ce qui sert plus compte plus.' },
    },
    weightOf: (band, converter) => (converter ? `Usage à ${place(band)}, avec multiplicateur` : `Usage à ${place(band)}`),
    noUse: 'Indiquez combien elle sert, de 0 à 100. D’ici là, elle compte pour 1.',
  },
  unknown: 'Aucune bande n’est encore connue ici. Mesurez-en une, ou notez à la main ses deux extrémités.',
  missingEnd: (focalLength) =>
    `Ce boîtier mémorise une valeur à chaque extrémité d’un zoom. Mesurez aussi à ${long(focalLength)}. D’ici là, voici une seule valeur pour tout.`,
  enter: 'Saisissez',
  wide: (focalLength) => `Grand-angle, ${long(focalLength)} :`,
  tele: (focalLength) => `Télé, ${long(focalLength)} :`,
  serves: (outside, all, weighed) => {
    if (outside === 0) return write.count(all, { one: 'La valeur est dans la seule bande mesurée.', other: 'La valeur est dans les # bandes.' });
    return weighed
      ? `Avec cette pondération, elle est hors de ${write.count(outside, { one: '# bande', other: '# bandes' })} sur ${write.number(all)}.`
      : `Aucune valeur n’est dans les ${write.number(all)} bandes. Celle-ci est hors de ${write.number(outside)} d’entre elles.`;
  },
  table: { at: 'Mesuré à', off: 'Écart', share: 'Demi-bande' },
  at: place,
  off: ({ error }) => write.signed(error, 1),
  share: ({ share, inside, past }) => (inside ? `${write.percent(share)}, dedans` : `${write.percent(share)}, dépasse de ${write.number(past, 1)}`),
  middle: ({ band, linear, logarithmic }) => [
    `À ${place(band)}, entre les extrémités, le boîtier prend ${write.signed(linear.value, 1)} s’il suit la focale, et ${write.signed(logarithmic.value, 1)} s’il suit son logarithme.`,
    'Les marques ne disent pas lequel des deux.',
    `Mesuré : ${write.signed(band.centre, 1)}.`,
    ...lies(linear, logarithmic),
  ],
  trade: {
    title: 'À quoi convient chaque valeur',
    option: ({ value, fits }) => [
      `${writeSteps(value)} convient à ${write.list(fits.filter(({ inside }) => inside).map(where))}.`,
      `Ne convient pas à ${write.list(fits.filter(({ inside }) => !inside).map(missed))}.`,
    ],
  },
  shown: { title: 'Ce qu’ont montré les photos', bracket: bracketSaid, check: checkSaid },
  uncounted: (list) => `Non compté : ${write.list(list.map((one) => `${place(one)} (${WHY[one.why]})`))}.`,
  converter: (fNumber) => [
    'Le boîtier mémorise ceci à part de l’objectif seul.',
    ...(fNumber === null ? [] : [`L’objectif devient f/${write.number(fNumber, 1)}.`]),
  ],
  chart: {
    one: {
      'focal length': ['Barres : les bandes, selon la focale.', 'Trait : la valeur.', 'Une barre creuse n’atteint pas le trait.'],
      distance: ['Barres : les bandes, selon la distance.', 'Trait : la valeur.', 'Une barre creuse n’atteint pas le trait.'],
    },
    two: [
      'Barres : les bandes, selon la focale.',
      'Trait : ce que prend le boîtier s’il suit la focale.',
      'Tirets : s’il suit son logarithme.',
      'Une barre creuse n’atteint pas le trait.',
    ],
    mark: { 'focal length': long, distance: (distance) => write.distance(millimetres(distance)) },
  },
  page: {
    title: ({ body, lens }) => pair({ lens: lens.name, body: body.name }),
    about: ({ body, lens }, printed) => [
      ...(body.serial === null ? [] : [`Boîtier ${body.serial}.`]),
      ...(lens.serial === null ? [] : [`Objectif ${lens.serial}.`]),
      `Imprimé le ${write.day(printed)}.`,
      'Saisissez la valeur comme le dit le mode d’emploi de l’appareil, puis contrôlez-la par photos.',
    ],
    restsOn: (weighed) => (weighed ? 'Mesures à l’appui, par usage' : 'Mesures à l’appui'),
    evidence: ({ band, measured: { at, by, holds, interval, within } }, use) => [
      `${place(band)} : bande de ${writeSteps(band.low)} à ${writeSteps(band.high)}.`,
      by === 'sweep' && holds !== null ? `${write.count(holds, { one: '# essai', other: '# essais' })}, ${write.day(at)}.` : `${CAME[by]}, ${write.day(at)}.`,
      ...(interval ? [`Centre entre ${write.signed(interval.from, 1)} et ${write.signed(interval.to, 1)}, ${SURE}.`] : []),
      ...(within === null ? [] : [`À un pas près : sûr à ${write.chance(within)}.`]),
      ...(use === null ? [] : [`Compte pour ${write.number(use, 1)}.`]),
    ],
    lensGone: 'Cet objectif n’est plus dans le matériel. Fermez cette page et rouvrez-la depuis le carnet.',
    gone: 'Ceci n’est plus dans le matériel. Fermez cette page et rouvrez-la depuis le carnet.',
  },
};
