// Between the face and the switch, in a person's first two holds: what each button does, what happens now, what to press. It
// asks for nothing: the switch and the words work as always.
import { FourLights } from '../lights/fourLights.tsx';
import { CameraButton, PanelSwitch } from './buttonsDrawing.tsx';
import type { Coached } from './coaching.ts';
import { words } from '../../words/catalogue.ts';
import { space } from '../../words/run.ts';

export function Coach({ coached }: { readonly coached: Coached }) {
  const say = words('firstHold').coach;
  return (
    // In a low window it scrolls, also by keys.
    <section class="coach" tabIndex={0} aria-label={say.label} data-shows={coached.shows}>
      {coached.shows === 'buttons' && (
        <>
          <p class="which">
            <CameraButton />
            <span>{say.camera}</span>
          </p>
          <p class="which">
            <PanelSwitch />
            <span>{say.panel}</span>
          </p>
        </>
      )}
      {coached.shows === 'phase' && (
        <p>
          <b>{say.steps[coached.phase].now}</b>
          {space()}
          {say.steps[coached.phase].press}
        </p>
      )}
      {coached.shows === 'lights' && <p>{say.lights}</p>}
      {(coached.shows === 'lights' || coached.lights) && <FourLights brief />}
    </section>
  );
}
