// Why what was asked for is not done, in one sentence beside what was pressed; nothing while nothing is refused.
export const Refusal = ({ sentence, small = false }: { readonly sentence: string; readonly small?: boolean }) =>
  sentence === '' ? null : (
    <p class={small ? 'fault small' : 'fault'} role="alert">
      {sentence}
    </p>
  );
