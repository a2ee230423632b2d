// What the browser needs to recognise words on this computer, downloaded at a press. The browser tells that it downloads, and not
// how far it is.
import { useState } from 'preact/hooks';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';

/** `isUnderWay`: the browser says so, whoever asked for it. */
export function Download({ isUnderWay }: { readonly isUnderWay: boolean }) {
  const session = useSession();
  const { sheet } = words('voice');
  const [came, setCame] = useState<'not asked' | 'under way' | 'failed'>('not asked');
  const download = async (): Promise<void> => {
    setCame('under way');
    const microphone = await session.microphone();
    setCame((await microphone.download()) ? 'not asked' : 'failed');
    session.listenAgain(false);
  };
  if (isUnderWay || came === 'under way') return <progress aria-label={sheet.downloading} />;
  return (
    <>
      {came === 'failed' && <p role="alert">{sheet.notDownloaded}</p>}
      <button type="button" onClick={() => void download()}>
        {sheet.download}
      </button>
    </>
  );
}
