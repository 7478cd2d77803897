import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inProject, trackedFiles } from '../support/project.ts';

/** Words in a row by which an item is known. */
const RUN = 7;

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[a-z]+/g) ?? [];
}

function hashOf(words: string): string {
  return createHash('sha256').update(words).digest('hex').slice(0, 16);
}

/** Runs of a text whose hash is among those that are looked for; a run is put together only where its length is one of theirs. */
function found(text: string, sought: ReadonlyMap<number, ReadonlySet<string>>): readonly string[] {
  const words = wordsOf(text);
  const runs: string[] = [];
  // with a space after each word but the last
  let length = -1;
  words.forEach((word, at) => {
    length += word.length + 1;
    if (at >= RUN) length -= words[at - RUN].length + 1;
    const hashes = at >= RUN - 1 ? sought.get(length) : undefined;
    if (hashes === undefined) return;
    const run = words.slice(at - RUN + 1, at + 1).join(' ');
    if (hashes.has(hashOf(run))) runs.push(run);
  });
  return runs;
}

function soughtFrom(runs: readonly (readonly [length: number, hash: string])[]): Map<number, Set<string>> {
  const sought = new Map<number, Set<string>>();
  for (const [length, hash] of runs) sought.set(length, (sought.get(length) ?? new Set()).add(hash));
  return sought;
}

/**
 * Runs of seven words of the items of questionnaires whose totals are written down, as lengths and hashes, so that this file holds
 * none of their words. Made from memory of their English forms; a wording that is put otherwise is not found.
 */
const ITEMS: readonly (readonly [length: number, hash: string])[] = [
  [32, 'e195348b26b1cac8'],
  [38, '1b84be123424cdc1'],
  [37, '4de5d99fa5e39900'],
  [36, '2dc1837d5f547b90'],
  [37, 'bdf04a3e62d149b7'],
  [41, '81b7733133adcb8d'],
  [40, '31da54bd0cf80238'],
  [41, '2b2876b3ad4a8de6'],
  [39, '60e2382e376c75b3'],
  [39, 'a3ec5c17870a9937'],
  [30, 'ab39f29e5bbb8306'],
  [29, '6c9b0cadf2a6b481'],
  [28, '6547fb2ae79a6a03'],
  [28, '05d0f7479a1a6ab7'],
  [26, '15192b2a275b4e1e'],
  [28, 'e38f913c9f36a743'],
  [29, 'b62e8ab3d2f33a5d'],
  [36, 'aed84244a6e40b67'],
  [36, '65ebc8a1bbc6393e'],
  [42, '1f4bea8be0c1997d'],
  [45, 'fe0a1095629e72ad'],
  [46, '6fc0b397022a2948'],
  [46, '0908f02c9d20a8e0'],
  [45, 'b15d4f54323b8c44'],
  [39, 'c81b74b37bf310c1'],
  [38, '095a8f3f98fcf91c'],
  [31, '62b3400a437c70ae'],
  [29, 'be3253cec7fb3c3a'],
  [40, '00dc32f58c5132bf'],
  [37, 'd1336fe5aedac9cf'],
  [33, 'eb6f141c9ba0a267'],
  [35, '84038fbf54f1ffeb'],
  [35, '4f156b3cbad7e3a3'],
  [35, '1201e83c2d2513a5'],
  [35, 'cd963ec9bd07b351'],
  [32, 'e87de7faa7183d0a'],
  [35, '53099c7c4326b1dc'],
  [40, '64c923b075dc0414'],
  [39, '1c41b9a6190a6632'],
  [42, '1f6eccf4479bbe28'],
  [42, '5e97631c05a7842c'],
  [43, 'aa3e248ab9c3c1db'],
  [38, 'c93e6610c30d977d'],
  [41, '3c0fbb1b0dd16d70'],
  [43, 'fb3e6466b3701c5d'],
  [45, 'fa84d66597109752'],
  [44, '23c8931d156a993a'],
  [42, 'c59eae5d8b0f6075'],
  [46, '0bae5e4a36b05851'],
  [39, '0317f29e5d2ee610'],
  [35, '9da3319ffd219ee1'],
  [34, '1aa7fa180222be7f'],
  [35, '0cb93054368c5714'],
  [32, '05b6c1a54f6203fb'],
  [31, '4f81b7fb56ff1a28'],
  [34, 'e7b76d565d5a0f11'],
  [32, '18bbf5b165cc4811'],
  [44, 'cbaf6f8d193df997'],
  [49, '0c62c8a806c3a50f'],
  [54, 'b4cc7037495e386d'],
  [37, '5d5f09c0f57e7523'],
  [43, '5835f3ab48a25a19'],
  [46, 'e3b40eb607194686'],
  [49, '74d6d9980a85c044'],
  [53, 'eb988af526616898'],
  [52, '1ee3488b493c3e6d'],
  [50, '64f61d4e367de53e'],
  [43, 'bc3d15b1d6b22eee'],
  [38, 'e460aac064a1b2ab'],
  [35, '07f49d3387d7cd9a'],
  [33, '983ca08367eb9497'],
  [34, '6d7d6e3e88f5a6e9'],
  [31, 'dcf5243cdcb167e5'],
  [39, '6073f5ab7e9a164e'],
  [37, 'ea3ccd772b26a212'],
  [36, '6285644c98f41cb0'],
  [37, '6030f3b711e33226'],
  [36, '945b2c1dc0b7af62'],
  [40, '467ec7fdab25b9a9'],
  [41, '459f56d697d8f6fa'],
  [44, 'b1113921f7ef94d8'],
  [37, '1b2538142b7f34cc'],
  [45, '07236385f3307678'],
  [40, '7c0d50f97aae41d5'],
  [36, '15f34fb04c5eca5e'],
  [37, '8fe436f5a43e449a'],
  [37, '0ffbf46606b59954'],
  [41, '12193108271ae3a1'],
  [44, '92a0f769bb91426a'],
  [39, '95ca79c7bcb93247'],
  [44, 'c404fbbd8df028b4'],
  [43, '0bba61a9a4da38f0'],
  [43, 'a872d53d870c5c67'],
  [45, 'ae76794e2b07a5ff'],
  [39, 'b3d3d15ef9e4a15b'],
  [40, '9e8e08bc1d25a1fe'],
  [46, '8262b4271c535b74'],
  [44, '27f0b1739547febb'],
  [42, '024f3a041d110309'],
  [44, '3e730b3dc168bfc2'],
  [45, '4798f4a4cfd92154'],
  [45, '95d67e3166697113'],
  [51, '351d7312670d410a'],
  [49, '1b468e1a49007813'],
  [48, '4f2846b96b262f87'],
  [48, '67fdc1101a7f3aa0'],
  [45, '00a7330149af9169'],
];

test('what is looked for is found wherever it stands, whatever is between its words', () => {
  const invented = 'seven grey herons counted all the boats';
  const sought = soughtFrom([[invented.length, hashOf(invented)]]);
  expect(found('On Monday Seven grey\n * herons, counted all the BOATS again.', sought)).toEqual([invented]);
  expect(found('Seven grey herons counted no boats.', sought)).toEqual([]);
});

test('no file holds the words of an item of a questionnaire', () => {
  expect(ITEMS.length).toBeGreaterThan(40);
  const sought = soughtFrom(ITEMS);
  const files = trackedFiles().filter((path) => /\.(?:ts|md|json|html|css|txt|mjs)$/.test(path));
  expect(files.length).toBeGreaterThan(500);
  const offenders = files.filter((path) => found(readFileSync(inProject(path), 'utf8'), sought).length > 0);
  expect(offenders).toEqual([]);
});
