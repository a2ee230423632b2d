// French: each step of the set-up walk as it is shown, in a few short sentences.
import { writeSteps } from '../../sweep/scale.ts';
import { FROM } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SHOWN: Each = {
  practice: () => 'Avec le simulateur, il n’y a rien à mettre en place. Observez le témoin à l’écran comme celui du viseur.',
  'old value': () => 'Indiquez la correction mémorisée dans l’appareil pour ce boîtier et cet objectif. Vous pourrez toujours y revenir.',
  tripod: () =>
    'Placez l’appareil sur un trépied solide et serrez toutes les fixations. Prenez une télécommande pour les photos et, si elle a une mi-course, pour les essais.',
  converter: ({ factor }) =>
    `Montez le multiplicateur ${write.number(factor, 2)}\u00d7 entre le boîtier et l’objectif. La valeur n’est juste qu’avec ce multiplicateur.`,
  zoom: ({ focalLength }) => `Réglez la bague de zoom sur ${write.millimetres(focalLength)} et laissez-la là.`,
  target: () => 'Fixez la mire bien à plat sur un support rigide et vertical ou sur un mur. Son repère central est à la hauteur du centre de l’objectif.',
  print: () => 'Mesurez l’échelle imprimée entre les bords extérieurs de ses traits d’extrémité, et indiquez la longueur.',
  distance: ({ distance: length, from, unit }) =>
    `Placez la mire à ${write.distance(length, unit)} ${from === 'film plane' ? 'du repère du plan focal du boîtier' : FROM[from]}. Indiquez la distance mesurée.`,
  light: () =>
    'Éclairez la mire régulièrement des deux côtés, sans reflets. Indiquez la sensibilité ISO, l’ouverture et la vitesse que l’appareil affiche pour elle.',
  square: ({ by }) =>
    ({
      mirror:
        'Posez un petit miroir à plat au centre de la mire. Tournez la mire jusqu’à ce que l’objectif se voie au milieu de la visée écran. Indiquez l’écart qui reste.',
      sides: 'Mesurez en visée écran les quatre côtés entre les repères des coins, et indiquez-les. Tournez la mire comme le dit le panneau.',
      spot: 'Sans œil au viseur, envoyez la tache lumineuse d’à côté de l’objectif vers le miroir. Tournez la mire jusqu’à ce qu’elle revienne à sa source. Indiquez l’écart qui reste.',
    })[by],
  stabiliser: ({ at }) =>
    ({
      both: 'Coupez le stabilisateur de l’objectif et celui du boîtier. Sur trépied, ils font bouger l’image.',
      lens: 'Coupez le stabilisateur de l’objectif. Sur trépied, il fait bouger l’image.',
      body: 'Coupez le stabilisateur du boîtier. Sur trépied, il fait bouger l’image.',
    })[at],
  'centre point': () => 'Choisissez le collimateur central seul et l’autofocus ponctuel. Placez le collimateur sur le repère central.',
  aperture: ({ aperture }) => `Choisissez la priorité à l’ouverture ou l’exposition manuelle, et l’ouverture maximale, f/${write.number(aperture, 1)}.`,
  'focus button': () => 'Ce boîtier fait le point au bouton arrière. Maintenez ce bouton, et non le déclencheur, chaque fois que le panneau dit d’appuyer.',
  temperature: () =>
    'Laissez l’appareil et l’objectif dans la pièce une demi-heure au moins, jusqu’à ce qu’ils en aient la température. Indiquez-la si vous la connaissez.',
  'start value': ({ start }) => `Activez la correction pour cet objectif seul, et réglez-la sur ${writeSteps(start)}.`,
  'critical focus': ({ by }) =>
    by === 'live view'
      ? 'En visée écran, au grossissement et à l’ouverture maximaux, dépassez le point le plus net avec la bague et revenez-y. Trois fois au même endroit : la mise au point est rigoureuse.'
      : 'Photographiez la mire en déplaçant chaque fois la bague d’un cheveu. Comparez en pleine définition, et revenez à la plus nette. Deux fois au même endroit : la mise au point est rigoureuse.',
  magnification: () =>
    'Photographiez la mire. Comptez les pixels que couvre son échelle en pleine définition, et indiquez-les. Ils donnent le vrai grandissement.',
  'hold focus': ({ at }) =>
    at === 'body'
      ? 'Passez en mise au point manuelle sur le boîtier, pour ne pas toucher l’objectif. Ne touchez désormais plus la bague.'
      : 'Passez le sélecteur de l’objectif sur manuel sans tourner la bague. Fixez la bague avec un ruban qui se décolle proprement, et vérifiez de nouveau la mise au point.',
  viewfinder: ({ leaves }) =>
    leaves === 'live view'
      ? 'Quittez la visée écran et regardez dans le viseur. Réglez l’oculaire si vous ne voyez pas nettement le témoin.'
      : 'Regardez dans le viseur. Réglez l’oculaire si vous ne voyez pas nettement le témoin.',
};
