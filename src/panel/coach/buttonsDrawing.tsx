// The two buttons, drawn: the camera with a finger resting on its button, half down, and its light on; the panel's switch with
// a finger that taps and is gone.
export const CameraButton = () => (
  <svg class="buttons" viewBox="0 0 48 40" aria-hidden="true">
    <path class="body" d="M4 17h9l3-5h12l3 5h13v19H4Z" />
    <circle class="body" cx="22" cy="26" r="7" />
    <circle class="lit" cx="39" cy="22" r="2.5" />
    <path class="pressed" d="M34 15h8" />
    <path class="finger" d="M38 12V2M34 8l4 4 4-4" />
    <path class="stop" d="M32 18.5h12" />
  </svg>
);

export const PanelSwitch = () => (
  <svg class="buttons" viewBox="0 0 48 40" aria-hidden="true">
    <rect class="body" x="12" y="2" width="24" height="36" rx="3" />
    <path class="body" d="M17 9h14M17 14h9" />
    <rect class="pressed full" x="16" y="21" width="16" height="11" rx="4" />
    <path class="finger" d="M40 33 33 27M40 26l-7 1 1 6" />
  </svg>
);
