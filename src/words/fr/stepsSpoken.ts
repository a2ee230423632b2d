// French: each step of the set-up walk as it is spoken, in one short sentence.
import { FROM, distanceAloud } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { sayCorrection } from '../../hearing/languages/fr/sayCorrection.ts';
import { write } from './write.ts';

export const SPOKEN: Each = {
  practice: () => 'Rien à mettre en place, observez le témoin à l’écran.',
  'old value': () => 'Notez la correction mémorisée.',
  tripod: () => 'Appareil sur trépied solide, déclenchement à distance.',
  converter: ({ factor }) => `Montez le multiplicateur ${write.number(factor, 2)} fois.`,
  zoom: ({ focalLength }) => `Zoom à ${write.number(focalLength)} millimètres.`,
  target: () => 'Mire bien à plat, centre à hauteur d’objectif.',
  print: () => 'Mesurez l’échelle imprimée.',
  distance: ({ distance: length, from, unit }) => `Mire à ${distanceAloud(length, unit)} ${FROM[from]}.`,
  light: () => 'Éclairez la mire régulièrement, et relevez l’exposition.',
  square: ({ by }) =>
    ({
      mirror: 'Alignez la mire au miroir.',
      sides: 'Alignez la mire par ses quatre côtés.',
      spot: 'Alignez la mire à la tache renvoyée.',
    })[by],
  stabiliser: () => 'Stabilisateur coupé.',
  'centre point': () => 'Collimateur central, autofocus ponctuel.',
  aperture: ({ aperture }) => `Ouverture maximale, f ${write.number(aperture, 1)}.`,
  'focus button': () => 'Faites les essais avec le bouton de mise au point.',
  temperature: () => 'Laissez le matériel prendre la température de la pièce.',
  'start value': ({ start }) => `Correction activée pour cet objectif, à ${sayCorrection(start)}.`,
  'critical focus': ({ by }) =>
    by === 'live view' ? 'Faites le point en visée écran, grossissement maximal.' : 'Cherchez le point le plus net sur des photos.',
  magnification: () => 'Photographiez l’échelle et comptez ses pixels.',
  'hold focus': ({ at }) =>
    at === 'body' ? 'Point manuel sur le boîtier, et plus de main sur la bague.' : 'Point manuel sur l’objectif, et plus de main sur la bague.',
  viewfinder: ({ leaves }) => (leaves === 'live view' ? 'Quittez la visée écran, l’œil au viseur.' : 'L’œil au viseur.'),
};
