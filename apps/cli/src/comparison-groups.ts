import type { Side, SideBlock } from '@surae/analysis';
import type { ComparedSet } from './compared-set.ts';

/** What a set is grouped by; the rest of it may lie elsewhere meanwhile. */
export interface SetKey {
  readonly person: string;
  readonly visit: string;
  readonly side: Side | null;
  readonly test: ComparedSet['test'];
  readonly protocol: { readonly id: string };
}

/** The sets of a person on one visit, by one way of testing. */
export interface VisitGroup<Item extends SetKey = ComparedSet> {
  readonly person: string;
  readonly visit: string;
  readonly test: string;
  /** the set that counts of each leg; null where there is none, or nobody said which of several it is */
  readonly legs: Readonly<Record<Side, Item | null>>;
  /** all sets of the visit and way, those among them whose leg is not known */
  readonly sets: readonly Item[];
  readonly blocks: readonly SideBlock[];
}

/** The sets of one leg of a person over visits, by one way of testing; one set a visit. */
export interface LegGroup<Item extends SetKey = ComparedSet> {
  readonly person: string;
  readonly side: Side;
  readonly test: string;
  readonly sets: readonly Item[];
}

const SIDES = ['left', 'right'] as const satisfies readonly Side[];

/** Lists by a name, in the order in which the names come. */
function grouped<Item>(items: readonly Item[], name: (item: Item) => string): Item[][] {
  const lists = new Map<string, Item[]>();
  for (const item of items) {
    const list = lists.get(name(item));
    if (list === undefined) lists.set(name(item), [item]);
    else list.push(item);
  }
  return [...lists.values()];
}

const named = (...parts: readonly string[]): string => JSON.stringify(parts);

function hasSeveral(sets: readonly SetKey[]): boolean {
  return SIDES.some((side) => sets.filter((set) => set.side === side).length > 1);
}

/** One list where each leg has one set at most, whatever it was done by; else one for each protocol. */
function byWay<Item extends SetKey>(sets: readonly Item[]): Item[][] {
  return hasSeveral(sets) ? grouped(sets, ({ protocol }) => protocol.id) : [[...sets]];
}

function visitGroup<Item extends SetKey>(sets: readonly Item[]): VisitGroup<Item> {
  const { person, visit, test } = sets[0]!;
  const of = (side: Side): Item[] => sets.filter((set) => set.side === side);
  const only = (side: Side): Item | null => (of(side).length === 1 ? of(side)[0]! : null);
  const blocks: readonly (readonly [SideBlock, boolean])[] = [
    ['several-sets', hasSeveral(sets)],
    ['side-uncertain', sets.some(({ side }) => side === null)],
  ];
  return {
    person,
    visit,
    test,
    legs: { left: only('left'), right: only('right') },
    sets,
    blocks: blocks.filter(([, holds]) => holds).map(([block]) => block),
  };
}

/** One group for each person, visit and way of testing, in the order in which they come. */
export function visitGroups<Item extends SetKey>(sets: readonly Item[]): VisitGroup<Item>[] {
  return grouped(sets, ({ person, visit, test }) => named(person, visit, test))
    .flatMap((own) => byWay(own))
    .map((own) => visitGroup(own));
}

/**
 * One group for each person and leg that has sets on several visits. A leg that did several ways of testing on a visit has a
 * group for each of them; a visit on which it has several sets of one way has none that counts, and is left out.
 */
export function legGroups<Item extends SetKey>(sets: readonly Item[]): LegGroup<Item>[] {
  const visits = (of: readonly Item[]): Item[][] => grouped(of, ({ visit }) => named(visit));
  return grouped(
    sets.filter(({ side }) => side !== null),
    ({ person, side, test }) => named(person, side!, test),
  )
    .flatMap((of) => (visits(of).some(hasSeveral) ? grouped(of, ({ protocol }) => protocol.id) : [of]))
    .map((of) => visits(of).flatMap((visit) => (visit.length === 1 ? visit : [])))
    .filter((of) => of.length > 1)
    .map((of) => ({ person: of[0]!.person, side: of[0]!.side!, test: of[0]!.test, sets: of }));
}
