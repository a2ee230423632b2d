// German: what a sweep under way shows.
import type { Care } from '../../sweep/care.ts';
import type { Plain, Word } from '../../sweep/inputs.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { SweepWords } from '../sweepWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { press } from './press.ts';
import { arrowsSaid, readBack, seen } from './verdict.ts';
import { write } from './write.ts';

const CARE: Readonly<Record<Care, string>> = { quick: 'zügige', standard: 'normale', thorough: 'gründliche' };

const HOLDS = { one: '# Probe', other: '# Proben' };
const STEPS = { one: '# Stufe', other: '# Stufen' };

const WANTED = { centre: 'Mitte noch nicht sicher', ends: 'beide Enden noch zu sehen' } as const;

/** The word that stands for it, where that is another than its name. */
const WORD: Readonly<Partial<Record<Plain, Word>>> = { hold: 'holding', unmoved: 'same', moved: 'shifted' };
const wordOf = (plain: Plain): Word => WORD[plain] ?? (plain as Word);

const told: SweepWords['heard']['told'] = (input) => {
  if ('heard' in input && input.heard !== null) return input.heard;
  switch (input.told) {
    case 'verdict':
      return readBack(input.verdict);
    case 'arrows':
      return arrowsSaid(input.arrows) ?? 'keine Pfeile';
    case 'set':
      return `${taught('set')} ${writeSteps(input.value)}`;
    case 'press':
      return press.is[input.press];
    default:
      return taught(wordOf(input.told));
  }
};

const became: SweepWords['heard']['became'] = (event, hold) => {
  switch (event.did) {
    case 'began':
      return `Probe bei ${writeSteps(event.value)}`;
    case 'judged':
    case 'amended':
      return hold ? `${seen(hold.verdict)} bei ${writeSteps(hold.value)}` : 'notiert';
    case 'chose':
      return `${writeSteps(event.value)} gewählt`;
    case 'skipped':
      return 'ausgelassen';
    case 'undid':
      return 'zurückgenommen';
    case 'paused':
      return 'Pause';
    case 'resumed':
      return 'fortgesetzt';
    case 'checked':
      return event.focus === 'unmoved' ? 'Fokus unverändert' : 'Fokus verschoben';
    case 'went on':
      return 'es geht weiter';
    case 'finished':
      return 'beendet';
    case 'opened':
    case 'ran':
    case 'unanswered':
    case 'cut off':
    case 'heard':
      return 'notiert';
  }
};

