// French: what does not fit a field of the kit, in a form or in a file.
import type { FieldFault } from '../../kit/fault.ts';
import { byUnit } from '../countryInUse.ts';

export const FIELD_FAULT: Readonly<Record<FieldFault, string>> = {
  'no name': 'Donnez-lui un nom que vous reconnaîtrez.',
  'name too long': 'Le nom a au plus 60 caractères.',
  'engraving empty': 'Laissez le champ vide, ou recopiez ce qui est sur le boîtier ou l’objectif.',
  'engraving too long': 'Écrivez au plus 60 caractères.',
  'note too long': 'Écrivez au plus 2000 caractères.',
  'no focal length': 'Indiquez la focale en millimètres, de 4 à 2000.',
  get 'no distance'() {
    return byUnit({ m: 'Indiquez la distance en mètres, de 0,05 à 500.', ft: 'Indiquez la distance en pieds, de 0,17 à 1640.' });
  },
  'no sensor size': 'Indiquez la largeur et la hauteur du capteur en millimètres.',
  'sensor too small': 'Un capteur a au moins 4 mm de largeur et de hauteur.',
  'sensor too large': 'Un capteur a au plus 70 mm de largeur et de hauteur.',
  'remembers no number': 'Indiquez par un nombre entier combien d’objectifs il mémorise.',
  'remembers too few': 'Indiquez au moins 1 objectif.',
  'remembers too many': 'Indiquez au plus 1000 objectifs.',
  'no aperture': 'Indiquez l’ouverture par son nombre f, par exemple 1,8.',
  'aperture too wide': 'L’ouverture maximale ne dépasse pas f/0,5.',
  'aperture too narrow': 'L’ouverture maximale est d’au moins f/64.',
  'focal lengths turned round': 'Indiquez d’abord la focale la plus courte.',
  'no factor': 'Indiquez le facteur, par exemple 1,4.',
  'factor too small': 'Le facteur est d’au moins 0,5.',
  'factor too large': 'Le facteur est d’au plus 4.',
  'no lowest correction': 'Indiquez la correction la plus basse par un nombre entier, par exemple \u221220.',
  'no highest correction': 'Indiquez la correction la plus haute par un nombre entier, par exemple 20.',
  'no step': 'Indiquez le pas par un nombre entier, à partir de 1.',
  'scale too short': 'La plage doit compter au moins trois corrections.',
  'step does not divide': 'La plage doit être un multiple du pas.',
  'arrows not chosen': 'Choisissez ce que ce boîtier affiche à côté du témoin.',
  'does not fit': 'Cela ne convient pas. Vérifiez ce que vous avez indiqué.',
};
