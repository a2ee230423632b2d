// How the panel speaks: at which pace, and with which of this computer's voices.
import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { Choose } from '../parts/choose.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

const USUAL = '';
const RATES = [
  { value: '0.8', is: 'slow' },
  { value: '1', is: 'own' },
  { value: '1.25', is: 'brisk' },
  { value: '1.5', is: 'fast' },
] as const;

export function Speaking() {
  const session = useSession();
  const say = words('settings').sound;
  const { rate, voice } = session.settings.value.voice;
  const voices = useSignal<readonly string[]>([]);
  useEffect(() => {
    void session.voices().then((found) => (voices.value = found));
  }, [session, voices]);
  return (
    <>
      <Choose
        label={say.rate}
        options={RATES.map(({ value, is }) => ({ value, label: say.rates[is] }))}
        chosen={RATES.find(({ value }) => Number(value) >= rate)?.value ?? '1.5'}
        onChoose={(chosen) => session.changeSettings({ voice: { rate: Number(chosen) } })}
      />
      {voices.value.length > 1 && (
        <Choose
          label={say.voice}
          options={[{ value: USUAL, label: say.anyVoice }, ...voices.value.map((name) => ({ value: name, label: name }))]}
          chosen={voice}
          onChoose={(chosen) => session.changeSettings({ voice: { voice: chosen } })}
        />
      )}
    </>
  );
}