export const words: SweepWords = {
  leave: 'Zum Start. Der Durchlauf wartet.',
  leaveFarView: 'Fernsicht verlassen',
  setUp: 'Messplatz aufbauen',
  face: {
    label: 'Jetzt',
    hold: 'Die Probe',
    value: { set: 'Nächster Wert', enter: 'Wert zum Einstellen' },
    caption: {
      dialling: 'Einstellen',
      holding: 'Halten',
      judging: 'Zeit ist um',
      paused: 'Pause',
      checking: 'Fokus prüfen',
      turning: 'Ring drehen',
      enter: 'Fest einstellen',
      'past the limit': 'Jenseits der Grenze',
      'beyond the scale': 'Außerhalb',
      nothing: 'Kein stabiles Licht',
    },
    thenPress: 'dann halb drücken',
    thenWait: 'dann das Zählen abwarten',
    already: 'steht schon',
    way: (clicks, direction, from) =>
      direction === 'up' ? `${write.count(clicks, STEPS)} über ${writeSteps(from)}` : `${write.count(clicks, STEPS)} unter ${writeSteps(from)}`,
    left: (seconds) => ({ figure: write.number(seconds), unit: write.count(seconds, { one: 'Sekunde übrig', other: 'Sekunden übrig' }) }),
    steady: 'Stabil?',
    paused: 'der Durchlauf wartet',
    past: 'Das Band reicht über den Bereich hinaus.',
    lies: { above: 'Das Band liegt über dem Bereich.', below: 'Das Band liegt unter dem Bereich.' },
    centreAbout: (centre) => `Die Mitte liegt etwa bei ${write.signed(centre, 1)}.`,
    toCheck: 'Nehmen Sie es an, um zu sehen, was zu prüfen ist.',
    news: { holding: 'Probe läuft.', judging: 'Die Zeit ist um. War das Licht stabil?' },
  },
  sure: (within) => `zu ${write.chance(within)} sicher auf eine Stufe genau`,
  notYetSure: (within) => `erst zu ${write.chance(within)} sicher auf eine Stufe genau`,
  offer: {
    enough: (care, look) =>
      look
        ? `Genug für ${CARE[care]} Sorgfalt. Livebild noch scharf? Annehmen oder weiter halten.`
        : `Genug für ${CARE[care]} Sorgfalt. Annehmen oder weiter halten.`,
    asItStands: 'Annehmen oder weiter halten.',
    noMoreHolds: 'Weitere Proben helfen nicht.',
    firstThis: 'Beheben Sie das zuerst. Weitere Proben allein helfen nicht.',
  },
  standing: {
    anywhere: 'Mitte noch unbekannt',
    near: (value, within) => `Mitte nahe ${writeSteps(value)}, zu ${write.chance(within)} sicher auf eine Stufe genau`,
    centre: (centre) => `Mitte ${write.signed(centre, 1)}`,
    holds: (made) => write.count(made, HOLDS),
    toCome: (made, all, wanted) => line([`${write.number(made)} von etwa ${write.count(all, HOLDS)}`, wanted && WANTED[wanted]]),
  },
  checkFocus: {
    title: 'Fokus prüfen',
    why: drifted,
    look: 'Fassen Sie den Ring nicht an. Sehen Sie ins Livebild: Ist es noch scharf?',
    lookAside: 'Fassen Sie den Ring nicht an. Sehen Sie ins Livebild: Ist es noch so unscharf wie vorher?',
  },
  turnFocus: {
    label: 'Ring drehen',
    title: { first: 'Fokus verstellen', further: 'Ein wenig weiter', 'other way': 'Andersherum', back: 'Zu weit' },
    what: {
      first:
        'Drehen Sie den Ring im Livebild ein wenig, bis die Tafel gerade unscharf ist. Die Richtung ist zunächst gleichgültig: Die Proben zeigen, welche stimmt.',
      further: 'Die Richtung stimmt. Drehen Sie den Ring im Livebild ein wenig weiter.',
      'other way':
        'Das Band liegt weiter weg als zuvor. Drehen Sie den Ring zurück, über die Schärfe hinaus, bis es auf der anderen Seite gerade unscharf ist.',
      back: 'Jetzt ragt das Band auf der anderen Seite hinaus. Drehen Sie den Ring etwa den halben Weg zurück zur Schärfe.',
    },
    leaveIt: 'Dann lassen Sie den Ring in Ruhe, bis dieser Durchlauf vorbei ist.',
    practice: 'Mit einem echten Objektiv würden Sie den Ring im Livebild drehen, bis es gerade unscharf ist. Die Übungskamera dreht ihren Ring selbst.',
  },
  setValue: {
    title: 'Anderen Wert wählen',
    value: 'Wert',
    up: 'Eine Stufe höher',
    down: 'Eine Stufe tiefer',
    set: 'Wählen',
    cancel: 'Abbrechen',
    offTheScale: ({ min, max, step }) =>
      step === 1
        ? `Geben Sie eine ganze Zahl von ${writeSteps(min)} bis ${writeSteps(max)} an.`
        : `Geben Sie einen Wert von ${writeSteps(min)} bis ${writeSteps(max)} an, in Stufen von ${write.number(step)}.`,
  },
  heard: { label: 'Zuletzt gehört', none: 'Noch keine Antwort', told, became },
  understood: { answers: 'Antworten, die jetzt gelten', arrows: 'Pfeile der letzten Probe', asides: 'Außerdem möglich' },
  press,
  space: 'Leertaste',
  following: { label: 'Zuschauen', what: 'Ein anderes Fenster führt diesen Durchlauf. Hier können Sie nur zuschauen.', takeOver: 'Hier übernehmen' },
  strip: {
    label: 'Bisherige Proben',
    hold: ({ value, verdict }, counts) => `${writeSteps(value)} ${seen(verdict)}: ${counts === 'in' ? 'im Band' : 'außerhalb'}`,
  },
};
