// Between the face and the switch, in a person's first two holds: what each button does, what happens now, what to press. It
// asks for nothing: the switch and the words work as always.
import { FourLights } from '../lights/fourLights.tsx';
import { CameraButton, PanelSwitch } from './buttonsDrawing.tsx';
import type { Coached } from './coaching.ts';
import { BUTTONS, LIGHTS_LEAD, STEPS } from './words.ts';

export function Coach({ coached }: { readonly coached: Coached }) {
  return (
    <section class="coach" aria-label="How a hold goes" data-shows={coached.shows}>
      {coached.shows === 'buttons' && (
        <>
          <p class="which">
            <CameraButton />
            <span>{BUTTONS.camera}</span>
          </p>
          <p class="which">
            <PanelSwitch />
            <span>{BUTTONS.panel}</span>
          </p>
        </>
      )}
      {coached.shows === 'phase' && (
        <p>
          <b>{STEPS[coached.phase].now}</b> {STEPS[coached.phase].press}
        </p>
      )}
      {coached.shows === 'lights' && <p>{LIGHTS_LEAD}</p>}
      {(coached.shows === 'lights' || coached.lights) && <FourLights brief />}
    </section>
  );
}
