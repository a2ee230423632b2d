// Spanish: what does not fit a field of the kit, in a form or in a file.
import type { FieldFault } from '../../kit/fault.ts';
import { byUnit } from '../countryInUse.ts';

export const FIELD_FAULT: Readonly<Record<FieldFault, string>> = {
  'no name': 'Póngale un nombre que pueda reconocer.',
  'name too long': 'Use un nombre de 60 caracteres como máximo.',
  'engraving empty': 'Déjelo vacío o cópielo de la cámara o del objetivo.',
  'engraving too long': 'Use 60 caracteres como máximo.',
  'note too long': 'Use 2000 caracteres como máximo.',
  'no focal length': 'Indique la distancia focal en milímetros, de 4 a 2000.',
  get 'no distance'() {
    return byUnit({ m: 'Indique la distancia en metros, de 0,05 a 500.', ft: 'Indique la distancia en pies, de 0,17 a 1640.' });
  },
  'no sensor size': 'Indique la anchura y la altura del sensor en milímetros.',
  'sensor too small': 'Un sensor mide al menos 4\u00a0mm de ancho y de alto.',
  'sensor too large': 'Un sensor mide 70\u00a0mm de ancho y de alto como máximo.',
  'remembers no number': 'Indique cuántos objetivos recuerda, con un número entero.',
  'remembers too few': 'Indique al menos 1 objetivo.',
  'remembers too many': 'Indique 1000 objetivos como máximo.',
  'no aperture': 'Indique la abertura como número f, por ejemplo 1,8.',
  'aperture too wide': 'La abertura máxima no puede pasar de f/0,5.',
  'aperture too narrow': 'La abertura máxima no puede ser menor que f/64.',
  'focal lengths turned round': 'Indique primero la distancia focal más corta.',
  'no factor': 'Indique el factor, por ejemplo 1,4.',
  'factor too small': 'El factor es al menos 0,5.',
  'factor too large': 'El factor es 4 como máximo.',
  'no lowest correction': 'Indique la corrección menor con un número entero, por ejemplo \u221220.',
  'no highest correction': 'Indique la corrección mayor con un número entero, por ejemplo 20.',
  'no step': 'Indique cuánto cambia la corrección con cada clic, con un número entero desde 1.',
  'scale too short': 'El rango debe tener al menos tres correcciones.',
  'step does not divide': 'El paso debe dividir el rango sin resto.',
  'arrows not chosen': 'Elija qué muestra este cuerpo junto a la luz de enfoque.',
  'does not fit': 'No es válido. Revise lo que ha escrito.',
};
