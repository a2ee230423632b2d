// Spanish: why a value is held next, as it follows the value. "+6: a medio camino entre +3 (fija) y +9 (apagada)".
import type { Landmark } from '../../sweep/next/reason.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

export function reason({ value, reason: why }: Suggestion): string {
  switch (why.because) {
    case 'start':
      return 'el centro más probable, para empezar';
    case 'remembered': {
      const when = write.monthAndYear(why.from.at);
      return why.from.of === 'situation'
        ? `donde estaba el centro en ${when}`
        : `cerca del centro de este conjunto en ${when}, con otra distancia focal u otra distancia`;
    }
    case 'between': {
      const isHalfway = why.below.value + why.above.value === 2 * value;
      return `${isHalfway ? 'a medio camino entre' : 'entre'} ${landmark(why.below)} y ${landmark(why.above)}`;
    }
    case 'beyond':
      return why.side === 'above' ? `por encima de ${landmark(why.of)}` : `por debajo de ${landmark(why.of)}`;
    case 'surer':
      return why.of.light === 'untold' ? 'otra vez, para asegurar (antes falló)' : `otra vez, para asegurar (antes, ${lightOf(why.of)})`;
    case 'again':
      return 'otra vez, porque su última respuesta fue inesperada';
    case 'end':
      return END[why.part][why.side];
    case 'unmoved':
      return 'para comprobar que el enfoque no se ha movido desde las primeras pruebas';
    case 'proof':
      return 'el valor que se va a introducir, aún sin probar';
    case 'doubted':
      return 'otra vez, porque su respuesta no concuerda con las demás';
    case 'yours':
      return 'lo ha elegido usted';
  }
}

const END = {
  last: {
    low: 'para comprobar el último valor de la banda, en el extremo inferior',
    high: 'para comprobar el último valor de la banda, en el extremo superior',
  },
  next: { low: 'para comprobar el primer valor por debajo de la banda', high: 'para comprobar el primer valor por encima de la banda' },
} as const;

/** The same as it is said before the first hold; null where there is nothing to add to the value. */
export function startAloud({ reason: why }: Suggestion): string | null {
  if (why.because !== 'remembered') return null;
  const when = write.month(why.from.at);
  return why.from.of === 'situation' ? `donde estaba en ${when}` : `cerca de donde estaba este conjunto en ${when}`;
}

const landmark = (held: Landmark): string => `${writeSteps(held.value)} (${lightOf(held)})`;

/** A steady light that an arrow told against is told with its arrow, or it would contradict how it counts. */
const lightOf = ({ light, counts }: Landmark): string => (light === 'steady' && counts === 'out' ? 'fija con una flecha' : LIGHT[light]);
