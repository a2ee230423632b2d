// The panel as it stands in the page before any script runs. The build writes this into panel.html, and the panel takes it
// over as it is: what is drawn here must be what `App` draws before it is ready.
import { renderToString } from 'preact-render-to-string';
import { Frame } from '../frame.tsx';
import { First } from '../start/first.tsx';

export const drawn = (): string =>
  renderToString(
    <Frame announcement="">
      <First go={() => undefined} />
    </Frame>,
  );
