// How carefully, and in which order.
import { Pick } from '../parts/pick.tsx';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';

export function MannerPick() {
  const session = useSession();
  const say = words('manner');
  const { care, order } = session.settings.value.manner;
  return (
    <>
      <Pick
        legend={say.care}
        options={CARES.map((value) => ({ value, ...say.cares[value] }))}
        chosen={care}
        onChoose={(chosen) => session.changeSettings({ manner: { care: chosen } })}
      />
      <Pick
        legend={say.order}
        options={ORDERS.map((value) => ({ value, ...say.orders[value] }))}
        chosen={order}
        onChoose={(chosen) => session.changeSettings({ manner: { order: chosen } })}
      />
    </>
  );
}

const CARES = ['quick', 'standard', 'thorough'] as const;
const ORDERS = ['fewest', 'outward'] as const;
