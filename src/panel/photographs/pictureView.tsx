// One picture: how far it has come, the one sentence why it cannot be read, or what it shows: plain words first, figures folded.
import { useContext } from 'preact/hooks';
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import type { PictureReading } from '../../photographs/reading.ts';
import { outOfSeries } from '../../photographs/series/outOfSeries.ts';
import { proofOfOne } from '../../photographs/series/proofsOf.ts';
import type { SeriesPicture } from '../../photographs/series/seriesPicture.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import { words } from '../../words/catalogue.ts';
import { run, space } from '../../words/run.ts';
import { ScreenRoom } from '../parts/room.tsx';
import { useSession } from '../useSession.ts';
import { EdgeCrops } from './edgeCrops.tsx';
import { KeepProof, NeverKept } from './keepProof.tsx';
import { cropOfOne } from './keptCrop.ts';
import { Outlined } from './outlined.tsx';
import { PictureFaults } from './pictureFaults.tsx';
import type { Picture } from './pictures.ts';
import { RampChart } from './rampChart.tsx';

interface Props {
  readonly picture: Picture;
  /** What it is of; null where that is not known. */
  readonly situation: string | null;
  /** What a bracket measured a step to be worth, in millimetres at the target; null where none did. */
  readonly step: WithInterval | null;
  /** One of several: behind one press, with what it shows in short. */
  readonly folded: boolean;
}

export function PictureView({ folded, ...props }: Props) {
  const { name, is } = props.picture;
  if (!folded) {
    return (
      <li class="card picture">
        <h2>{name}</h2>
        <Told {...props} />
      </li>
    );
  }
  return (
    <li class="rooms picture">
      <ScreenRoom title={name} state={inShort(is)}>
        <Told {...props} />
      </ScreenRoom>
    </li>
  );
}

/** How far it has come, why it tells nothing of the focus, or whether it is sharp. */
function inShort(is: Picture['is']): string {
  const say = words('photographs');
  if (typeof is === 'string') return say.stage[is];
  if (!is.ok) return say.fault[is.fault];
  const { target, focus } = is.value.reading;
  if (!target.ok) return say.notFound(target.fault);
  if (!focus.ok) return say.noFocus(focus.fault);
  return say.focus(focus.value, target.value.motion)[0] ?? '';
}

function Told({ picture: { id, name, is }, situation, step }: Omit<Props, 'folded'>) {
  const neverKept = useContext(NeverKept);
  const say = words('photographs');
  if (typeof is === 'string') return <p class="muted">{say.stage[is]}</p>;
  if (!is.ok) return <p class="fault">{say.fault[is.fault]}</p>;
  return (
    <>
      <InWords reading={is.value.reading} />
      <PictureFaults picture={is.value} />
      <PictureShown picture={is.value} step={step} />
      {!neverKept && <KeepOne picture={{ id, name, ...is.value }} brought={is.value} situation={situation} />}
    </>
  );
}

interface KeepOneProps extends Pick<Props, 'situation'> {
  readonly picture: SeriesPicture;
  readonly brought: BroughtPicture;
}

/** One that was plainly taken with something else than the situation has is not kept for it. */
function KeepOne({ picture, brought, situation }: KeepOneProps) {
  const kit = useSession().kit.value;
  const { camera, reading } = picture;
  if (!reading.focus.ok) return null;
  if (situation !== null && outOfSeries([picture], kit, situation).size > 0) return <p class="muted small">{words('photographs').keep.another}</p>;
  return <KeepProof situation={situation} proof={proofOfOne(reading.focus.value, camera?.taken ?? null)} crops={cropOfOne(brought)} />;
}

/** The picture itself, its charts and crops, and its figures. */
export function PictureShown({ picture, step }: { readonly picture: BroughtPicture; readonly step: WithInterval | null }) {
  const say = words('photographs');
  const { frame, camera, crops, reading } = picture;
  const { target, focus } = reading;
  const edges = target.ok ? target.value.edges : [];
  return (
    <>
      <Outlined picture={picture} />
      {focus.ok && <RampChart focus={focus.value} />}
      {crops.length > 0 && (
        <details>
          <summary>{say.crops}</summary>
          <EdgeCrops edges={edges} crops={crops} />
        </details>
      )}
      <p class="muted small">{say.camera(frame, camera)}</p>
      {target.ok && (
        <details>
          <summary>{say.figures.title}</summary>
          <ul class="small">
            {[...(focus.ok ? say.figures.focus(focus.value, step) : []), say.figures.target(target.value), ...edges.map(say.figures.edge)].map(
              (sentence, index) => (
                <li key={index}>{sentence}</li>
              ),
            )}
          </ul>
        </details>
      )}
    </>
  );
}

/** Plain words: whether it is sharp, how far off focus fell and how sure that is, and how the target stands. */
function InWords({ reading: { target, focus } }: { readonly reading: PictureReading }) {
  const say = words('photographs');
  const [headline, ...more] = focus.ok && target.ok ? say.focus(focus.value, target.value.motion) : [];
  return (
    <>
      {headline !== undefined && (
        <p>
          <strong>{headline}</strong>
          {space()}
          {run(more)}
        </p>
      )}
      {target.ok && <p>{say.target(target.value)}</p>}
    </>
  );
}
