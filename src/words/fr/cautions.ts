// French: the cautions of the bench. Laser classes are those of IEC 60825-1.
import type { Caution, Harm } from '../../optics/setUp/caution.ts';
import { flicker } from '../../optics/lamps.ts';
import type { CautionsWords } from '../cautionsWords.ts';
import { write } from './write.ts';

const HARM: Readonly<Record<Harm, string>> = {
  manual:
    'Suivez le mode d’emploi de votre appareil et les conditions de garantie de la marque. Rien ici ne demande d’ouvrir l’appareil ou d’en régler l’intérieur.',
  'heavy lens': 'Montez un objectif lourd par son propre collier de trépied. Tenez-le quand vous desserrez ou serrez une fixation.',
  leads: 'Faites courir les câbles le long du mur ou collez-les au sol, afin que personne ne trébuche et n’entraîne le banc.',
  tripod: 'Écartez entièrement les jambes du trépied. Suspendez-y un poids bas s’il risque de basculer.',
  'hot lamps': 'Les lampes chauffent. Tenez-les loin du papier, des tissus et des mains, et laissez-les refroidir avant de les déplacer.',
  mirror: 'Ne laissez jamais le miroir renvoyer le soleil ou une lampe dans l’objectif ou dans un œil. Cherchez d’abord le reflet en visée écran ou de côté.',
  'edges of the mirror': 'Les bords du miroir coupent. Fixez-le pour qu’il ne puisse pas tomber.',
  laser: 'N’employez qu’un laser de classe 1 ou 2 (CEI 60825-1). Ne regardez jamais son faisceau ni son reflet, et ne l’allumez jamais avec un œil au viseur.',
  'laser on the sensor': 'Tenez le faisceau du laser et son reflet hors de l’objectif. Il peut endommager le capteur.',
};

export const words: CautionsWords = {
  title: 'Précautions',
  takeCare: 'Attention.',
  caution,
};

function caution(one: Caution): string {
  switch (one.is) {
    case 'service':
      return 'Une correction n’annule qu’un écart constant. Pour un écart au-delà de la plage de corrections, un objectif abîmé ou une netteté inégale, adressez-vous au service après-vente de la marque.';
    case 'lamps on the mains': {
      const { hertz } = flicker(one.mains);
      return `Sur un secteur à ${write.number(one.mains)} Hz, les lampes scintillent ${write.number(hertz)} fois par seconde. Si le témoin clignote, prenez une lampe sans scintillement, et exposez les photos pendant 1/${hertz} s ou plus.`;
    }
    case 'warm light':
      return 'Une lumière chaude peut décaler le point, un peu plus près ou plus loin qu’à la lumière du jour. Mesurez dans la lumière où vous photographiez.';
    default:
      return HARM[one.is];
  }
}
