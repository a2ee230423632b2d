// The same two edges in the picture focused in live view and in a shot, at 100 %: one pixel of a picture is one of the screen's.
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import { words } from '../../words/catalogue.ts';
import { BlobPicture } from './blobPicture.tsx';

export function SideBySide({ reference, shot }: { readonly reference: BroughtPicture; readonly shot: BroughtPicture }) {
  const say = words('series').beside;
  const { crop } = words('photographs');
  const ways = (['upright', 'level'] as const).flatMap((runs) => {
    const [one, other] = [middleOf(reference, runs), middleOf(shot, runs)];
    return one && other ? [{ runs, one, other }] : [];
  });
  if (ways.length === 0) return null;
  return (
    <figure class="beside">
      <figcaption class="small muted">{say.title}</figcaption>
      {ways.map(({ runs, one, other }) => (
        <div key={runs} class="crops">
          <BlobPicture blob={one.blob} alt={`${say.reference}: ${crop(one.edge)}`} />
          <BlobPicture blob={other.blob} alt={`${say.shot}: ${crop(other.edge)}`} />
        </div>
      ))}
    </figure>
  );
}

function middleOf({ reading: { target }, crops }: BroughtPicture, runs: 'upright' | 'level') {
  const edges = target.ok ? target.value.edges : [];
  const at = edges.findIndex(({ edge }) => edge.at === 'middle' && edge.runs === runs);
  const [edge, blob] = [edges[at], crops[at]];
  return edge && blob ? { edge, blob } : null;
}
