// The kit of version 1 (bodies by name, scale and arrows, lenses by name) in the form of version 2, where it is described
// whole. What version 1 did not know is filled in as not known; what does not look like kit is left as it is, for the
// reader to set aside.

/** Version 1 to 2. `changed` is 0, so that anything edited later counts as newer, on every computer alike. */
export function wholeKit(kit: unknown): unknown {
  if (!isObject(kit)) return kit;
  const kept = { changed: 0, retired: null };
  const engraved = { model: null, serial: null };
  const body = {
    sensor: null,
    zoomStore: 'one',
    remembers: null,
    copies: 'not known',
    trigger: 'half-press',
    manualFocus: 'not known',
  } as const;
  const lens = { focal: null, widest: null, closest: null };
  return {
    converters: [],
    ...kit,
    bodies: withDefaults(kit['bodies'], { ...kept, ...engraved, ...body }),
    lenses: withDefaults(kit['lenses'], { ...kept, ...engraved, ...lens }),
    situations: withDefaults(kit['situations'], { ...kept, converter: null }),
  };
}

type Fields = Readonly<Record<string, unknown>>;

const withDefaults = (items: unknown, defaults: Fields): unknown =>
  Array.isArray(items) ? items.map((item: unknown) => (isObject(item) ? { ...defaults, ...item } : item)) : items;

const isObject = (value: unknown): value is Fields => typeof value === 'object' && value !== null && !Array.isArray(value);
