import { sentences } from '../sentence.ts';

/** Why something could not be stored, by the code of the error. */
export const STORE_ERRORS = sentences('store-error', {
  full: 'There is no more room on this device: free some.',
  unavailable: 'The browser gives no store here, as in some private windows.',
  'newer-version': 'What is stored here was written by a newer version of this page: load it anew after the test.',
  blocked: 'Another window has an older version of this page open: close that window.',
  'already-closed': 'This recording was closed before.',
  altered: 'Something that is stored no longer matches its checksum, and is left as it is.',
  'wrong-passphrase': 'This does not open the clinic. Look at capitals and blanks, or use the recovery code.',
  'mistyped-code': 'A sign of this recovery code is wrong, missing or in another place: compare it with the paper.',
  'short-passphrase': 'This passphrase is too short: take several words.',
  locked: 'The clinic is locked: open it with the passphrase.',
  'written-elsewhere': 'Another window writes into this clinic. This one reads, and writes once the other is closed.',
  'read-only': 'This clinic was opened for reading only.',
  erased: 'This person was erased: nothing is kept of them.',
  'not-empty': 'There is something in this place already: nothing was written over it.',
  'no-store': 'There is no clinic in this place.',
  'no-backup': 'This file is no backup of a clinic.',
  'damaged-backup': 'This backup is cut off or altered. Nothing was restored.',
  failed: 'It was not written, for a reason that has no name here.',
});
