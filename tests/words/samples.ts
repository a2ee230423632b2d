// Values to try a sentence with, made of the types of what it is told: of each choice every one, of each object one for every choice inside.
import ts from 'typescript';

/** Of numbers two, as the words of a plural differ. */
const PLAIN = [3, 1];
const SHARE = [0.4];
/** By what a number is called, or what its type is. */
const NUMBERS: readonly (readonly [RegExp, readonly number[]])[] = [
  [/moment|^(at|since|opened|finished|changed|day)$/i, [Date.UTC(2026, 9, 20, 9, 30)]],
  [/millimetres|^(distance|focalLength)$/i, [4250]],
  [/share|chance|probability|predictive|credible/i, SHARE],
  [/steps/i, [6, -2]],
];
const NAME = 'Corvid 85';
/** Of each function and each object. */
const MOST = 400;
const DEEPEST = 9;

interface Samples {
  /** Rows of arguments, the usual first. */
  argumentsFor(signature: ts.Signature): readonly (readonly unknown[])[];
}

export function samplesBy(checker: ts.TypeChecker, place: ts.Node): Samples {
  function valuesOf(type: ts.Type, called: string, depth: number): readonly unknown[] {
    if (type.isStringLiteral() || type.isNumberLiteral()) return [type.value];
    const { flags } = type;
    if (flags & ts.TypeFlags.BooleanLiteral) return [checker.typeToString(type) === 'true'];
    if (flags & ts.TypeFlags.Boolean) return [true, false];
    if (flags & ts.TypeFlags.Null) return [null];
    if (flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Void)) return [undefined];
    if (type.isUnion()) return inTurns(type.types.toSorted(byPlainness).map((one) => valuesOf(one, called, depth)));
    if (type.isIntersection() && type.types.some((one) => one.flags & ts.TypeFlags.Number)) return numbersFor(checker.typeToString(type), called);
    if (type.isIntersection() && type.types.some((one) => one.flags & ts.TypeFlags.String)) return [NAME];
    if (flags & ts.TypeFlags.Number) return numbersFor('', called);
    if (flags & ts.TypeFlags.StringLike) return [NAME];
    if (flags & (ts.TypeFlags.Any | ts.TypeFlags.Unknown)) return [NAME];
    if (depth > DEEPEST) return [undefined];
    if (checker.isTupleType(type)) return rowsOf(checker.getTypeArguments(type as ts.TypeReference), called, depth + 1);
    if (checker.isArrayType(type)) return listsOf(checker.getTypeArguments(type as ts.TypeReference), called, depth + 1);
    if (type.getCallSignatures().length > 0) return [() => NAME];
    const name = type.getSymbol()?.getName() ?? '';
    if (/^(Readonly)?Set$/.test(name)) return listsOf(checker.getTypeArguments(type as ts.TypeReference), called, depth + 1).map((list) => new Set(list));
    return objectsOf(type, depth + 1);
  }

  /** No list is shorter than those that a sentence is about. */
  const listsOf = ([of]: readonly ts.Type[], called: string, depth: number): unknown[][] => {
    const values = of ? valuesOf(of, called, depth) : [];
    return [values.slice(0, 1), values.slice(0, 3)];
  };

  function objectsOf(type: ts.Type, depth: number): readonly unknown[] {
    const properties = checker.getPropertiesOfType(type);
    const rows = rowsOf(
      properties.map((property) => checker.getTypeOfSymbolAtLocation(property, place)),
      properties.map((property) => property.getName()),
      depth,
    );
    return rows.map((row) => Object.fromEntries(properties.map((property, at) => [property.getName(), row[at]])));
  }

  /** The usual of each, and every other of each with the usual of the rest. */
  function rowsOf(types: readonly ts.Type[], called: string | readonly string[], depth: number): unknown[][] {
    const choices = types.map((type, at) => valuesOf(type, typeof called === 'string' ? called : (called[at] ?? ''), depth));
    const usual = choices.map(([first]) => first);
    const others = choices.flatMap((values, at) => values.slice(1).map((value) => usual.with(at, value)));
    return [usual, ...others].slice(0, MOST);
  }

  return {
    argumentsFor(signature) {
      const parameters = signature.getParameters();
      return rowsOf(
        parameters.map((parameter) => checker.getTypeOfSymbolAtLocation(parameter, place)),
        parameters.map((parameter) => parameter.getName()),
        0,
      );
    },
  };
}

/** The first of each list, then the second of each: no choice is crowded out by what stands inside another. */
const inTurns = (lists: readonly (readonly unknown[])[]): unknown[] =>
  Array.from({ length: Math.max(...lists.map(({ length }) => length)) }, (_, at) => lists.flatMap((list) => list.slice(at, at + 1))).flat();

const numbersFor = (type: string, called: string): readonly number[] => NUMBERS.find(([of]) => of.test(type) || of.test(called))?.[1] ?? PLAIN;

/** What is there before what is not. */
const byPlainness = (one: ts.Type, other: ts.Type): number => nothing(one) - nothing(other);
const nothing = ({ flags }: ts.Type): number => (flags & (ts.TypeFlags.Null | ts.TypeFlags.Undefined) ? 1 : 0);
