// German: what went wrong with what lies on this computer. What the browser says stands in brackets, in its own words.
import type { StoreWords } from '../storeWords.ts';

export const words: StoreWords = {
  fault: ({ is, why }) =>
    is === 'not read'
      ? `Das Gespeicherte ist nicht lesbar (${why ?? 'keine Antwort'}). Schließen Sie diese Seitenleiste und öffnen Sie sie neu.`
      : `Gerade lässt sich nichts speichern (${why ?? 'keine Antwort'}). Lassen Sie diese Seitenleiste offen und schaffen Sie Platz auf der Festplatte. ` +
        'Alles ist hier festgehalten und wird gespeichert, sobald es geht.',
  tryNow: 'Jetzt versuchen',
  taught: {
    'not read': 'Die angelernten Wörter sind nicht lesbar. Lernen Sie sie in der Hörprüfung neu an. Alles andere ist unberührt.',
    'not kept': 'Das Angelernte lässt sich nicht speichern. Schaffen Sie Platz auf der Festplatte und sagen Sie das Wort noch einmal.',
    'not erased': 'Die angelernten Wörter lassen sich gerade nicht löschen. Versuchen Sie es noch einmal.',
  },
};
