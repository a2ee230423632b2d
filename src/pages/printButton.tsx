// The one thing every page for paper can do.
import { paperWords } from '../words/pages.ts';

export const PrintButton = () => (
  <button type="button" class="chief" onClick={() => print()}>
    {paperWords.print}
  </button>
);
