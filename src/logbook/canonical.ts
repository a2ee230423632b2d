// One text for one content, whatever the order of its fields, and a short name for that text. Two computers that
// compare items by these always agree.

/** JSON with the fields of every object in the order of their names. */
export const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part) ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1))) : part,
  );

/** Whether two contents have one such text, found without writing it: thousands are compared at a time. */
export function isSame(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) || Array.isArray(other)) {
    return Array.isArray(one) && Array.isArray(other) && one.length === other.length && one.every((part, index) => isSame(part, other[index]));
  }
  const [here, there] = [fieldsOf(one), fieldsOf(other)];
  return here.length === there.length && here.every(([name, part]) => isSame(part, (other as Fields)[name]));
}

type Fields = Readonly<Record<string, unknown>>;

/** A field that is undefined is written nowhere. */
const fieldsOf = (object: object): [string, unknown][] => Object.entries(object).filter(([, part]) => part !== undefined);

/** 64 bits of a text in hexadecimal: FNV-1a from two starts. It tells contents apart; it protects nothing. */
export const fingerprintOf = (text: string): string => fnv1a(text, 0x811c9dc5) + fnv1a(text, 0x01000193);

function fnv1a(text: string, start: number): string {
  let hash = start;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16).padStart(8, '0');
}
