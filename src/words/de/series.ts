// German: pictures in a series.
import type { CheckSeries } from '../../photographs/series/checkSeries.ts';
import type { BracketTold } from '../../photographs/series/bracketSeries.ts';
import { focusErrorOf, type StepSize } from '../../photographs/focusError.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { isOnScale, nearestWithin, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { SeriesWords } from '../seriesWords.ts';
import { BY_STEP, correctionBetween, focusFell, lengthAtTarget, lengthWithin, marginOf, sideOfTarget } from './focusFell.ts';
import { within } from './subject.ts';
import { write } from './write.ts';

const SHOTS = { one: '# Aufnahme', other: '# Aufnahmen' };
const MORE_SHOTS = { one: '# weitere Aufnahme', other: '# weitere Aufnahmen' };

const inMillimetres = ({ low, high }: WithInterval): string => `${write.percent(0.95)} zwischen ${write.signed(low, 1)} und ${write.signed(high, 1)}\u00a0mm`;

function checkTold(series: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const { check } = series;
  const { verdict, bias } = check;
  switch (verdict.is) {
    case 'confirmed':
      return [
        `Bestätigt: ${value === null ? 'Der Wert' : writeSteps(value)} ist richtig.`,
        `Die Schärfe liegt ${focusFell(bias)}, sicher innerhalb der Schärfentiefe.`,
        ...waysTold(series),
      ];
    case 'shifted':
      return [
        `Versetzt: Mit ${value === null ? 'dem Wert' : writeSteps(value)} liegt die Schärfe ${focusFell(bias)}.`,
        ...undone(series, value, scale, step),
        ...waysTold(series),
      ];
    case 'not enough':
      return [
        `Noch nicht zu sagen: Machen Sie ${write.count(verdict.more, MORE_SHOTS)}.`,
        ...(Number.isFinite(marginOf(bias)) ? [`Bisher liegt die Schärfe ${focusFell(bias)}.`] : []),
        ...waysTold(series),
      ];
  }
}

/** About how many steps undo the shift, by what a bracket measured a step to be worth, or else by an estimate. */
function undone({ check: { bias }, depth, step: estimate }: CheckSeries, value: Steps | null, scale: Scale, step: WithInterval | null): readonly string[] {
  const size: StepSize = step === null ? { from: 'estimate', step: estimate } : { from: 'bracket', step };
  const { toAdd } = focusErrorOf(bias, depth, size);
  const whole = toAdd === null ? 0 : Math.round(toAdd.value / scale.step) * scale.step;
  if (whole === 0) return [];
  const about = `Etwa ${write.signed(whole)} ${Math.abs(whole) === 1 ? 'Stufe würde' : 'Stufen würden'} das aufheben, ${BY_STEP[size.from]}`;
  if (value === null) return [`${about}.`];
  return isOnScale(scale, value + whole)
    ? [`${about}: Versuchen Sie ${writeSteps(value + whole)} und prüfen Sie noch einmal.`]
    : [`${about}. Das liegt außerhalb des Bereichs.`];
}

/** Told where the way that focus was thrown off surely makes a difference. */
function waysTold({ check: { nearLessFar } }: CheckSeries): readonly string[] {
  if (nearLessFar === null || (nearLessFar.low <= 0 && nearLessFar.high >= 0)) return [];
  const farther = nearLessFar.value > 0 ? 'weiter weg' : 'näher';
  return [
    `Es kommt darauf an, woher der Fokus kommt: Nach dem Verstellen nach nah liegt die Schärfe ${lengthWithin(nearLessFar)} ${farther} als nach dem Verstellen nach fern.`,
  ];
}

function bracketTold({ measure, joined, band }: BracketTold, scale: Scale): readonly string[] {
  const { centre, step } = measure;
  const worth = `Eine Stufe versetzt die Schärfe an der Tafel um ${lengthWithin(step)}.`;
  const head = `Nach den Bildern liegt die Mitte bei ${correctionBetween(centre)}.`;
  if (joined === null || band === null) return [head, ...toEnter(centre.value, scale), worth];
  const apart = `${write.signed(joined.difference.value, 1)} ± ${write.number(marginOf(joined.difference), 1)} Stufen`;
  if (joined.is === 'differ')
    return [
      head,
      `Das weicht von der Mitte des Bandes, ${write.signed(band.value, 1)}, um ${apart} ab. Prüfen Sie den Aufbau, dann messen Sie beides noch einmal.`,
      worth,
    ];
  return [
    head,
    `Das stimmt mit der Mitte des Bandes überein, ${write.signed(band.value, 1)}; der Unterschied ist ${apart}. Zusammen ergeben sie ${correctionBetween(joined.joint)}.`,
    ...toEnter(joined.joint.value, scale),
    worth,
  ];
}

