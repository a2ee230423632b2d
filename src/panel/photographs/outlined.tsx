// The picture, small, with what was found in it drawn over it.
import type { Point } from '../../optics/print/drawing.ts';
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import { words } from '../../words/catalogue.ts';
import { BlobPicture } from './blobPicture.tsx';

const pathOf = (points: readonly Point[]): string => points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

export function Outlined({ picture: { frame, small, reading } }: { readonly picture: BroughtPicture }) {
  const { target, focus } = reading;
  return (
    <div class="outlined">
      <BlobPicture blob={small} alt={target.ok ? words('photographs').found(focus.ok) : ''} />
      <svg viewBox={`0 0 ${frame.width} ${frame.height}`} aria-hidden="true">
        {target.ok && <polygon points={pathOf(target.value.outline)} />}
        {focus.ok && <polygon points={pathOf(focus.value.outline)} />}
      </svg>
    </div>
  );
}
