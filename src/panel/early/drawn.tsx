// The panel as it stands in the page before any script runs, in every language. The build writes this into panel.html, and the panel takes it
// over as it is: what is drawn here must be what `App` draws before it is ready.
import { renderToString } from 'preact-render-to-string';
import { LANGUAGES, type Language } from '../../language.ts';
import { Frame } from '../frame.tsx';
import { changeLanguages } from '../../words/catalogue.ts';
import { firstWords } from '../../words/first.ts';
import { First } from '../start/first.tsx';
import { FirstField } from '../start/firstField.tsx';

export interface Drawn {
  readonly language: Language;
  readonly name: string;
  readonly start: string;
  readonly unread: string;
}

/** In the order of the languages, and at the end in the first again. */
export async function drawn(): Promise<readonly Drawn[]> {
  const all: Drawn[] = [];
  for (const language of [...LANGUAGES, LANGUAGES[0]]) {
    await changeLanguages({ screens: language, voice: language });
    const { name, unread } = firstWords();
    all.push({ language, name, start: startDrawn(), unread });
  }
  return all.slice(0, -1);
}

const startDrawn = (): string =>
  renderToString(
    <Frame announcement="">
      <First go={() => undefined} />
      <FirstField />
    </Frame>,
  );
