// What a person does before the panel can answer: presses and keys are kept and done when it can, in their order. What is
// typed stands in its field by itself and is told to the panel as soon as there is one.

export interface Held {
  /** The panel is drawn over the page: the fields may tell what stands in them. */
  tellTyped(): void;
  /** Resolves when nothing is pressed just now: what is drawn anew under a finger would lose its press. */
  letUp(): Promise<void>;
  /** The panel knows all it needs and shows it: what was kept is done, and from here on nothing is kept. */
  release(): void;
}

const KEPT = ['click', 'submit', 'keydown', 'keyup'] as const;
const TURNS = ['pointerdown', 'pointerup', 'pointercancel'] as const;

export function holdInputs(place: HTMLElement): Held {
  const kept: (readonly [HTMLElement, Event])[] = [];
  const down = new Set<string>();
  let pressed = false;
  let waiting = (): void => undefined;

  function hold(event: Event): void {
    event.stopImmediatePropagation();
    const target = event.target as HTMLElement;
    const { key } = event as KeyboardEvent;
    // A key comes up after it went down, also where the focus has changed in between.
    if (event.type === 'keyup' && !down.delete(key)) return;
    // A button makes a click of these two, which is kept by itself.
    if (event.type === 'keydown' && target.tagName === 'BUTTON' && /^( |Enter)$/.test(key)) return;
    if (event.type === 'keydown') down.add(key);
    else event.preventDefault();
    kept.push([target, event]);
  }

  function turn({ type }: Event): void {
    pressed = type === 'pointerdown';
    // The click comes after it.
    if (!pressed) setTimeout(() => waiting());
  }

  for (const kind of KEPT) addEventListener(kind, hold, true);
  for (const kind of TURNS) addEventListener(kind, turn, true);
  return {
    tellTyped() {
      for (const field of place.querySelectorAll('input')) {
        if (field.value) field.dispatchEvent(new Event('input', { bubbles: true }));
      }
    },
    letUp: () => new Promise((done) => (pressed ? (waiting = done) : done())),
    release() {
      place.hidden = false;
      // What was drawn just now has still to read what it was given.
      setTimeout(() => {
        for (const kind of KEPT) removeEventListener(kind, hold, true);
        for (const kind of TURNS) removeEventListener(kind, turn, true);
        for (const [target, event] of kept) again(target, event);
      });
    },
  };
}

/** Where something was drawn anew, it bears the same id. */
function again(before: HTMLElement, event: Event): void {
  const target = before.isConnected ? before : document.getElementById(before.id);
  if (event.type === 'click') target?.click();
  else if (event.type === 'submit') (target as HTMLFormElement | null)?.requestSubmit();
  else (target ?? document.body).dispatchEvent(new KeyboardEvent(event.type, event as KeyboardEvent));
}
