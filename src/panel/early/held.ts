// What a person does before the panel can answer: presses and keys are kept and done when it can, in their order. What is
// typed stands in its field by itself and is told to the panel as soon as there is one.

export interface Held {
  /** The panel is drawn over the page: the fields may tell what stands in them. */
  tellTyped(): void;
  /** The panel knows all it needs: what was kept is done, and from here on nothing is kept. */
  release(): void;
}

export function holdInputs(place: HTMLElement): Held {
  const kept: (readonly [HTMLElement, Event])[] = [];

  function hold(event: Event): void {
    event.stopImmediatePropagation();
    const target = event.target as HTMLElement;
    // A button makes a click of these two, which is kept by itself.
    if (target.tagName === 'BUTTON' && /^( |Enter)$/.test((event as KeyboardEvent).key)) return;
    if (event.type === 'click') event.preventDefault();
    kept.push([target, event]);
  }

  addEventListener('click', hold, true);
  addEventListener('keydown', hold, true);
  return {
    tellTyped() {
      for (const field of place.querySelectorAll('input')) {
        if (field.value) field.dispatchEvent(new Event('input', { bubbles: true }));
      }
    },
    release() {
      removeEventListener('click', hold, true);
      removeEventListener('keydown', hold, true);
      for (const [target, event] of kept) {
        if (event.type === 'click') target.click();
        else target.dispatchEvent(new KeyboardEvent('keydown', event as KeyboardEvent));
      }
    },
  };
}
