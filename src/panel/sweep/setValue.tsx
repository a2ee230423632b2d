// Setting a value of one's own: typed, or stepped to.
import { useEffect, useRef, useState } from 'preact/hooks';
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { stepped, typedValue } from './typedValue.ts';

interface Props {
  readonly scale: Scale;
  readonly from: Steps;
  readonly onSet: (value: Steps) => void;
  readonly onClose: () => void;
}

export function SetValue({ scale, from, onSet, onClose }: Props) {
  const [text, setText] = useState(writeSteps(from));
  const say = words('sweep').setValue;
  const [fault, setFault] = useState('');
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.select(), []);
  const step = (direction: 1 | -1): void => {
    setText(stepped(scale, text, direction));
    setFault('');
  };
  const set = (event: Event): void => {
    event.preventDefault();
    const typed = typedValue(scale, text);
    if (typed.ok) onSet(typed.value);
    else setFault(say.offTheScale(typed.fault));
  };
  const keyed = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') onClose();
    if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
    event.preventDefault();
    step(event.key === 'ArrowUp' ? 1 : -1);
  };
  return (
    <form class="setting" aria-label={say.title} onSubmit={set}>
      <button type="button" aria-label={say.down} onClick={() => step(-1)}>
        {'\u2212'}
      </button>
      <input
        ref={field}
        type="text"
        inputMode="text"
        aria-label={say.value}
        aria-invalid={fault ? 'true' : 'false'}
        aria-describedby="setting-fault"
        value={text}
        onInput={(event) => setText(event.currentTarget.value)}
        onKeyDown={keyed}
      />
      <button type="button" aria-label={say.up} onClick={() => step(1)}>
        +
      </button>
      <p id="setting-fault" class="fault small" role="alert" hidden={!fault}>
        {fault}
      </p>
      <div class="answers">
        <button type="submit" class="chief">
          {say.set}
        </button>
        <button type="button" onClick={onClose}>
          {say.cancel}
        </button>
      </div>
    </form>
  );
}
