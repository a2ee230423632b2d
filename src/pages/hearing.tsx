// The hearing check: whether the person stands out from the room, what is heard of each word, and teaching the words. In a
// tab of its own, because only there can the browser ask for the microphone.
import { render } from 'preact';
import { takes } from '../platform/takes.ts';
import { createCheck } from './hearing/check.ts';
import { CheckView } from './hearing/checkView.tsx';

const place = document.querySelector('main');
if (place) {
  const check = createCheck(takes);
  render(<CheckView check={check} />, place);
  await check.begin();
}
