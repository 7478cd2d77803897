import { canonicalJson } from '@surae/analysis';
import { PROTOCOLS } from '@surae/shared';
import type { GivenRecipe, GivenSettings, WorkItem } from '@surae/study';
import { sha256 } from './fingerprints.ts';
import { recipeIn } from './recipe-file.ts';
import { REVISION } from './revision.ts';
import type { RunPlan, Want } from './run-plan.ts';
import { readSettings, usualSettings } from './settings-file.ts';
import { softwareName } from './software.ts';
import { variedProtocols } from './varied-protocols.ts';
import type { Vary } from './vary.ts';

/** A plan with its files read. */
export interface ReadyPlan {
  readonly settings: GivenSettings;
  readonly recipe: GivenRecipe | undefined;
  readonly vary: Vary | undefined;
  readonly want: Want;
  readonly carried: readonly string[];
}

/** The plan with its files read. @throws {@link UsageError} where one of them cannot be followed */
export function readyPlan({ settings, recipe, vary, want, carried }: RunPlan): ReadyPlan {
  const given = settings === undefined ? usualSettings() : readSettings(settings.path, settings.bytes);
  variedProtocols(given.adjust(PROTOCOLS[0]!), vary);
  return {
    settings: given,
    recipe: recipe === undefined ? undefined : { ...recipe, recipe: recipeIn(recipe.path, recipe.bytes) },
    vary,
    want,
    carried,
  };
}

type Plain = Parameters<typeof canonicalJson>[0];

/** The value as plain JSON: what is undefined is left out. */
function plain(value: object): Plain {
  return JSON.parse(JSON.stringify(value)) as Plain;
}

/**
 * Tells a recording apart by all that its result hangs on but its bytes: the software and its revision, the settings, the recipe,
 * what is made of it, and what was said about it.
 */
export function toldHashes(plan: RunPlan, revision = REVISION): (item: WorkItem) => string {
  const { settings, recipe, vary, want, carried } = plan;
  const ofRun = sha256(
    canonicalJson(
      plain({
        software: softwareName(),
        revision,
        settings: settings === undefined ? null : sha256(settings.bytes),
        recipe: recipe === undefined ? null : { ...recipe, path: null, bytes: sha256(recipe.bytes) },
        vary: vary ?? null,
        want,
        carried,
      }),
    ),
  );
  return ({ file, about, carried: cells, recipe: own, refusal }) => {
    const by =
      own === undefined ? {} : { recipe: { ...own, path: null, bytes: own.bytes === null ? null : sha256(own.bytes) } };
    return sha256(
      canonicalJson(plain({ ofRun, file, about, cells: Object.entries(cells), ...by, refusal: refusal ?? null })),
    );
  };
}
