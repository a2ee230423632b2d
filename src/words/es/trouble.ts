// Spanish: what may be wrong beside the correction.
import { writeSteps } from '../../sweep/scale.ts';
import type { ArrowsContradict, Trouble } from '../../sweep/trouble/trouble.ts';
import type { Named, TroubleWords } from '../troubleWords.ts';
import { CHECKS } from './checks.ts';
import { drifted } from './drift.ts';
import { write } from './write.ts';

const NAMES: Readonly<Record<Named['trouble'], string>> = {
  'flickers everywhere': 'Parpadea siempre',
  'never lights': 'Siempre apagada',
  'lights everywhere': 'Siempre fija',
  'hole in the band': 'Un hueco en la banda',
  'arrows contradict the lights': 'Flechas contrarias a la luz',
  'focus moved': 'El enfoque se ha movido',
  'verdicts misjudged': 'Respuestas que no concuerdan',
  'band drifts': 'Una banda que se desplaza',
  play: 'Influye el sentido',
  'sweeps differ': 'Los barridos difieren',
};

function seen(found: Trouble): string {
  switch (found.trouble) {
    case 'flickers everywhere':
      return 'La luz falla con todos los valores, casi siempre porque parpadea.';
    case 'never lights':
      return 'La luz no se enciende con ningún valor.';
    case 'lights everywhere':
      return 'La luz está fija con todos los valores, de un límite al otro.';
    case 'hole in the band':
      return found.from === found.to
        ? `La luz falla con ${writeSteps(found.from)}, pero está fija a ambos lados. No se fíe del centro.`
        : `La luz falla de ${writeSteps(found.from)} a ${writeSteps(found.to)}, pero está fija a ambos lados. No se fíe del centro.`;
    case 'arrows contradict the lights':
      return ARROWS[found.how];
    case 'verdicts misjudged':
      return found.values.length === 1
        ? `La respuesta con ${writeSteps(found.values[0] ?? 0)} no concuerda con las demás. No cuenta.`
        : `Las respuestas con ${write.list(found.values.map(writeSteps))} no concuerdan con las demás. No cuentan.`;
    case 'band drifts':
      return `La banda se desplaza ${inSteps(Math.abs(found.rate))} por minuto, aproximadamente. El centro es el de este momento.`;
    case 'play':
      return `Según se llegue subiendo o bajando, la posición de la banda cambia ${inSteps(2 * found.size)}, aproximadamente. El centro está entre las dos.`;
    case 'focus moved':
      return found.seen ? 'En la vista en vivo, el enfoque se había movido.' : drifted(found);
  }
}

const ARROWS: Readonly<Record<ArrowsContradict['how'], string>> = {
  'turned round': 'Las flechas señalan al revés de como consta en el equipo para este cuerpo.',
  'turned midway': 'Las flechas señalaban primero hacia un lado y luego hacia el otro.',
  'by chance': 'Las flechas señalan arriba y abajo sin relación con la luz.',
};

function evidence(found: Named): string {
  switch (found.trouble) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere': {
      const alike =
        found.alike === found.of
          ? `Los ${write.number(found.of)} valores dieron lo mismo.`
          : `${write.number(found.alike)} de ${write.number(found.of)} valores dieron lo mismo.`;
      return `${alike} Probabilidades en contra de que haya banda: ${odds(found)}.`;
    }
    case 'hole in the band':
      return `Probabilidades en contra de una banda sin hueco: ${odds(found)}.`;
    case 'arrows contradict the lights':
      return `Probabilidades en contra de que las flechas señalen como consta en el equipo: ${odds(found)}.`;
    case 'verdicts misjudged':
      return `Probabilidades de que sean errores de apreciación: ${odds(found)}.`;
    case 'band drifts':
      return `Probabilidades en contra de una banda quieta: ${odds(found)}.`;
    case 'play':
      return `Probabilidades en contra de que la banda sea la misma al subir y al bajar: ${odds(found)}.`;
    case 'focus moved':
      return `Probabilidades de que se haya movido: ${odds(found)}; lo más probable, después de la prueba ${write.number(found.afterHold)}.`;
    case 'sweeps differ':
      return `Distan ${inSteps(found.apart)}. El azar explica hasta ${inSteps(found.allowed)}, con un ${write.percent(0.95)} de confianza. Probabilidades de que difieran: ${odds(found)}.`;
  }
}

/** Odds beyond this say no more to a person. */
const MOST = 1000;
const odds = ({ bayesFactor }: { readonly bayesFactor: number }): string =>
  bayesFactor > MOST ? `más de ${write.number(MOST)} a 1` : `${write.number(bayesFactor)} a 1`;

const inSteps = (count: number): string => write.count(count, { one: '# paso', other: '# pasos' }, 1);

export const words: TroubleWords = {
  name: (found) => (found.trouble === 'focus moved' && !found.seen ? '¿Se ha movido el enfoque?' : NAMES[found.trouble]),
  seen,
  evidence,
  checks: CHECKS,
  toCheck: {
    open: 'Qué comprobar',
    title: 'Qué comprobar, primero lo más probable',
    figures: 'Cifras',
    manual: 'Si el manual del fabricante de su cámara dice otra cosa, siga el manual.',
  },
};
