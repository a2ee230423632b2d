// The panel's entry: draws the first screen.
import { render } from 'preact';

const place = document.querySelector('#panel');
if (place) render(<h1>Sweepbook</h1>, place);
