// One picture: how far it has come, the one sentence why it cannot be read, or what it shows: plain words first, figures folded.
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import type { PictureReading } from '../../photographs/reading.ts';
import { words } from '../../words/catalogue.ts';
import { EdgeCrops } from './edgeCrops.tsx';
import { Outlined } from './outlined.tsx';
import { PictureFaults } from './pictureFaults.tsx';
import type { Picture } from './pictures.ts';
import { RampChart } from './rampChart.tsx';

export function PictureView({ picture: { name, is } }: { readonly picture: Picture }) {
  const say = words('photographs');
  return (
    <li class="card picture">
      <h2>{name}</h2>
      {typeof is === 'string' && <p class="muted">{say.stage[is]}</p>}
      {typeof is !== 'string' && !is.ok && <p class="fault">{say.fault[is.fault]}</p>}
      {typeof is !== 'string' && is.ok && (
        <>
          <InWords reading={is.value.reading} />
          <PictureFaults reading={is.value.reading} />
          <PictureShown picture={is.value} />
        </>
      )}
    </li>
  );
}

/** The picture itself, its charts and crops, and its figures. */
export function PictureShown({ picture }: { readonly picture: BroughtPicture }) {
  const say = words('photographs');
  const { frame, camera, crops, reading } = picture;
  const { target, focus } = reading;
  const edges = target.ok ? target.value.edges : [];
  return (
    <>
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

/** Plain words: whether it is sharp, how far off focus fell and how sure that is, and how the target stands. */
function InWords({ reading: { target, focus } }: { readonly reading: PictureReading }) {
  const say = words('photographs');
  const [headline, ...more] = focus.ok ? say.focus(focus.value) : [];
  return (
    <>
      {headline !== undefined && (
        <p>
          <strong>{headline}</strong> {more.join(' ')}
        </p>
      )}
      {target.ok && <p>{say.target(target.value)}</p>}
    </>
  );
}
