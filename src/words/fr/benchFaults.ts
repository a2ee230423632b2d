// French: what does not fit at the bench, and what to do about it.
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { byUnit } from '../countryInUse.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

const PLAIN: Readonly<Record<PlainFault, string>> = {
  'no aperture': 'Indiquez l’ouverture telle que l’affiche l’objectif ou l’appareil, par exemple 2,8. Elle est entre 0,7 et 128.',
  'no factor': 'Indiquez le facteur gravé sur le multiplicateur, de 1 à 3, par exemple 1,4.',
  'no focal length': 'Indiquez la focale en millimètres, de 4 à 2000.',
  'focal length unread': 'Indiquez la focale en millimètres, par exemple 85.',
  get 'no distance'() {
    return byUnit({ m: 'Indiquez la distance en mètres, de 0,05 à 500.', ft: 'Indiquez la distance en pieds, de 0,17 à 1640.' });
  },
  'no measured distance': 'Indiquez la distance que vous avez mesurée.',
  'no reach': 'Indiquez en millimètres, de 1 à 1000, la longueur du repère du plan focal à l’avant de l’objectif.',
  'no magnification': 'Indiquez le grandissement : taille sur le capteur divisée par taille de la mire, de 0,0002 à 10. La grandeur nature est 1.',
  'no length on the target': 'Indiquez la longueur sur la mire en millimètres, par exemple les 100 mm de son échelle.',
  'no pixels': 'Comptez les pixels que couvre la longueur dans la photo en pleine définition. Il en faut au moins 10.',
  'no pixels spanned': 'Indiquez combien de pixels d’une photo en pleine définition couvre l’échelle.',
  'no pixel pitch': 'Indiquez le pas des pixels en micromètres, de 0,5 à 50.',
  'no width of a photograph': 'Indiquez la largeur d’une photo en pleine définition, en pixels, par exemple 6000.',
  'no sensor width': 'Indiquez la largeur du capteur en millimètres, de 4 à 100.',
  'no sensor height': 'Indiquez la hauteur du capteur en millimètres, de 3 à 100.',
  'no circle of confusion': 'Indiquez le cercle de confusion en millimètres, de 0,001 à 0,2. L’usage est de 0,03.',
  'no area': 'Indiquez la taille de la zone AF sur le capteur en millimètres, de 0,2 à 30. L’usage est de 2,5.',
  'no step worth': 'Indiquez ce que vaut un pas, en part de la demi-profondeur de foyer, de 0,01 à 1. L’usage est de 0,125.',
  'no exposure': 'Indiquez la sensibilité ISO, l’ouverture et la vitesse que l’appareil affiche pour la mire.',
  'no iso speed': 'Indiquez la sensibilité ISO telle que l’affiche l’appareil, par exemple 400.',
  'no shutter': 'Indiquez la vitesse sous la forme 1/125 pour une fraction de seconde, ou 2" pour des secondes entières.',
  'no light value': 'Relevez de nouveau la sensibilité ISO, l’ouverture et la vitesse sur l’appareil. Aucune pièce n’est aussi claire ou sombre.',
  'plenty below fine': 'Mettez « abondante » plus haut que « suffisante ».',
  'no angle': 'Indiquez l’angle en degrés, de \u221290 à 90.',
  'no reflection': 'Indiquez à combien de pixels du milieu se trouve le reflet, sur une photo en pleine définition.',
  'no offset on the sensor': 'Indiquez le décalage sur le capteur en millimètres.',
  'offset beyond the picture': 'Ce décalage dépasse toute image. Mesurez-le de nouveau à partir du milieu de l’image.',
  'no spot': 'Indiquez à combien de millimètres de sa source revient la tache lumineuse, ou 0 si elle la rejoint.',
  'no sides': 'Indiquez la longueur des quatre côtés en visée écran, tous au-dessus de zéro.',
  'no rectangle': 'Indiquez la largeur et la hauteur du rectangle en millimètres.',
  'rectangle of nothing': 'Indiquez la largeur et la hauteur du rectangle en millimètres, toutes deux au-dessus de zéro.',
  'tilt without a rig': 'Indiquez l’ouverture maximale et ce qui est encore signalé au banc. L’inclinaison en découle.',
  'target too large': 'La mire serait plus grande qu’un mur. Rapprochez-la, ou réduisez la zone AF.',
  'no drawn length': 'La longueur dessinée de l’échelle manque.',
  'no printed length': 'Indiquez la longueur de l’échelle imprimée en millimètres, par exemple 100.',
  'no ramp line': 'Indiquez le nombre à côté de la ligne la plus nette, avec son signe.',
  'no ramp length': 'Indiquez la longueur de la rampe en millimètres.',
  'no set-back': 'Indiquez de combien de millimètres le haut de la rampe est en retrait du bas.',
  'set-back too large': 'Indiquez de combien le haut de la rampe est en retrait du bas : plus de 0, et moins que la longueur de la rampe.',
  'lean too steep or flat': 'Inclinez la rampe entre 10° et 80°. Elle est dessinée pour 45°.',
  'no share': 'Indiquez la part de la profondeur de champ devant le sujet, de 0 à 100 %.',
  'depth without end': 'La profondeur de champ va ici à l’infini : il n’y a donc pas de part devant. Ouvrez le diaphragme ou rapprochez-vous.',
  'share beyond the range': 'La plage de corrections s’arrête avant cette part. Choisissez une part plus proche du milieu.',
  'share without a rig': 'Vous avez demandé une part de la profondeur devant. Indiquez l’ouverture maximale au banc pour voir la valeur qui la donne.',
  'no stored correction': 'Indiquez la correction mémorisée actuellement, par exemple \u22123.',
  'no such correction': 'Indiquez la correction par un nombre entier, par exemple \u22123.',
  'no temperature': 'Indiquez la température en degrés Celsius, de \u221250 à 60.',
  'does not fit': 'Cela ne convient pas. Vérifiez ce que vous avez indiqué.',
};