function toEnter(centre: number, scale: Scale): readonly string[] {
  const value = nearestWithin(scale, centre);
  return value === null ? ['Sie liegt außerhalb des Bereichs.'] : [`Wert zum Einstellen: ${writeSteps(value)}.`];
}

const LIVE_VIEW = 'Stellen Sie im voll vergrößerten Livebild scharf und machen Sie ein Bild.';

export const words: SeriesWords = {
  use: {
    title: 'Wofür die Bilder sind',
    options: {
      one: { label: 'Bilder einzeln', note: 'Ist es scharf, und wo lag die Schärfe?' },
      check: { label: 'Eingestellten Wert prüfen', note: 'Mehrere Aufnahmen mit einem Wert: Ist er richtig?' },
      bracket: { label: 'Stufenserie', note: 'Aufnahmen mit mehreren Werten: Wo liegt die Mitte, und was macht eine Stufe aus?' },
    },
  },
  setUp: {
    title: 'Vorbereiten',
    steps: [
      'Setzen Sie die Kamera auf ein Stativ. Benutzen Sie einen Fernauslöser oder den Selbstauslöser.',
      'Wählen Sie die größte Blende und die Grund\u00adempfindlichkeit. Belichten Sie so, dass das Papier hell, aber nicht ausgefressen ist.',
      'Schalten Sie Schärfen und Rausch\u00adminderung aus oder auf neutral.',
      'Speichern Sie in voller Größe und bester Qualität.',
      'Übertragen Sie die Bilder per Kabel oder mit einem Kartenleser, ohne die Kamera zu bewegen.',
    ],
  },
  result: 'Was die Bilder zusammen zeigen',
  wait: 'Das Ergebnis kommt, wenn alle Bilder gelesen sind.',
  out: {
    'another body': 'Mit einem anderen Gehäuse aufgenommen. Es zählt in dieser Serie nicht.',
    'another lens': 'Mit einem anderen Objektiv aufgenommen. Es zählt in dieser Serie nicht.',
    'another focal length': 'Mit einer anderen Brennweite aufgenommen. Es zählt in dieser Serie nicht.',
    'another aperture': 'Mit einer anderen Blende aufgenommen. Es zählt in dieser Serie nicht.',
    'the same shot': 'Dieselbe Aufnahme ist schon da. Sie zählt nur einmal.',
    'another distance': 'Aus einer anderen Entfernung aufgenommen oder beschnitten. Es zählt in dieser Serie nicht.',
  },
  shown: 'Was dieses Bild zeigt',
  each: {
    title: 'Jedes Bild',
    state: (count, out) =>
      line([write.count(count, { one: '# Bild', other: '# Bilder' }), out > 0 && write.count(out, { one: '# zählt nicht', other: '# zählen nicht' })]),
  },
  value: {
    label: 'Zu prüfender Wert',
    hint: {
      one: 'Der, auf dem das Gehäuse steht.',
      check: 'Der, auf dem das Gehäuse steht.',
      bracket: 'Die Werte der Stufenserie liegen um ihn herum.',
    },
    offTheScale: (scale) => `Geben Sie eine Korrektur an, ${within(scale)}.`,
  },
  beside: {
    title: 'Kanten bei 100\u00a0%: Livebild, dann dieses Bild',
    reference: (upright) => `Livebild, ${upright ? 'senkrechte' : 'waagerechte'} Kante`,
    shot: (upright) => `Dieses Bild, ${upright ? 'senkrechte' : 'waagerechte'} Kante`,
  },
  noReference: 'Kein Bild wurde im Livebild scharfgestellt. Eine nicht ganz genau stehende Rampe sähe dann wie ein Versatz aus. Machen Sie eines.',
  figures: 'Zahlen der Serie',
  check: {
    order: {
      title: 'Reihenfolge der Aufnahmen',
      steps: [
        LIVE_VIEW,
        'Drehen Sie den Fokusring weit nach nah, stellen Sie mit Autofokus durch den Sucher scharf und machen Sie ein Bild.',
        'Drehen Sie den Fokusring weit nach fern, stellen Sie mit Autofokus scharf und machen Sie ein Bild.',
        'Und so fort, nah und fern im Wechsel, bis es sechs mit Autofokus sind.',
      ],
    },
    part: { title: 'Fokussiert', options: { 'live view': 'Im Livebild', near: 'Von nah', far: 'Von fern', 'left out': 'Weglassen' } },
    none: 'Noch ist kein Bild mit Autofokus brauchbar.',
    told: checkTold,
    figures: ({ check, shots, reference, depth }) => [
      `${write.count(shots, SHOTS)} mit Autofokus. Mittelwert ${write.signed(check.bias.value, 1)}\u00a0mm${Number.isFinite(check.bias.high) ? `, ${inMillimetres(check.bias)}` : ''}; minus ist davor.`,
      `Wiederholgenauigkeit: ${lengthAtTarget(check.repeatability)}, als Standardabweichung.`,
      ...(check.nearLessFar === null ? [] : [`Nah minus fern: ${write.signed(check.nearLessFar.value, 1)}\u00a0mm, ${inMillimetres(check.nearLessFar)}.`]),
      ...(reference === null ? [] : [`Livebild: ${write.signed(reference.value, 1)}\u00a0mm, ${inMillimetres(reference)}. Das ist vom Mittelwert abgezogen.`]),
      `Schärfentiefe: ${lengthAtTarget(depth.front)} davor, ${depth.behind === 'infinite' ? 'unbegrenzt' : lengthAtTarget(depth.behind)} dahinter. Bestätigt ist, was sicher höchstens die Hälfte davon braucht.`,
    ],
  },
  bracket: {
    order: {
      title: 'Reihenfolge der Aufnahmen',
      reference: LIVE_VIEW,
      shots: 'Dann machen Sie mit jedem dieser Werte ein Bild mit Autofokus, in dieser Reihenfolge. Verstellen Sie den Fokus vor jedem.',
      list: 'Werte der Reihe nach',
    },
    part: {
      title: 'Mit Wert',
      option: (part) => (part === 'live view' ? 'Livebild' : part === 'left out' ? 'Weglassen' : writeSteps(part)),
    },
    none: 'Noch ist kein Bild mit einem Wert brauchbar.',
    fault: {
      'too few shots': 'Es sind zu wenige Aufnahmen, um etwas zu sagen: Machen Sie mindestens vier, mit zwei oder mehr Werten.',
      'no slope':
        'Die Werte haben die Schärfe weniger versetzt, als die Aufnahmen streuen. Die Mitte ist deshalb nicht bekannt. Nehmen Sie weiter auseinanderliegende Werte oder mehr Aufnahmen.',
      'runs backwards':
        'Die Schärfe kam näher, während der Wert stieg. Die Mitte ist deshalb nicht bekannt. Prüfen Sie, welches Bild mit welchem Wert aufgenommen wurde.',
    },
    told: bracketTold,
    apart: (names) => `${write.list(names)} ${names.length === 1 ? 'liegt weit von der Linie und zählt kaum' : 'liegen weit von der Linie und zählen kaum'}.`,
    figures: ({ shots, reference }, { measure: { step, scatter, atZero } }) => [
      `${write.count(shots.length, SHOTS)} mit Autofokus.`,
      `Eine Stufe: ${write.number(step.value, 2)}\u00a0mm, ${write.percent(0.95)} zwischen ${write.number(step.low, 2)} und ${write.number(step.high, 2)}\u00a0mm.`,
      `Beim Wert 0 liegt die Schärfe ${lengthAtTarget(atZero)} ${sideOfTarget(atZero)}. Eine Aufnahme streut um ${lengthAtTarget(scatter)} um die Linie, als Standardabweichung.`,
      ...(reference === null
        ? []
        : [`Livebild: ${write.signed(reference.value, 1)}\u00a0mm, ${inMillimetres(reference)}. Die Mitte ist dort, wo die Linie ihm begegnet.`]),
    ],
    chart: {
      title: 'Lage der Schärfe bei jedem Wert',
      said: ({ measure: { centre, step } }) =>
        `Die Linie steigt um ${write.number(step.value, 1)}\u00a0mm je Stufe und erreicht die Tafel bei ${write.signed(centre.value, 1)}.`,
      behind: 'dahinter',
      inFront: 'davor',
    },
  },
};
