// The troubles of a sweep under way, below everything else: each is said once on a screen, so the one that the face or the
// question about the focus has said shows only what to check.
import type { SweepState } from '../../sweep/state.ts';
import { findingOf } from '../../sweep/finding.ts';
import { TroubleNote, WhatIsToBeChecked } from './troubleNote.tsx';

export function SweepTroubles({ sweep: { phase, troubles } }: { readonly sweep: SweepState }) {
  if (phase.name === 'offered') {
    const finding = findingOf(phase.outcome, troubles);
    if (finding.is !== 'doubtful') return null;
    return (
      <>
        <WhatIsToBeChecked of={finding.trouble} />
        {finding.others.map((found) => (
          <TroubleNote key={found.trouble} found={found} folded />
        ))}
      </>
    );
  }
  const said = (trouble: string): boolean => phase.name === 'checking' && trouble === 'focus moved';
  return (
    <>
      {troubles.map((found) =>
        said(found.trouble) ? <WhatIsToBeChecked key={found.trouble} of={found} /> : <TroubleNote key={found.trouble} found={found} folded />,
      )}
    </>
  );
}
