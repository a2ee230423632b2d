// The pictures of a series as they were taken, behind one press since what they say together comes first: each with what it was, what it shows in a sentence, and the rest folded. Those that stay out come
// after them, each with its reason.
import type { ComponentChildren } from 'preact';
import type { OutOfSeries } from '../../photographs/series/outOfSeries.ts';
import type { Turns } from '../../photographs/series/turns.ts';
import type { WithInterval } from '../../photographs/withInterval.ts';
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { ScreenRoom } from '../parts/room.tsx';
import { useFirstOf } from './firstPictures.tsx';
import { PictureFaults } from './pictureFaults.tsx';
import type { Picture } from './pictures.ts';
import { PictureShown } from './pictureView.tsx';
import { SideBySide } from './sideBySide.tsx';

interface Props {
  readonly pictures: readonly Picture[];
  readonly turns: Turns;
  /** The one focused in live view, by its id; null where there is none. */
  readonly reference: string | null;
  /** What a bracket measured a step to be worth, in millimetres at the target; null where none did. */
  readonly step: WithInterval | null;
  /** Says what a picture was, and takes it told otherwise. By its id. */
  readonly picks: ReadonlyMap<string, ComponentChildren>;
}

export function SeriesList({ pictures, turns, reference, step, picks }: Props) {
  const places = new Map(turns.taken.map(({ id }, place) => [id, place]));
  const ordered = pictures.toSorted((one, other) => (places.get(one.id) ?? Infinity) - (places.get(other.id) ?? Infinity) || 0);
  const { drawn, more } = useFirstOf(ordered);
  const beside = pictures.find(({ id }) => id === reference);
  const say = words('series').each;
  if (pictures.length === 0) return null;
  return (
    <div class="rooms">
      <ScreenRoom title={say.title} state={say.state(pictures.length, turns.out.size)}>
        <ol class="pictures" aria-label={words('photographs').pictures}>
          {drawn.map((picture) => (
            <li key={picture.id} class="card picture">
              <h2>{picture.name}</h2>
              {picks.get(picture.id)}
              <Told
                picture={picture}
                out={turns.out.get(picture.id) ?? null}
                step={step}
                beside={beside && beside.id !== picture.id ? broughtIn(beside) : null}
              />
            </li>
          ))}
        </ol>
        {more}
      </ScreenRoom>
    </div>
  );
}

const broughtIn = ({ is }: Picture): BroughtPicture | null => (typeof is !== 'string' && is.ok ? is.value : null);

interface ToldProps {
  readonly picture: Picture;
  readonly out: OutOfSeries | null;
  readonly step: Props['step'];
  readonly beside: BroughtPicture | null;
}

function Told({ picture, out, step, beside }: ToldProps) {
  const say = words('photographs');
  const { is } = picture;
  if (typeof is === 'string') return <p class="muted">{say.stage[is]}</p>;
  if (!is.ok) return <p class="fault">{say.fault[is.fault]}</p>;
  const { target, focus } = is.value.reading;
  return (
    <>
      {out && <p class="fault">{words('series').out[out]}</p>}
      {focus.ok && target.ok && <p>{run(say.focus(focus.value, target.value.motion).slice(0, 2))}</p>}
      <PictureFaults picture={is.value} />
      {beside && !out && <SideBySide reference={beside} shot={is.value} />}
      <details>
        <summary>{words('series').shown}</summary>
        {target.ok && <p>{say.target(target.value)}</p>}
        <PictureShown picture={is.value} step={step} />
      </details>
    </>
  );
}
