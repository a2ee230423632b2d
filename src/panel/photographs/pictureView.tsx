// One picture: how far it has come, the one sentence why it cannot be read, or what it shows.
import type { BroughtPicture } from '../../platform/pictures/bridge.ts';
import { words } from '../../words/catalogue.ts';
import { BlobPicture } from './blobPicture.tsx';
import type { Picture } from './pictures.ts';

export function PictureView({ picture: { name, is } }: { readonly picture: Picture }) {
  const say = words('photographs');
  return (
    <li class="card picture">
      <h2>{name}</h2>
      {typeof is === 'string' && <p class="muted">{say.stage[is]}</p>}
      {typeof is !== 'string' && (is.ok ? <Shown picture={is.value} /> : <p class="fault">{say.fault[is.fault]}</p>)}
    </li>
  );
}

function Shown({ picture: { frame, camera, small } }: { readonly picture: BroughtPicture }) {
  const say = words('photographs');
  return (
    <>
      <BlobPicture blob={small} alt="" />
      <p class="muted small">{say.camera(frame, camera)}</p>
    </>
  );
}
