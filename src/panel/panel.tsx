// The panel's entry: opens a session on this browser and draws the screens over it.
import { render } from 'preact';
import { App } from './app.tsx';
import { openSession } from './session/open.ts';

const place = document.querySelector('#panel');
if (place) render(<App session={openSession()} />, place);
