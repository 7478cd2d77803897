import { type Quantity, sensedQuantities } from '../quantities.ts';
import type { NameReading } from './column-name.ts';
import { type Evidence, evidence, type Guessed, weighed } from './guessed.ts';

/** What a column holds, or that it is not used. */
export type ColumnUse = Quantity | 'unused';

export const columnUses = [...sensedQuantities, 'unused'] as const satisfies readonly ColumnUse[];

/** What is known of a column of numbers beside its name. */
export interface ColumnSigns {
  readonly name: NameReading;
  /** one of three columns whose length stays near one value: gravity, in a unit of acceleration */
  readonly gravity: { readonly size: number } | undefined;
  readonly isConstant: boolean;
  /** another column is known for certain, so that this one may be something beside it */
  readonly hasNeighbour: boolean;
}

/** What a column holds: its name, its unit and its numbers each speak for something. */
export function guessUse({ name, gravity, isConstant, hasNeighbour }: ColumnSigns): Guessed<ColumnUse> {
  const because: Evidence[] = [];
  const meant = name.unit?.meanings.flatMap(({ quantity }) => (quantity === 'time' ? [] : [quantity])) ?? [];
  if (name.quantities.length > 0) because.push(evidence('name-word', { word: name.word! }));
  if (meant.length > 0) because.push(evidence('name-unit', { unit: name.unit!.spelling }));
  if (gravity !== undefined) because.push(evidence('gravity-norm', { size: Number(gravity.size.toPrecision(3)) }));
  if (name.isOther || name.isIdentity) because.push(evidence('name-other'));
  const weights = sensedQuantities.map((quantity) => {
    let weight = -2.5;
    if (name.quantities.includes(quantity)) weight += name.quantities.length === 1 ? 7 : 4.5;
    if (meant.includes(quantity)) weight += quantity === 'acceleration' || meant.length === 1 ? 5.5 : 3.5;
    else if (meant.length > 0) weight -= 3;
    if (gravity !== undefined && quantity === 'acceleration') weight += 6;
    return [quantity, weight] as const;
  });
  const strangeUnit = name.unit !== undefined && meant.length === 0;
  let unused = strangeUnit ? 1 : 0;
  if (name.isOther || name.isIdentity) unused += 8;
  else if (name.isSampleNumber && name.quantities.length === 0) unused += 4;
  else if (name.isTime) unused += 5;
  else if (name.quantities.length === 0 && meant.length === 0 && gravity === undefined) {
    because.push(evidence(name.isGeneric ? 'name-says-nothing' : 'name-unknown'));
    // somebody exported it: it is a signal more often than not
    unused += name.isGeneric ? -2 : hasNeighbour ? 1.4 : -1;
  }
  if (isConstant) unused += 2;
  return weighed<ColumnUse>([...weights, ['unused', unused]], because);
}
