// The measured edges at 100 %, side by side: one pixel of the picture is one of the screen's.
import type { EdgeReading } from '../../photographs/reading.ts';
import { words } from '../../words/catalogue.ts';
import { BlobPicture } from './blobPicture.tsx';

interface Props {
  readonly edges: readonly EdgeReading[];
  /** In the order of the edges. */
  readonly crops: readonly Blob[];
}

export function EdgeCrops({ edges, crops }: Props) {
  const say = words('photographs');
  return (
    <section class="crops" aria-label={say.crops}>
      {edges.flatMap((reading, index) => {
        const crop = crops[index];
        return crop === undefined ? [] : [<BlobPicture key={index} blob={crop} alt={say.crop(reading)} />];
      })}
    </section>
  );
}
