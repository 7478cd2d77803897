import { memoryVault } from '@surae/storage';
import { backupLaws } from '../support/backup-laws.ts';
import { cheapCost, passphrase } from '../support/cheap-vault.ts';
import { storeLaws } from '../support/store-laws.ts';
import { whoseLaws } from '../support/whose-laws.ts';

const open = async () => (await memoryVault({ cost: cheapCost }).create(passphrase)).store;
storeLaws(open);
whoseLaws(open);
backupLaws(open, passphrase);
