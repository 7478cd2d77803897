import { expect, test } from 'vitest';
import { descriptionStarter, starterBytes } from '../../../apps/dashboard/src/live/description-starter.ts';
import { projectText } from '../../support/project.ts';

test('the small example is the one that the guide explains, with its bytes', () => {
  const guide = projectText('shared/sensors/description.md');
  const explained = /```json\n([\s\S]+?)\n```/.exec(guide)![1];
  const { name, ...example } = JSON.parse(explained) as { readonly name: string };
  const { name: own, ...starter } = JSON.parse(descriptionStarter) as { readonly name: string };
  expect(starter).toEqual(example);
  expect([name, own].every((one) => one.length > 0)).toBe(true);
  expect(guide).toContain(`\`${starterBytes}\``);
});
