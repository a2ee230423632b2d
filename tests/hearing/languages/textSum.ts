// Many words in one number, where a snapshot of all of them would be too long to read: another letter, or another place of it, is
// another number.
const PERIOD = 97;

export function textSum(words: readonly string[]): number {
  const text = words.join('|');
  let sum = 0;
  for (let at = 0; at < text.length; at++) sum += text.charCodeAt(at) * ((at % PERIOD) + 1);
  return sum % 1_000_003;
}
