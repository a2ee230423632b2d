// The panel as it stands in the page before any script runs. The build writes this into panel.html, and the panel takes it
// over as it is: what is drawn here must be what `App` draws before it is ready.
import { renderToString } from 'preact-render-to-string';
import { Frame } from '../frame.tsx';
import { firstWords } from '../../words/first.ts';
import { First } from '../start/first.tsx';
import { FirstField } from '../start/firstField.tsx';

/** What the build writes in place of each mark in panel.html. */
export const drawn = () => ({ name: firstWords.name, drawn: start(), unread: firstWords.unread });

const start = (): string =>
  renderToString(
    <Frame announcement="">
      <First go={() => undefined} />
      <FirstField />
    </Frame>,
  );
