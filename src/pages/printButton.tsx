// The one thing every page for paper can do.
export const PrintButton = () => (
  <button type="button" class="chief" onClick={() => print()}>
    Print
  </button>
);
