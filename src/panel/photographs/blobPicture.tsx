// A small picture that the worker handed over. Its address lasts as long as it is shown.
import { useEffect, useState } from 'preact/hooks';

interface Props {
  readonly blob: Blob;
  readonly alt: string;
  readonly class?: string;
}

export function BlobPicture({ blob, alt, class: named }: Props) {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    const made = URL.createObjectURL(blob);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [blob]);
  return address === null ? null : <img class={named} src={address} alt={alt} />;
}
