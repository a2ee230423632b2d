// The one thing every page for paper can do.
import { printWords } from '../words/pages.ts';

export const PrintButton = () => (
  <button type="button" class="chief" onClick={() => print()}>
    {printWords.print}
  </button>
);
