// The four lights, shown: a lamp that does what the camera's would, the course of the whole hold as a bar below it, its word
// and key, and the press that tells it. Where nothing may move, the light's own shape stands in the lamp's place.
import { FOUR_LIGHTS, litStretches, showingOf, type ShownLight } from '../../practice/fourLights.ts';
import { capOf } from '../keys/keys.ts';
import { LightShape } from '../strip/lightShape.tsx';
import { PressShape } from '../sweep/pressShape.tsx';
import { words } from '../../words/catalogue.ts';
import { TOLD_BY } from './telling.ts';
import { useShowing } from './useShowing.ts';
import { taught } from '../../words/taught.ts';

/** `brief`: in a row, without the sentences. */
export function FourLights({ brief = false }: { readonly brief?: boolean }) {
  const lit = useShowing();
  return (
    <ul class="lights plain" data-brief={brief} data-moving={lit !== null} aria-label={words('firstHold').lights.title}>
      {FOUR_LIGHTS.map((light) => (
        <OneLight key={light} light={light} lit={lit && lit[light]} brief={brief} />
      ))}
    </ul>
  );
}

interface One {
  readonly light: ShownLight;
  /** Null: it stands still. */
  readonly lit: boolean | null;
  readonly brief: boolean;
}

function OneLight({ light, lit, brief }: One) {
  const { word, press } = TOLD_BY[light];
  const { does, when, after } = words('firstHold').lights;
  return (
    <li data-light={light}>
      <Lamp light={light} lit={lit} />
      <b>{taught(word)}</b>
      {!brief && <span>{does[light]}</span>}
      <span class="tells">
        <kbd>{capOf(word)}</kbd> <PressShape press={press} /> {brief ? light === 'steady' && after : when[light]}
      </span>
    </li>
  );
}

function Lamp({ light, lit }: Omit<One, 'brief'>) {
  return (
    <svg class="lamp" viewBox="0 0 44 34" aria-hidden="true" data-on={lit}>
      {lit === null ? <LightShape light={light} box={{ x: 13, y: 3, width: 18, height: 18 }} /> : <circle class={lit ? 'on' : 'off'} cx="22" cy="12" r="8" />}
      <rect class="whole" x="2" y="27" width="40" height="4" />
      {litStretches(showingOf(light)).map(({ from, to }) => (
        <rect key={from} class="stretch" x={2 + 40 * from} y="27" width={40 * (to - from)} height="4" />
      ))}
    </svg>
  );
}
