// What keeps a picture from saying all, or makes it say too much: one sentence each.
import { useContext } from 'preact/hooks';
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import { words } from '../../words/catalogue.ts';
import { NeverKept } from './keepProof.tsx';

/** Sharpening beyond this share of the step flatters what is measured (common practice, no source). */
const FLATTERED = 0.1;

export function PictureFaults({ picture: { camera, reading } }: { readonly picture: Pick<BroughtPicture, 'camera' | 'reading'> }) {
  const practice = useContext(NeverKept);
  const { target, focus } = reading;
  const say = words('photographs');
  if (!target.ok) return <p class="fault">{say.notFound(target.fault)}</p>;
  const { edges, motion } = target.value;
  // Edges that were blurred by movement may seem to overshoot where another one is near.
  const flattered = motion.is !== 'moved' && edges.some(({ measure }) => measure.ok && measure.value.overshoot > FLATTERED);
  const toldAlready = !focus.ok && focus.fault.is === 'ramp unread' && focus.fault.why.is === 'camera moved';
  const middle = edges.filter(({ edge }) => edge.at === 'middle');
  const unslanted = middle.length > 0 && middle.every(({ measure }) => !measure.ok && measure.fault.is === 'edge not slanted');
  return (
    <>
      {!focus.ok && <p class="fault">{say.noFocus(focus.fault)}</p>}
      {motion.is === 'moved' && !toldAlready && <p class="fault">{say.moved(motion.way)}</p>}
      {focus.ok && camera === null && !practice && <p class="fault">{say.unstated}</p>}
      {unslanted && <p class="fault">{say.unslanted(target.value.roll)}</p>}
      {flattered && <p class="fault">{say.sharpened}</p>}
    </>
  );
}
