import { sentences } from '../sentence.ts';

/** Words of the page before a clinic is open. */
export const DOOR_WORDS = sentences('screen.door', {
  title: 'Which clinic?',
  own: 'A clinic of your own',
  'own-locked':
    'Its record is encrypted on this device. It opens with the passphrase or with the printed recovery code.',
  'own-none':
    'Its record is encrypted on this device: nobody reads it without the passphrase, and nobody can bring it back without the passphrase or the printed recovery code.',
  'own-gone':
    'The clinic of your own that was last opened here on {date} is gone: this browser has nothing of it any more. Browsers lose a record when somebody deletes their data, or when a power cut has damaged their store.',
  'own-gone-next':
    'Look for your newest backup before you go on. Create a clinic, and restore the backup into it: “Clinic: lock and backup” leads there.',
  secret: 'Passphrase or recovery code',
  show: 'Show what is typed',
  open: 'Open the clinic',
  opening: 'Opening takes a moment: that makes guessing slow …',
  create: 'Create a clinic of your own',
  demo: 'The demo clinic',
  'demo-explain':
    'Open to everybody who uses this device, and not encrypted. Its people are invented: write nothing about real people into it.',
  'open-demo': 'Open the demo clinic',
  'who-title': 'Who works here?',
  author: 'Your initials or a code',
  'author-help':
    'Stands beside everything that is written on this device. Letters and digits, at most twelve; no full name.',
  'author-wrong': 'Letters and digits, at most twelve, such as RN or A17.',
  passphrase: 'Passphrase',
  'passphrase-help': 'Several words that only you put together. At least {least} signs.',
  again: 'The same once more',
  'too-short': 'Too short: at least {least} signs. Several words are easier to keep than one that is hard.',
  'not-alike': 'The two are not alike.',
  'no-way-back':
    'Nobody else has this passphrase. Whoever has neither it nor the recovery code has lost the record; nobody can bring it back.',
  'make-it': 'Create it and show the recovery code',
  'code-title': 'Your recovery code',
  'code-explain':
    'It opens the clinic when the passphrase is forgotten. It is shown this once and kept nowhere: print it or write it down, and lock the paper away.',
  'code-for': 'Recovery code of a Surae clinic, made on {date}.',
  'code-group': 'Group {number}',
  print: 'Print it',
  'ask-back': 'Type two groups of it from the paper, so that it is certain that the paper is there.',
  'ask-group': 'Group {number} of {of}',
  'group-wrong': 'This is not what stands in group {number}.',
  'go-on': 'The code is on paper: go on',
  back: 'Back',
});

/** Words of the page of a clinic: its lock, its backups, its trail. */
export const CLINIC_WORDS = sentences('screen.clinic', {
  'name-demo': 'Demo clinic',
  'name-own': 'Own clinic',
  'demo-explain':
    'This is the demo clinic: open to everybody who uses this device, not encrypted, its people invented.',
  'own-explain': 'This is a clinic of your own. Its record is encrypted on this device; you work in it as {author}.',
  leave: 'Choose another clinic',
  'who-title': 'Who works here',
  'who-explain':
    'What is written here carries the code {author}. Another code holds from then on; what was written before keeps its own.',
  'who-next': 'Initials or code of who works here now',
  'who-change': 'Work under this code',
  'lock-title': 'Lock',
  'lock-now': 'Lock now',
  'lock-after': 'Lock by itself after this long without a touch',
  'lock-minutes': '{minutes} minutes',
  'lock-never': 'never',
  'lock-running': 'Never while a set runs: then as soon as it is over.',
  'keys-title': 'Passphrase and recovery code',
  present: 'Present passphrase, or the recovery code',
  next: 'New passphrase',
  change: 'Change the passphrase',
  changed: 'The passphrase is changed. Nothing that is kept had to be written anew.',
  'new-code': 'Make a new recovery code',
  'new-code-explain': 'The earlier code opens nothing any more: destroy its paper.',
  'new-code-done': 'The new recovery code counts from now on.',
  'kept-title': 'On this device',
  'kept-not-promised':
    'The browser has not promised to keep what is stored here: it may clear it when the disk is full or the page was not used for long. Save backups.',
  'kept-ask': 'Ask the browser to keep it',
  'kept-refused': 'The browser did not promise it. Save backups, and never clear the data of this page.',
  'kept-promised': 'The browser has promised to keep what is stored here until somebody clears it by hand.',
  'kept-not-told': 'This browser does not tell whether it keeps what is stored here. Save backups.',
  'backup-title': 'Backup',
  'backup-never': 'There is no backup yet. What is only on this device is lost with it.',
  'backup-last': 'Last backup: {date}, read back and found whole. Entries: {documents}. Recordings: {streams}.',
  'backup-remind': 'Remind me when the last backup is older than',
  days: '{days} days',
  day: '1 day',
  'backup-due-never': 'There is no backup of this clinic yet.',
  'backup-due': 'The last backup is {days} days old.',
  'backup-due-one': 'The last backup is 1 day old.',
  'backup-go': 'Save a backup',
  'backup-explain':
    'One file with everything. It is read back before it is handed over. A backup is not encrypted with your passphrase: keep it where records may be kept.',
  'backup-explain-sealed':
    'One file with everything, encrypted like the clinic. It is read back before it is handed over. It opens with the passphrase or the recovery code of today.',
  'backup-save': 'Save a backup',
  'backup-working': 'Writing the backup and reading it back …',
  'backup-done':
    'The backup was read back. Entries: {documents}. Recordings: {streams}. Size: {size}. It lies where your browser saves files.',
  'restore-title': 'Restore from a backup',
  'restore-explain':
    'What is here already stays; what the backup holds beyond it is added. Nothing is written before you have seen what is in the file.',
  'restore-file': 'Backup file',
  'restore-reading': 'Reading the file …',
  'restore-secret': 'Passphrase or recovery code of the backup',
  'restore-look': 'Look into the file',
  'restore-holds': 'The file {file} was read to its end. Entries: {documents}. Recordings: {streams}. Size: {size}.',
  'restore-damaged':
    'This file is damaged. Damaged places: {places}. Missing entries: {documents}. Missing recordings: {streams}. What is whole can be added all the same; an older backup may hold the rest.',
  'restore-newer':
    'This backup was written by a newer version of this page. Nothing was restored. Load the page anew while the device is online, and try again.',
  'restore-write': 'Add it to this clinic',
  'restore-write-whole': 'Add what is whole to this clinic',
  'restore-working': 'Adding …',
  'restore-receipt':
    'Entries and recordings added: {added}. Already here: {known}. Left out, since their person was erased here: {erased}. Refused, since they do not match what is here or their own checksum: {refused}.',
  'trail-title': 'Who did what',
  'trail-link': 'Audit trail of this clinic',
  'problems-look': 'Look through the record for what cannot be read',
  'problems-looking': 'Reading everything …',
  'problems-none': 'All {count} entries of this clinic can be read.',
  'problems-some':
    'Entries and recordings that cannot be read as they should be: {count}. They are kept as they are and hide nothing else.',
  'problem-line': '{kind} {id}: {why}',
  'problem-recording': 'recording',
  'problem-entry': 'entry',
});

