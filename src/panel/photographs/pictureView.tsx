// One picture: how far it has come, the one sentence why it cannot be read, or what it shows: plain words first, figures folded.
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import type { PictureReading } from '../../photographs/reading.ts';
import { words } from '../../words/catalogue.ts';
import { EdgeCrops } from './edgeCrops.tsx';
import { Outlined } from './outlined.tsx';
import type { Picture } from './pictures.ts';
import { RampChart } from './rampChart.tsx';

/** Sharpening beyond this share of the step flatters what is measured (common practice, no source). */
const FLATTERED = 0.1;

export function PictureView({ picture: { name, is } }: { readonly picture: Picture }) {
  const say = words('photographs');
  return (
    <li class="card picture">
      <h2>{name}</h2>
      {typeof is === 'string' && <p class="muted">{say.stage[is]}</p>}
      {typeof is !== 'string' && (is.ok ? <PictureShown picture={is.value} /> : <p class="fault">{say.fault[is.fault]}</p>)}
    </li>
  );
}

export function PictureShown({ picture }: { readonly picture: BroughtPicture }) {
  const say = words('photographs');
  const { frame, camera, crops, reading } = picture;
  const { target, focus } = reading;
  const edges = target.ok ? target.value.edges : [];
  return (
    <>
      {target.ok ? <Found reading={reading} /> : <p class="fault">{say.notFound(target.fault)}</p>}
      <Outlined picture={picture} />
      {focus.ok && <RampChart focus={focus.value} />}
      {crops.length > 0 && <EdgeCrops edges={edges} crops={crops} />}
      <p class="muted small">{say.camera(frame, camera)}</p>
      {target.ok && (
        <details>
          <summary>{say.figures.title}</summary>
          <ul class="small">
            {[...(focus.ok ? say.figures.focus(focus.value) : []), say.figures.target(target.value), ...edges.map(say.figures.edge)].map((sentence, index) => (
              <li key={index}>{sentence}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function Found({ reading: { target, focus } }: { readonly reading: PictureReading }) {
  const say = words('photographs');
  if (!target.ok) return null;
  const flattered = target.value.edges.some(({ measure }) => measure.ok && measure.value.overshoot > FLATTERED);
  const toldAlready = !focus.ok && focus.fault.is === 'ramp unread' && focus.fault.why.is === 'camera moved';
  const [headline, ...more] = focus.ok ? say.focus(focus.value) : [];
  return (
    <>
      {headline !== undefined && (
        <p>
          <strong>{headline}</strong> {more.join(' ')}
        </p>
      )}
      <p>{say.target(target.value)}</p>
      {!focus.ok && <p class="fault">{say.noFocus(focus.fault)}</p>}
      {target.value.motion.is === 'moved' && !toldAlready && <p class="fault">{say.moved(target.value.motion.way)}</p>}
      {flattered && <p class="fault">{say.sharpened}</p>}
    </>
  );
}
