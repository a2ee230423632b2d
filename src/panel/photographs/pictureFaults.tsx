// What keeps a picture from saying all, or makes it say too much: one sentence each.
import type { PictureReading } from '../../photographs/reading.ts';
import { words } from '../../words/catalogue.ts';

/** Sharpening beyond this share of the step flatters what is measured (common practice, no source). */
const FLATTERED = 0.1;

export function PictureFaults({ reading: { target, focus } }: { readonly reading: PictureReading }) {
  const say = words('photographs');
  if (!target.ok) return <p class="fault">{say.notFound(target.fault)}</p>;
  const { edges, motion } = target.value;
  // Edges that were blurred by movement may seem to overshoot where another one is near.
  const flattered = motion.is !== 'moved' && edges.some(({ measure }) => measure.ok && measure.value.overshoot > FLATTERED);
  const toldAlready = !focus.ok && focus.fault.is === 'ramp unread' && focus.fault.why.is === 'camera moved';
  return (
    <>
      {!focus.ok && <p class="fault">{say.noFocus(focus.fault)}</p>}
      {motion.is === 'moved' && !toldAlready && <p class="fault">{say.moved(motion.way)}</p>}
      {flattered && <p class="fault">{say.sharpened}</p>}
    </>
  );
}