export function benchFault(fault: BenchFault): string {
  switch (fault.is) {
    case 'distance unread':
      return fault.unit === 'm' ? 'Indiquez la distance en mètres, par exemple 1,75.' : 'Indiquez la distance en pieds, par exemple 5,74.';
    case 'distance out of range':
      return fault.unit === 'm' ? 'Indiquez la distance en mètres, de 0,05 à 500.' : 'Indiquez la distance en pieds, de 0,17 à 1640.';
    case 'two lengths':
      return `« ${fault.text} » peut désigner deux longueurs. Écrivez ${write.choice([write.typedLength(fault.one), write.typedLength(fault.other)])}.`;
    case 'two numbers':
      return `« ${fault.text} » peut désigner deux nombres. Écrivez ${write.choice([write.typed(fault.one), write.typed(fault.other)])}.`;
    case 'focal length in another unit':
      return `Indiquez la focale en millimètres. ${write.typedLength(fault.typed)} donne ${write.number(fault.meant, 1)}.`;
    case 'focal length in metres':
      return `${write.number(fault.typed, 3)} semble être en mètres. Indiquez la focale en millimètres, ici ${write.number(fault.meant)}.`;
    case 'nearer than its closest focus':
      return `Cet objectif ne fait pas le point à ${write.distance(fault.wanted, fault.unit)}. Placez la mire à ${write.distance(fault.closest, fault.unit)} au moins du repère du plan focal.`;
    case 'no focus so near':
      return `Un objectif simple de ${write.number(fault.focalLength)} mm ne peut pas faire le point à ${write.distance(fault.distance, 'm')} ${FROM[fault.from]}. Mesurez de nouveau la distance, ou mesurez le grandissement sur l’échelle de la mire.`;
    case 'tilt too large':
      return `L’inclinaison dépasserait ${write.number(fault.most)}°. Mesurez de nouveau les côtés, et vérifiez la taille et la distance de la mire.`;
    case 'print misread':
      return `Mesurez de nouveau l’échelle, en millimètres, entre les bords extérieurs de ses traits d’extrémité. Elle devrait faire environ ${write.number(fault.drawn)}.`;
    default:
      return PLAIN[fault.is];
  }
}
