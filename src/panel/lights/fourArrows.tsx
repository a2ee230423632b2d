// What the arrows beside the light can do, drawn as in a viewfinder: how long each is lit stands in the bar below it. With its word and key.
import { read, type Arrows } from '../../sweep/verdict.ts';
import { capOf } from '../keys/keys.ts';
import { words } from '../../words/catalogue.ts';
import { taught } from '../../words/taught.ts';

type ShownArrows = Exclude<Arrows, 'none'>;

/** The share of the hold for which each arrow is lit. */
const LIT: Record<ShownArrows, { readonly left: number; readonly right: number }> = {
  left: { left: 1, right: 0 },
  right: { left: 0, right: 1 },
  balanced: { left: 1, right: 1 },
  lopsided: { left: 1, right: 0.35 },
};

const FOUR_ARROWS: readonly ShownArrows[] = ['left', 'right', 'balanced', 'lopsided'];

/** `brief`: in pairs, without how they count. */
export function FourArrows({ brief = false }: { readonly brief?: boolean }) {
  const say = words('firstHold').arrows;
  return (
    <ul class={`lights plain ${brief ? 'pairs' : ''}`} aria-label={say.title}>
      {FOUR_ARROWS.map((arrows) => (
        <li key={arrows}>
          <Finder {...LIT[arrows]} />
          <span>
            <b>{taught(arrows)}</b> <kbd>{capOf(arrows)}</kbd>
          </span>
          <span>{say.does[arrows]}</span>
          {!brief && <span class="tells">{say.counts[read({ light: 'steady', arrows }, 'right-is-up').counts]}</span>}
        </li>
      ))}
    </ul>
  );
}

const Finder = ({ left, right }: { readonly left: number; readonly right: number }) => (
  <svg class="lamp" viewBox="0 0 44 34" aria-hidden="true">
    <path class={left > 0 ? 'on' : 'off'} d="M12 6v12L4 12Z" />
    <circle class="on" cx="22" cy="12" r="6" />
    <path class={right > 0 ? 'on' : 'off'} d="M32 6v12l8-6Z" />
    <path class="whole" d="M2 27h18v4H2ZM24 27h18v4H24Z" />
    <rect class="stretch" x="2" y="27" width={18 * left} height="4" />
    <rect class="stretch" x="24" y="27" width={18 * right} height="4" />
  </svg>
);
