/**
 * A condition on facts, as plain data. What holds is yes, no or cannot tell; a number that a fact is held against is one of the
 * numbers of the rule, by its name, and never written out here.
 */
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | { readonly not: Condition }
  | { readonly fact: string; readonly is: string }
  | { readonly fact: string; readonly oneOf: readonly string[] }
  | { readonly fact: string; readonly atLeast: string }
  | { readonly fact: string; readonly atMost: string }
  | { readonly fact: string; readonly above: string }
  | { readonly fact: string; readonly below: string };
