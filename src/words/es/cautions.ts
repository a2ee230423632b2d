// Spanish: the cautions of the bench. Laser classes are those of IEC 60825-1.
import type { Caution, Harm } from '../../optics/setUp/caution.ts';
import { flicker } from '../../optics/lamps.ts';
import type { CautionsWords } from '../cautionsWords.ts';
import { write } from './write.ts';

const HARM: Readonly<Record<Harm, string>> = {
  manual: 'Siga el manual de su cámara y lo que su fabricante dice de la garantía. Aquí no hay que abrir ni ajustar nada por dentro.',
  'heavy lens': 'Sujete un objetivo pesado por su propio pie de trípode. Sosténgalo mientras afloja o aprieta un bloqueo.',
  leads: 'Lleve los cables junto a la pared o péguelos al suelo, para que nadie tropiece y tire el montaje.',
  tripod: 'Abra del todo las patas del trípode. Si pudiera volcar, cuelgue un peso en la parte baja.',
  'hot lamps': 'Las lámparas se calientan. Manténgalas lejos de papel, tela y manos, y deje que se enfríen antes de moverlas.',
  mirror: 'Nunca deje que el espejo refleje el sol o una lámpara hacia el objetivo o un ojo. Busque antes el reflejo en la vista en vivo o desde un lado.',
  'edges of the mirror': 'Los bordes del espejo cortan. Fíjelo de modo que no pueda caerse.',
  laser: 'Use solo un láser de clase 1 o 2 (IEC 60825-1). No mire nunca a su haz ni a su reflejo, y no lo tenga nunca encendido con un ojo en el visor.',
  'laser on the sensor': 'Mantenga el haz del láser y su reflejo fuera del objetivo. Puede dañar el sensor.',
};

export const words: CautionsWords = {
  title: 'Precauciones',
  takeCare: 'Cuidado.',
  caution,
};

function caution(one: Caution): string {
  switch (one.is) {
    case 'service':
      return 'Una corrección solo remedia un error constante. Si el error queda fuera del rango de corrección, el objetivo está dañado o la nitidez es desigual, acuda al servicio técnico del fabricante.';
    case 'lamps on the mains': {
      const { hertz } = flicker(one.mains);
      return `Las lámparas de una red de ${write.number(one.mains)}\u00a0Hz parpadean ${write.number(hertz)} veces por segundo. Si la luz de enfoque vacila, use una lámpara sin parpadeo y exponga las fotos 1/${hertz}\u00a0s o más.`;
    }
    case 'warm light':
      return 'Con luz cálida, el enfoque puede quedar algo más cerca o más lejos que con luz del día. Mida con la luz con la que fotografía.';
    default:
      return HARM[one.is];
  }
}
