// Facts that stand side by side in a line, each a phrase of its own; those that are not there are passed over.
export const line = (facts: readonly (string | false | null)[]): string => facts.filter(Boolean).join(' \u00b7 ');
