import type { Side, SideBlock } from '@surae/analysis';
import type { ComparedSet } from './compared-set.ts';

/** The sets of a person on one visit, by one way of testing. */
export interface VisitGroup {
  readonly person: string;
  readonly visit: string;
  readonly test: string;
  /** the set that counts of each leg; null where there is none, or nobody said which of several it is */
  readonly legs: Readonly<Record<Side, ComparedSet | null>>;
  /** all sets of the visit and way, those among them whose leg is not known */
  readonly sets: readonly ComparedSet[];
  readonly blocks: readonly SideBlock[];
}

/** The sets of one leg of a person over visits, by one way of testing; one set a visit. */
export interface LegGroup {
  readonly person: string;
  readonly side: Side;
  readonly test: string;
  readonly sets: readonly ComparedSet[];
}

const SIDES = ['left', 'right'] as const satisfies readonly Side[];

/** Lists by a name, in the order in which the names come. */
function grouped<Item>(items: readonly Item[], name: (item: Item) => string): Item[][] {
  const lists = new Map<string, Item[]>();
  for (const item of items) lists.set(name(item), [...(lists.get(name(item)) ?? []), item]);
  return [...lists.values()];
}

const named = (...parts: readonly string[]): string => JSON.stringify(parts);

function hasSeveral(sets: readonly ComparedSet[]): boolean {
  return SIDES.some((side) => sets.filter((set) => set.side === side).length > 1);
}

/** One list where each leg has one set at most, whatever it was done by; else one for each protocol. */
function byWay(sets: readonly ComparedSet[]): ComparedSet[][] {
  return hasSeveral(sets) ? grouped(sets, ({ protocol }) => protocol.id) : [[...sets]];
}

function visitGroup(sets: readonly ComparedSet[]): VisitGroup {
  const { person, visit, test } = sets[0]!;
  const of = (side: Side): ComparedSet[] => sets.filter((set) => set.side === side);
  const only = (side: Side): ComparedSet | null => (of(side).length === 1 ? of(side)[0]! : null);
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
export function visitGroups(sets: readonly ComparedSet[]): VisitGroup[] {
  return grouped(sets, ({ person, visit, test }) => named(person, visit, test))
    .flatMap(byWay)
    .map(visitGroup);
}

/**
 * One group for each person and leg that has sets on several visits. A leg that did several ways of testing on a visit has a
 * group for each of them; a visit on which it has several sets of one way has none that counts, and is left out.
 */
export function legGroups(sets: readonly ComparedSet[]): LegGroup[] {
  const visits = (of: readonly ComparedSet[]): ComparedSet[][] => grouped(of, ({ visit }) => named(visit));
  return grouped(
    sets.filter(({ side }) => side !== null),
    ({ person, side, test }) => named(person, side!, test),
  )
    .flatMap((of) => (visits(of).some(hasSeveral) ? grouped(of, ({ protocol }) => protocol.id) : [of]))
    .map((of) => visits(of).flatMap((visit) => (visit.length === 1 ? visit : [])))
    .filter((of) => of.length > 1)
    .map((of) => ({ person: of[0]!.person, side: of[0]!.side!, test: of[0]!.test, sets: of }));
}
