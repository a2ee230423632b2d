// How the panel speaks: at which pace, and with which of this computer's voices.
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Choose } from '../parts/choose.tsx';
import { useSession } from '../useSession.ts';

const USUAL = '';
const RATES = [
  { value: '0.8', label: 'slow' },
  { value: '1', label: 'the voice’s own' },
  { value: '1.25', label: 'brisk' },
  { value: '1.5', label: 'fast' },
] as const;

export function Speaking() {
  const session = useSession();
  const { rate, voice } = session.settings.value.voice;
  const voices = useSignal<readonly string[]>([]);
  useEffect(() => {
    void session.voices().then((found) => (voices.value = found));
  }, [session, voices]);
  return (
    <>
      <Choose
        label="Pace of speech"
        options={RATES}
        chosen={RATES.find(({ value }) => Number(value) >= rate)?.value ?? '1.5'}
        onChoose={(chosen) => session.changeSettings({ voice: { rate: Number(chosen) } })}
      />
      {voices.value.length > 1 && (
        <Choose
          label="Speaking voice"
          options={[{ value: USUAL, label: 'the computer’s choice' }, ...voices.value.map((name) => ({ value: name, label: name }))]}
          chosen={voice}
          onChoose={(chosen) => session.changeSettings({ voice: { voice: chosen } })}
        />
      )}
    </>
  );
}
