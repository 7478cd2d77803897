import type { RecordedChannel, Recording } from '@surae/records';
import type { WorkItem } from './work-list.ts';

/** The one thing that all channels say; undefined where they differ or say nothing. */
function saidByAll<Said>({ groups }: Recording, of: (channel: RecordedChannel) => Said | undefined): Said | undefined {
  const said = new Set(groups.flatMap(({ channels }) => channels.map(of)));
  return said.size === 1 ? [...said][0] : undefined;
}

/**
 * A recording that a recipe made, with what the recipe says of side and placement told to the work. Of a file with both legs
 * the one that is named is taken; nothing is chosen for anybody, and a contradiction is refused.
 */
export function recipeItem(
  item: WorkItem,
  recording: Recording,
): { readonly item: WorkItem; readonly recording: Recording } | { readonly refusal: string } {
  const sides = new Set(recording.groups.flatMap(({ channels }) => channels.flatMap(({ side }) => side ?? [])));
  const { about } = item;
  if (sides.size === 2 && about.side === undefined) {
    return { refusal: 'the file holds both legs: say which with --side, or in the column side of the manifest' };
  }
  if (sides.size === 1 && about.side !== undefined && !sides.has(about.side)) {
    return { refusal: `the recipe says the ${[...sides][0]} leg, and the ${about.side} one was named` };
  }
  const groups = recording.groups.flatMap((group) => {
    const channels = group.channels.filter(({ side }) => sides.size < 2 || side === undefined || side === about.side);
    return channels.length === 0 ? [] : [{ ...group, channels }];
  });
  const side = about.side ?? [...sides][0];
  const placement =
    about.placement ?? saidByAll({ ...recording, groups }, ({ placementDeclared }) => placementDeclared);
  return { item: { ...item, about: { ...about, side, placement } }, recording: { ...recording, groups } };
}
