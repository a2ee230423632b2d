// French: what follows at the bench from what was measured there.
import type { BenchDistance } from '../../optics/distance.ts';
import type { Edge, Finer, Tilt } from '../../optics/fourSides.ts';
import type { LightVerdict } from '../../optics/light.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import type { BenchWords } from '../benchWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';
import { millimetres, type Millimetres } from '../../units.ts';

const GOOD_FOR: Readonly<Record<BenchDistance['stands'], (least: string) => string>> = {
  usual: () => 'C’est la distance d’usage général.',
  short: () => 'C’est court, mais cela ira. Mesurez de nouveau plus loin si vous utilisez l’objectif de loin.',
  near: (least) => `La valeur ne sera juste que de près. Pour l’usage général, placez-vous à ${least} au moins.`,
  far: () => 'C’est bien si vous utilisez l’objectif d’aussi loin. Prenez une grande mire et une lumière vive.',
  'at closest focus': () => 'C’est la distance minimale de mise au point. La valeur sera juste de près, et peut différer plus loin.',
};

export const stands: BenchWords['distance']['stands'] = (at, least, unit) =>
  `${write.distance(at.distance, unit)} du plan focal, ${write.number(at.multiple, at.multiple < 10 ? 1 : 0)} fois la focale. ${GOOD_FOR[at.stands](write.distance(least, unit))}`;

const ENOUGH: Readonly<Record<LightVerdict, string>> = {
  'too dim': 'Trop sombre pour une bonne détection de phase. Ajoutez de la lumière ou rapprochez les lampes, puis relevez de nouveau l’exposition.',
  fine: 'La lumière suffit.',
  plenty: 'La lumière est abondante.',
};

export const lightFound: BenchWords['light']['verdict'] = ({ ev, onGrey, onPaper, verdict, flickers }) => {
  const light = `EV\u00a0${write.number(ev, 1)} à 100\u00a0ISO, environ ${write.number(onGrey)} lux si la cellule a vu un gris moyen, ${write.number(onPaper)} lux si elle a vu du papier blanc. ${ENOUGH[verdict]}`;
  return flickers === null
    ? light
    : `${light} À cette vitesse, le scintillement des lampes change l’exposition d’une photo à l’autre. Prenez 1/${2 * flickers} s ou un multiple entier.`;
};

const COST = (steps: number): string => (steps < 0.1 ? 'bien moins d’un pas' : `environ ${write.number(steps, 1)} pas au bord de la zone AF`);
const TURN_UNTIL = {
  mirror: 'Tournez la mire jusqu’à ce que l’objectif se voie plus près du milieu de l’image.',
  spot: 'Tournez la mire jusqu’à ce que la tache revienne plus près de sa source.',
};

export const tilted: BenchWords['square']['tilted'] = (by, tilt, steps, square) =>
  `Inclinaison ${write.degrees(tilt, 2)}, ${COST(steps)}. ${square ? 'C’est assez parallèle.' : TURN_UNTIL[by]}`;

const EDGE: Readonly<Record<Edge, string>> = { left: 'son bord gauche', right: 'son bord droit', top: 'son bord haut', bottom: 'son bord bas' };

function finer(how: Finer): string {
  switch (how.by) {
    case 'marks':
      return `Mesurez des repères écartés d’au moins ${write.millimetres(how.apart)} dans les deux sens sur le support, ou prenez le miroir.`;
    case 'a larger rectangle':
      return 'Mesurez un rectangle plus grand, ou prenez le miroir.';
    case 'the mirror alone':
      return 'Aucun rectangle de cette image n’est assez grand pour des longueurs lues à un demi pour cent près : prenez le miroir.';
  }
}

const tiltBySides = (tilt: Tilt): string => `Inclinaison ${write.degrees(tilt.whole, 1)}, à ${write.degrees(2 * tilt.uncertainty, 1)} près.`;

export const bySides: BenchWords['square']['bySides'] = (tilt, allowed, found) => {
  switch (found.verdict) {
    case 'square':
      return `${tiltBySides(tilt)} C’est assez parallèle.`;
    case 'turn':
      return `${tiltBySides(tilt)} Tournez la mire pour éloigner de l’appareil ${write.list(found.away.map((edge) => EDGE[edge]))}.`;
    case 'cannot tell':
      return `${tiltBySides(tilt)} C’est trop grossier pour juger de ${write.degrees(allowed, 1)}. ${finer(found.finer)}`;
  }
};

export const STEP_FROM: Readonly<Record<StepSize['from'], string>> = {
  estimate: 'C’est une estimation.',
  bracket: 'Une fourchette de photos l’a mesuré.',
};

export const focus: BenchWords['place']['focus'] = (error, unit, worth) => {
  const off: Millimetres = millimetres(Math.abs(error));
  const where = `Le point est à ${nearTarget(off, unit)} ${error < 0 ? 'devant' : 'derrière'} la mire`;
  return worth === null
    ? `${where}.`
    : `${where}, soit ${write.percent(worth.share)} de la profondeur de champ de ce côté, environ ${write.number(worth.steps, 1)} pas. ${STEP_FROM[worth.by]}`;
};
