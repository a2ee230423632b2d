// How carefully, and in which order, in one line; the choices are read when it is opened.
import { useState } from 'preact/hooks';
import { late } from '../parts/late.tsx';
import { useSession } from '../useSession.ts';
import type { Order } from '../../sweep/plan.ts';

const MannerPick = late(async () => (await import('./mannerPick.tsx')).MannerPick);

export function MannerLine() {
  const { care, order } = useSession().settings.value.manner;
  const [opened, setOpened] = useState(false);
  return (
    <details onToggle={() => setOpened(true)}>
      <summary>
        Care: {care}, {ORDER_SHORT[order]}
      </summary>
      {opened && <MannerPick />}
    </details>
  );
}

const ORDER_SHORT: Record<Order, string> = { fewest: 'fewest holds', outward: 'step by step' };
