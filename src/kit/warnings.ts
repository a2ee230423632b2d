// What a body cannot keep apart or will soon not keep at all, said before a value is lost in it. The manual of the
// body has the last word: bodies differ in what they count as a lens.
import { isRetired } from './change.ts';
import { pairingsOf, type Body, type Kit, type Lens, type Situation } from './kit.ts';

export interface Warning {
  readonly body: string;
  readonly about: 'shared value' | 'memory';
  /** The lenses concerned. */
  readonly lenses: readonly string[];
  readonly sentence: string;
}

/** Places left at which the memory counts as nearly full. */
const NEARLY = 2;

/** Warnings for every body in use. `entered`: the situations whose value is in the camera. */
export function warningsOf(kit: Kit, entered: ReadonlySet<string>): Warning[] {
  const away = isRetired(kit);
  const pairing = pairingsOf(kit);
  return kit.bodies
    .filter(({ retired }) => retired === null)
    .flatMap((body) => {
      const used = kit.situations
        .filter((situation) => situation.body === body.id && !away(situation))
        .flatMap((situation) => {
          const { lens } = pairing(situation);
          return lens ? [{ situation, lens }] : [];
        });
      const stored = used.filter(({ situation }) => entered.has(situation.id));
      return [...sharedValues(body, used), ...memory(body, stored)];
    });
}

/** Those that matter before a value of this situation is entered. */
export const warningsFor = ({ body, lens }: Situation, warnings: readonly Warning[]): Warning[] =>
  warnings.filter((warning) => warning.body === body && (warning.about === 'memory' || warning.lenses.includes(lens)));

interface Use {
  readonly situation: Situation;
  readonly lens: Lens;
}

function sharedValues(body: Body, used: readonly Use[]): Warning[] {
  if (body.copies === 'told apart') return [];
  const copies = new Map<string, Map<string, Lens>>();
  for (const { lens } of used) {
    const group = copies.get(modelKey(lens)) ?? new Map<string, Lens>();
    copies.set(modelKey(lens), group.set(lens.id, lens));
  }
  return [...copies.values()]
    .filter((group) => group.size > 1)
    .map((group) => ({
      body: body.id,
      about: 'shared value',
      lenses: [...group.keys()],
      sentence: sharedSentence(body, namesOf(group)),
    }));
}

function sharedSentence({ name, copies }: Body, lenses: string): string {
  return copies === 'share a value'
    ? `${name} cannot tell ${lenses} apart: they share one stored value, so enter that of the one in use.`
    : `${lenses} may share one stored value on ${name}: look in its manual, then say so in the body’s settings.`;
}

function memory(body: Body, stored: readonly Use[]): Warning[] {
  if (body.remembers === null) return [];
  const places = new Set(stored.map(({ situation, lens }) => `${placeKey(body, lens)} ${situation.converter ?? ''}`));
  const left = body.remembers - places.size;
  if (left > NEARLY) return [];
  const lenses = [...new Set(stored.map(({ lens }) => lens.id))];
  const room = left <= 0 ? 'has no place left' : left === 1 ? 'has one place left' : `has ${left} places left`;
  const sentence = `${body.name} remembers ${body.remembers} lenses and ${room}`;
  const remedy = 'delete one you no longer use from its memory before you enter another.';
  return [{ body: body.id, about: 'memory', lenses, sentence: `${sentence}: ${remedy}` }];
}

/** Lenses of one model count as copies; without a model, those of one name. */
const modelKey = (lens: Lens): string => (lens.model ?? lens.name).toLowerCase().replace(/\s+/g, ' ');
const placeKey = (body: Body, lens: Lens): string => (body.copies === 'share a value' ? modelKey(lens) : lens.id);

function namesOf(group: ReadonlyMap<string, Lens>): string {
  const lenses = [...group.values()];
  const named = lenses.map(({ name, serial }) => (serial === null ? name : `${name} (${serial})`));
  return `${named.slice(0, -1).join(', ')} and ${named.at(-1)}`;
}
