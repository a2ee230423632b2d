// German: whatever a sweep says.
import type { NotNow, Prompt } from '../../sweep/effect.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Rival } from '../../sweep/end/story.ts';
import type { Hold } from '../../sweep/hold.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { TurnWay } from '../../sweep/transfer/turning.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import type { Steps } from '../../units.ts';
import { sayCorrection, sayNumber } from '../../hearing/languages/de/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import type { SpokenWords } from '../spokenWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { outcome } from './outcomes.ts';
import { reason, startAloud } from './reasons.ts';
import { capital } from '../run.ts';
import { sentences, together } from './sentence.ts';
import { TROUBLE_SAID } from './troubleSaid.ts';
import { readBack } from './verdict.ts';
import { write } from './write.ts';

const both = (text: string): InWords => ({ spoken: text, written: text });

function prompt(one: Prompt): InWords {
  switch (one.say) {
    case 'opening': {
      const start = startAloud(one.next);
      const value = sayCorrection(one.next.value);
      return { spoken: sentences(`${start === null ? value : `${value}, ${start},`} einstellen`), written: set(one.next) };
    }
    case 'next':
      return next(together(noted(one.noted), found(one.trouble)), one.next);
    case 'too early':
      return tooEarly(Math.max(1, Math.ceil(one.left)));
    case 'did it hold':
      return { spoken: 'War es stabil?', written: `Bei ${writeSteps(one.value)} ist die Zeit um. War das Licht stabil?` };
    case 'hold again':
      return holdAgain(one.value, one.why);
    case 'offer': {
      const { spoken, written } = one.trouble ? both(TROUBLE_SAID[one.trouble.trouble]) : outcome(one.outcome);
      const look = one.look && !one.trouble ? 'Livebild noch scharf?' : null;
      return {
        spoken: together(noted(one.noted), spoken, look, `${capital(taught('accept'))}?`),
        written: together(noted(one.noted), written, look, 'Annehmen oder weitermachen?'),
      };
    }
    case 'check focus': {
      const before = together(noted(one.noted), found(one.trouble));
      return {
        spoken: together(before, DISAGREE[one.rival ?? 'none'], `Fokus im Livebild prüfen. ${sameOrShifted()}`),
        written: together(before, drifted(one.drift, one.rival), 'Sehen Sie ins Livebild: Ist der Fokus unverändert, oder hat er sich verschoben?'),
      };
    }
    case 'turn the focus': {
      const before = together(noted(one.noted), one.practice ? 'Die Übungskamera dreht ihren Ring selbst.' : TURN[one.way]);
      return { spoken: `${before} Dann sagen: ${taught('shifted')}.`, written: `${before} Dann „${taught('shifted')}“ sagen.` };
    }
    case 'fresh series':
      return next('Von vorn.', one.next);
    case 'undone':
      return next('Zurückgenommen.', one.next);
    case 'nothing to undo':
      return both('Nichts zurückzunehmen.');
    case 'paused':
      return both('Pause.');
    case 'outcome':
      return one.trouble ? both(`${TROUBLE_SAID[one.trouble.trouble]} Sehen Sie nach, was zu prüfen ist.`) : afterwards(one.outcome, one.practice);
    case 'not now':
      return NOT_NOW[one.why]();
  }
}

const noted = (hold: Hold | null): string | null => hold && sentences(readBack(hold.verdict));
const found = (trouble: Trouble | undefined): string | null => (trouble ? TROUBLE_SAID[trouble.trouble] : null);
const set = (suggested: Suggestion): string => `${writeSteps(suggested.value)} einstellen: ${reason(suggested)}.`;
const sameOrShifted = (): string => `${capital(taught('same'))} oder ${taught('shifted')}?`;

const next = (before: string, suggested: Suggestion): InWords => ({
  spoken: together(before, sentences(sayCorrection(suggested.value))),
  written: together(before, set(suggested)),
});

/** A value is to be entered, and said to be. After a width transfer the focus still stands aside. */
function afterwards(one: Outcome, practice: boolean): InWords {
  const words = outcome(one);
  if (one.found === 'carried over') return { ...words, spoken: `${words.spoken} Jetzt im Livebild neu scharfstellen.` };
  if (one.found !== 'band' || practice) return words;
  return { ...words, spoken: `${capital(sayCorrection(one.chosen))} fest einstellen, dann sagen: ${taught('entered')}.` };
}

const tooEarly = (left: number): InWords => ({
  spoken: left === 1 ? 'Noch eine Sekunde.' : sentences(`noch ${sayNumber(left)} Sekunden`),
  written: `Zu früh: ${write.count(left, { one: 'noch # Sekunde', other: 'noch # Sekunden' })} halten.`,
});

function holdAgain(value: Steps, why: 'unanswered' | 'cut off'): InWords {
  const because = why === 'unanswered' ? 'Es kam keine Antwort, die Probe zählt nicht.' : 'Die Probe brach ab, sie zählt nicht.';
  return { spoken: sentences('noch einmal', sayCorrection(value)), written: `${because} ${writeSteps(value)} einstellen und noch einmal halten.` };
}

/** Where two stories fit, both are said. */
const DISAGREE: Readonly<Record<Rival | 'none', string>> = {
  none: 'Die Proben widersprechen sich.',
  drifting: 'Die Proben widersprechen sich: Der Fokus hat sich verschoben, oder das Band driftet.',
  play: 'Die Proben widersprechen sich: Der Fokus hat sich verschoben, oder die Einstellrichtung zählt.',
};

