import type { PassphraseCost } from '@surae/storage';

/** As little as Argon2id allows: a test is in a hurry, and guards nothing. */
export const cheapCost: PassphraseCost = { memoryKiB: 8, passes: 1, lanes: 1 };

export const passphrase = 'seven lamps in the old mill';
