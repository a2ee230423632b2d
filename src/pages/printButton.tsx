// The one thing every page for paper can do.
import { words } from '../words/catalogue.ts';

export const PrintButton = () => (
  <button type="button" class="chief" onClick={() => print()}>
    {words('paper').print}
  </button>
);
