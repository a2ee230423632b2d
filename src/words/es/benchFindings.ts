// Spanish: what follows at the bench from what was measured there.
import type { BenchDistance } from '../../optics/distance.ts';
import type { Edge, Finer, Tilt } from '../../optics/fourSides.ts';
import type { LightVerdict } from '../../optics/light.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import type { BenchWords } from '../benchWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';
import { millimetres, type Millimetres } from '../../units.ts';

const GOOD_FOR: Readonly<Record<BenchDistance['stands'], (least: string) => string>> = {
  usual: () => 'Es la distancia de uso general.',
  short: () => 'Es corta, pero sirve. Si usa el objetivo de lejos, mida otra vez a mayor distancia.',
  near: (least) => `El valor solo será correcto de cerca. Para uso general, póngase al menos a ${least}.`,
  far: () => 'Es correcta si usa el objetivo a esa distancia. Haga la diana grande y la luz intensa.',
  'at closest focus': () => 'Es la distancia mínima de enfoque del objetivo. El valor será correcto de cerca y puede ser otro de lejos.',
};

export const stands: BenchWords['distance']['stands'] = (at, least, unit) =>
  `${write.distance(at.distance, unit)} desde el plano focal, ${write.number(at.multiple, at.multiple < 10 ? 1 : 0)} focales. ${GOOD_FOR[at.stands](write.distance(least, unit))}`;

const ENOUGH: Readonly<Record<LightVerdict, string>> = {
  'too dim': 'Luz escasa para una buena detección de fase. Añada luz o acerque las lámparas, y vuelva a leer la cámara.',
  fine: 'Luz suficiente.',
  plenty: 'Luz abundante.',
};

export const lightFound: BenchWords['light']['verdict'] = ({ ev, onGrey, onPaper, verdict, flickers }) => {
  const light = `EV\u00a0${write.number(ev, 1)} a ISO\u00a0100: unos ${write.number(onGrey)}\u00a0lux si el exposímetro midió gris medio, ${write.number(onPaper)}\u00a0lux si midió papel blanco. ${ENOUGH[verdict]}`;
  return flickers === null
    ? light
    : `${light} Con esta obturación, el parpadeo de las lámparas cambia la exposición de una foto a otra. Use 1/${2 * flickers}\u00a0s o un múltiplo entero.`;
};

const COST = (steps: number): string =>
  steps < 0.1 ? 'mucho menos que un paso' : `cerca de ${write.count(steps, { one: '# paso', other: '# pasos' }, 1)} en el borde de la zona de AF`;
const TURN_UNTIL = {
  mirror: 'Gire la diana hasta que el objetivo se vea más cerca del centro de la imagen.',
  spot: 'Gire la diana hasta que el punto de luz vuelva más cerca de su origen.',
};

export const tilted: BenchWords['square']['tilted'] = (by, tilt, steps, square) =>
  `Inclinada ${write.degrees(tilt, 2)}, ${COST(steps)}. ${square ? 'Paralelismo suficiente.' : TURN_UNTIL[by]}`;

const EDGE: Readonly<Record<Edge, string>> = { left: 'el borde izquierdo', right: 'el borde derecho', top: 'el borde superior', bottom: 'el borde inferior' };

function finer(how: Finer): string {
  switch (how.by) {
    case 'marks':
      return `Mida marcas del tablero separadas al menos ${write.millimetres(how.apart)} en ambas direcciones, o use el espejo.`;
    case 'a larger rectangle':
      return 'Mida un rectángulo mayor o use el espejo.';
    case 'the mirror alone':
      return 'En esta imagen ningún rectángulo es bastante grande para longitudes leídas al medio por ciento, así que use el espejo.';
  }
}

const tiltBySides = (tilt: Tilt): string => `Inclinada ${write.degrees(tilt.whole, 1)} ± ${write.degrees(2 * tilt.uncertainty, 1)}.`;

export const bySides: BenchWords['square']['bySides'] = (tilt, allowed, found) => {
  switch (found.verdict) {
    case 'square':
      return `${tiltBySides(tilt)} Paralelismo suficiente.`;
    case 'turn':
      return `${tiltBySides(tilt)} Gire la diana para que ${write.list(found.away.map((edge) => EDGE[edge]))} se ${write.count(found.away.length, { one: 'aleje', other: 'alejen' })} de la cámara.`;
    case 'cannot tell':
      return `${tiltBySides(tilt)} Es demasiado impreciso para distinguir ${write.degrees(allowed, 1)}. ${finer(found.finer)}`;
  }
};

export const STEP_FROM: Readonly<Record<StepSize['from'], string>> = {
  estimate: 'Es una estimación.',
  bracket: 'Lo midió un horquillado con fotos.',
};

export const focus: BenchWords['place']['focus'] = (error, unit, worth) => {
  const off: Millimetres = millimetres(Math.abs(error));
  const where = `El enfoque está ${nearTarget(off, unit)} ${error < 0 ? 'delante' : 'detrás'} de la diana`;
  return worth === null
    ? `${where}.`
    : `${where}, el ${write.percent(worth.share)} de la profundidad de campo de ese lado, cerca de ${write.count(worth.steps, { one: '# paso', other: '# pasos' }, 1)}. ${STEP_FROM[worth.by]}`;
};
