// Everything that can be told, in the words, keys and presses that the recogniser itself works with.
import { Heading } from '../parts/heading.tsx';
import { useSurroundings } from '../useSession.ts';
import { LightTable } from './lightTable.tsx';
import { PressTable } from './pressTable.tsx';
import { WordTable } from './wordTable.tsx';

export function HelpScreen() {
  const { way } = useSurroundings();
  return (
    <>
      <Heading onBack={() => way.back()}>Help</Heading>
      <p>
        The panel names a value. Dial it into the camera, half-press, and watch the focus light for the whole hold. Say what you
        saw; the panel finds the middle of the values that hold.
      </p>
      <LightTable />
      <WordTable />
      <PressTable />
      <section aria-labelledby="before">
        <h2 id="before">Before you begin</h2>
        <ul>
          <li>Stand the target square to the camera, evenly lit.</li>
          <li>Focus critically in live view at full aperture, then switch the lens to manual and leave the ring alone.</li>
          <li>On a body set to focus from a rear button, hold that button instead of the half-press.</li>
        </ul>
        <p class="muted small">Follow your camera maker{'\u2019'}s manual wherever it differs from this.</p>
      </section>
    </>
  );
}
