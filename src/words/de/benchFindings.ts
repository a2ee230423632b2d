// German: what follows at the bench from what was measured there.
import type { BenchDistance } from '../../optics/distance.ts';
import type { Edge, Finer, Tilt } from '../../optics/fourSides.ts';
import type { LightVerdict } from '../../optics/light.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import type { BenchWords } from '../benchWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';
import { millimetres, type Millimetres } from '../../units.ts';

const GOOD_FOR: Readonly<Record<BenchDistance['stands'], (least: string) => string>> = {
  usual: () => 'Das ist die übliche Entfernung für allgemeinen Gebrauch.',
  short: () => 'Das ist knapp, genügt aber. Messen Sie noch einmal weiter weg, wenn Sie das Objektiv auf weite Entfernung benutzen.',
  near: (least) => `Der Wert stimmt dann nur für die Nähe. Für allgemeinen Gebrauch sollten es mindestens ${least} sein.`,
  far: () => 'Das ist richtig, wenn Sie das Objektiv so weit weg benutzen. Nehmen Sie eine große Tafel und helle Beleuchtung.',
  'at closest focus': () => 'Das ist die Naheinstell\u00adgrenze des Objektivs. Der Wert stimmt dann für die Nähe und kann weiter weg ein anderer sein.',
};

export const stands: BenchWords['distance']['stands'] = (at, least, unit) =>
  `${write.distance(at.distance, unit)} ab der Sensorebene, ${write.number(at.multiple, at.multiple < 10 ? 1 : 0)} Brennweiten. ${GOOD_FOR[at.stands](write.distance(least, unit))}`;

const ENOUGH: Readonly<Record<LightVerdict, string>> = {
  'too dim': 'Zu dunkel für einen sicheren Autofokus. Nehmen Sie mehr Licht oder stellen Sie die Lampen näher, dann lesen Sie die Kamera noch einmal ab.',
  fine: 'Genug Licht.',
  plenty: 'Reichlich Licht.',
};

export const lightFound: BenchWords['light']['verdict'] = ({ ev, onGrey, onPaper, verdict, flickers }) => {
  const light = `LW\u00a0${write.number(ev, 1)} bei ISO\u00a0100, etwa ${write.number(onGrey)}\u00a0Lux, wenn mittleres Grau gemessen wurde, ${write.number(onPaper)}\u00a0Lux bei weißem Papier. ${ENOUGH[verdict]}`;
  return flickers === null
    ? light
    : `${light} Bei dieser Verschlusszeit belichtet das Flimmern der Lampen jede Aufnahme anders. Nehmen Sie 1/${2 * flickers}\u00a0s oder ein ganzes Vielfaches davon.`;
};

const COST = (steps: number): string =>
  steps < 0.1 ? 'weit weniger als eine Stufe' : `am Rand des AF-Messfelds etwa ${write.count(steps, { one: '# Stufe', other: '# Stufen' }, 1)}`;
const TURN_UNTIL = {
  mirror: 'Drehen Sie die Tafel, bis sich das Objektiv näher an der Bildmitte spiegelt.',
  spot: 'Drehen Sie die Tafel, bis der Lichtpunkt näher an seiner Quelle ankommt.',
};

export const tilted: BenchWords['square']['tilted'] = (by, tilt, steps, square) =>
  `Um ${write.degrees(tilt, 2)} geneigt, ${COST(steps)}. ${square ? 'Parallel genug.' : TURN_UNTIL[by]}`;

const EDGE: Readonly<Record<Edge, string>> = {
  left: 'ihre linke Kante',
  right: 'ihre rechte Kante',
  top: 'ihre obere Kante',
  bottom: 'ihre untere Kante',
};

function finer(how: Finer): string {
  switch (how.by) {
    case 'marks':
      return `Messen Sie Marken auf dem Brett, die in beiden Richtungen mindestens ${write.millimetres(how.apart)} auseinanderliegen, oder nehmen Sie den Spiegel.`;
    case 'a larger rectangle':
      return 'Messen Sie ein größeres Rechteck oder nehmen Sie den Spiegel.';
    case 'the mirror alone':
      return 'In diesem Bild ist kein Rechteck groß genug für Längen, die auf ein halbes Prozent abgelesen sind. Nehmen Sie den Spiegel.';
  }
}

const tiltBySides = (tilt: Tilt): string => `Um ${write.degrees(tilt.whole, 1)} ± ${write.degrees(2 * tilt.uncertainty, 1)} geneigt.`;

export const bySides: BenchWords['square']['bySides'] = (tilt, allowed, found) => {
  switch (found.verdict) {
    case 'square':
      return `${tiltBySides(tilt)} Parallel genug.`;
    case 'turn':
      return `${tiltBySides(tilt)} Drehen Sie die Tafel so, dass ${write.list(found.away.map((edge) => EDGE[edge]))} weiter von der Kamera weg ${found.away.length === 1 ? 'rückt' : 'rücken'}.`;
    case 'cannot tell':
      return `${tiltBySides(tilt)} Das ist zu grob, um ${write.degrees(allowed, 1)} zu erkennen. ${finer(found.finer)}`;
  }
};

export const STEP_FROM: Readonly<Record<StepSize['from'], string>> = {
  estimate: 'Das ist eine Schätzung.',
  bracket: 'Eine Stufenserie mit Aufnahmen hat es gemessen.',
};

export const focus: BenchWords['place']['focus'] = (error, unit, worth) => {
  const off: Millimetres = millimetres(Math.abs(error));
  const where = `Die Schärfe liegt ${nearTarget(off, unit)} ${error < 0 ? 'vor' : 'hinter'} der Tafel`;
  return worth === null
    ? `${where}.`
    : `${where}. Das sind ${write.percent(worth.share)} der Schärfentiefe auf dieser Seite, etwa ${write.count(worth.steps, { one: '# Stufe', other: '# Stufen' }, 1)}. ${STEP_FROM[worth.by]}`;
};
