// The same two edges in the picture focused in live view and in a shot, at 100 %: one pixel of a picture is one of the screen's.
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import { words } from '../../words/catalogue.ts';
import { BlobPicture } from './blobPicture.tsx';

export function SideBySide({ reference, shot }: { readonly reference: BroughtPicture; readonly shot: BroughtPicture }) {
  const say = words('series').beside;
  const pairs = reference.compared.flatMap((one, at) => {
    const other = shot.compared[at];
    return other === undefined ? [] : [{ one, other }];
  });
  if (pairs.length === 0) return null;
  return (
    <figure class="beside">
      <figcaption class="small muted">{say.title}</figcaption>
      {pairs.map(({ one, other }, at) => (
        <div key={at}>
          <BlobPicture blob={one} alt={say.reference(at === 0)} />
          <BlobPicture blob={other} alt={say.shot(at === 0)} />
        </div>
      ))}
    </figure>
  );
}