/** Words that stand above every page when something about the clinic has to be said. */
export const BANNER_WORDS = sentences('screen.banner', {
  'reads-only':
    'Another window writes into this clinic. This one only reads, until the other is closed; what is opened here does not stand in the audit trail.',
  'audit-missing': 'Something could not be written into the audit trail of this clinic. Note it by hand.',
});

/** Words of the page on which a person is erased. */
export const ERASE_WORDS = sentences('screen.erase', {
  duty: 'Records of patients must be kept for as long as the law of your place says, often for years. Ask whoever answers for your records before you erase any. This page cannot know your duty.',
  what: 'Everything that is kept of {name} is destroyed on this device, and the key to it: the person, {visits} visits, every recording and result. It cannot be brought back, and a backup does not bring it back into this clinic.',
  left: 'Backups and files that were saved before still hold it: destroy those as well. What stays here is that somebody was erased, when, by whom and how much, without a name.',
  confirm: 'Type the name to confirm: {name}',
  differs: 'This is not the name: it must be typed exactly as above.',
  'duty-read': 'I have read what is said about the duty to keep records.',
  erase: 'Erase, and never bring back',
  working: 'Erasing …',
  receipt: 'Erased on {date}. Entries: {documents}. Recordings: {streams}, together {size}.',
  save: 'Save this receipt',
  nobody: 'Nobody of this id is in the book.',
  failed: 'Nothing was erased. {why}',
});

/** Words of the audit trail. */
export const AUDIT_WORDS = sentences('screen.audit', {
  explain:
    'What was opened, changed, exported and removed in this clinic on this device, the newest first. Every other entry of the book carries its author and time as well.',
  demo: 'The demo clinic keeps no trail: it is open to everybody.',
  none: 'Nothing stands here yet.',
  when: 'When',
  who: 'Who',
  what: 'What',
  shown: 'The newest {shown} of {of}.',
  gone: 'somebody who is no longer in the book ({id})',
  'clinic-opened': 'Opened the clinic',
  'clinic-locked': 'Locked the clinic',
  'person-opened': 'Opened a person',
  changed: 'Changed what is known',
  exported: 'Exported',
  'backed-up': 'Saved a backup',
  restored: 'Restored from a backup',
  removed: 'Erased a person',
  'passphrase-changed': 'Changed the passphrase',
  'recovery-code-made': 'Made a new recovery code',
});

/** Why something of the record is not read, by code. */
export const RECORD_PROBLEMS = sentences('record-problem', {
  'unknown-kind': 'of a kind that this version does not know; a newer one wrote it',
  'newer-schema': 'in a form that a newer version wrote',
  'no-version': 'without a version that could be read',
  'does-not-fit': 'not in the form of its kind',
  'step-failed': 'could not be brought to the form of today',
  'about-nothing': 'about something that is not there',
  'not-amendable': 'changes what cannot be changed',
  'no-fit-after': 'would leave something in no form of its kind',
  altered: 'no longer matches its checksum',
  'piece-missing': 'a piece of it is missing',
  'key-missing': 'the key to it is not there',
  'half-written': 'was being written when the program ended, and had not been confirmed',
});