const TURN: Readonly<Record<TurnWay, string>> = {
  first: 'Im Livebild den Fokusring ein wenig drehen, bis es gerade unscharf ist.',
  further: 'Richtig herum. Ein wenig weiterdrehen.',
  'other way': 'Falsch herum. Zurückdrehen, über die Schärfe hinaus.',
  back: 'Zu weit. Den halben Weg zurück.',
};

const NOT_NOW: Readonly<Record<NotNow, () => InWords>> = {
  'hold first': () => ({ spoken: 'Erst halten.', written: 'Es läuft keine Probe. Beginnen Sie zuerst eine.' }),
  'hold under way': () => ({ spoken: 'Probe läuft.', written: 'Eine Probe läuft. Beantworten Sie sie zuerst oder nehmen Sie sie zurück.' }),
  'answer first': () => ({ spoken: 'War es stabil?', written: 'Sagen Sie zuerst, was das Licht getan hat.' }),
  'off the scale': () => ({ spoken: 'Außerhalb des Bereichs.', written: 'Diese Korrektur hat das Gehäuse nicht. Wählen Sie eine in seinem Bereich.' }),
  paused: () => ({ spoken: 'Pause.', written: 'Der Durchlauf macht Pause. Setzen Sie ihn zuerst fort.' }),
  'not paused': () => ({ spoken: 'Keine Pause.', written: 'Der Durchlauf macht keine Pause.' }),
  finished: () => ({ spoken: 'Beendet.', written: `Der Durchlauf ist beendet. „${capital(taught('undo'))}“ nimmt das zurück.` }),
  'no arrows': () => ({
    spoken: 'Gehäuse ohne Pfeile.',
    written: 'Laut Ausrüstung zeigt dieses Gehäuse keine Pfeile. Zeigt es doch welche, ändern Sie das in der Ausrüstung.',
  }),
  'check focus first': () => ({
    spoken: sameOrShifted(),
    written: 'Sehen Sie zuerst im Livebild nach dem Fokus: Ist er unverändert, oder hat er sich verschoben?',
  }),
  'turn first': () => ({
    spoken: `${capital(taught('shifted'))}?`,
    written: `Drehen Sie zuerst im Livebild den Fokusring. Dann sagen Sie „${taught('shifted')}“.`,
  }),
  'nothing to check': () => ({ spoken: 'Nichts zu prüfen.', written: 'Am Fokus ist gerade nichts zu prüfen.' }),
  'nothing to enter': () => ({ spoken: 'Es gibt keinen Wert.', written: 'Dieses Ergebnis gibt keinen Wert zum Einstellen.' }),
  'not offered': () => ({
    spoken: 'Noch nicht so weit.',
    written: `Es gibt noch kein Ergebnis. Um den Durchlauf jetzt zu beenden, sagen Sie „${taught('finish')}“.`,
  }),
};

function spelled(value: number): string {
  const digits = [...String(Math.abs(value))];
  const whole = sayCorrection(value);
  return digits.length < 2 ? whole : `${whole}, ${digits.map((digit) => sayNumber(Number(digit))).join(' ')}`;
}

/** "wert plus oder minus und eine Zahl". */
const wordSaid = (word: Parameters<typeof taught>[0]): string => (word === 'set' ? `${taught('set')} plus oder minus und eine Zahl` : taught(word));

export const words: SpokenWords = {
  prompt,
  correction: sayCorrection,
  brief: (one) => (one.say === 'did it hold' ? 'Stabil?' : sentences(sayCorrection(one.next.value))),
  reason,
  outcome,
  help: (now) => both(`Sie können sagen: ${now.map(wordSaid).join(', ')}.`),
  askBack: {
    // "Links?", "Minus fünfzehn, eins fünf?"
    question: ({ input, words: heard }) => ({
      spoken: `${capital(input.told === 'set' ? spelled(input.value) : heard)}?`,
      written: `War das „${heard}“? Wenn ja, sagen Sie es noch einmal. Wenn nicht, sagen Sie „${taught('undo')}“ oder ein anderes Wort.`,
    }),
    notTaken: { spoken: 'Nicht angenommen.', written: 'Das wurde nicht angenommen. Sagen Sie, was es war.' },
    sayAgain: { spoken: 'Bitte noch einmal.', written: 'Das war nicht zu verstehen. Sagen Sie es noch einmal.' },
  },
  mark: {
    made: (value) => ({
      spoken: `${capital(sayCorrection(value))} ist vermerkt.`,
      written: `${writeSteps(value)} ist als in der Kamera eingestellt vermerkt. „${capital(taught('undo'))}“ nimmt den Vermerk zurück.`,
    }),
    madeBefore: (value) => ({
      spoken: `${capital(sayCorrection(value))} ist schon vermerkt.`,
      written: `${writeSteps(value)} ist schon als in der Kamera eingestellt vermerkt.`,
    }),
    takenBack: (value) => ({
      spoken: 'Der Vermerk ist zurückgenommen.',
      written: `Der Vermerk ist zurückgenommen: ${writeSteps(value)} gilt nicht als eingestellt.`,
    }),
  },
};
