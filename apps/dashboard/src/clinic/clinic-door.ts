import type { RecordStore, Vault } from '@surae/storage';
import { type BodiesRead, VisitBook, type WallClock } from '../journey/visit-book.ts';
import { AuditTrail } from './audit-trail.ts';
import { type DeviceMemory, keepAuthor, keptAuthor } from './author-code.ts';
import { noteOwnOpened, ownOpened } from './own-opened.ts';

/** A clinic that is open: everything in it belongs together, and is let go of together. */
export interface OpenClinic {
  /** the demo clinic lies open to everybody; one's own is encrypted */
  readonly which: 'demo' | 'own';
  readonly store: RecordStore;
  readonly book: VisitBook;
  readonly audit: AuditTrail;
}

/** What is asked of an encrypted store. */
export type VaultAsked = Pick<Vault, 'state' | 'create' | 'open' | 'lock' | 'changePassphrase' | 'newRecoveryCode'>;

export interface DoorParts {
  readonly clock: WallClock;
  readonly memory: DeviceMemory;
  /** the plain store of the demo clinic */
  readonly demoStore: () => Promise<RecordStore>;
  readonly vault: () => Promise<VaultAsked>;
  /** how the book reads what is kept */
  readonly read?: BodiesRead;
}

/** Author of what is written in the demo clinic. */
const demoAuthor = 'this-device';

/** Opens and locks the clinics of this device. Tells `clinic-changed`. */
export class ClinicDoor extends EventTarget {
  private readonly parts: DoorParts;
  private present: OpenClinic | null = null;
  private vaultAsked: Promise<VaultAsked> | undefined;

  constructor(parts: DoorParts) {
    super();
    this.parts = parts;
  }

  /** The clinic that is open; null before one is chosen, and while it is locked. */
  get open(): OpenClinic | null {
    return this.present;
  }

  /** Code of who works at this device; null until it was told. */
  get author(): string | null {
    return keptAuthor(this.parts.memory);
  }

  keepAuthor(code: string): void {
    keepAuthor(this.parts.memory, code);
  }

  /** When the clinic of one's own was last opened on this device; null where it never was. */
  get lastOpened(): string | null {
    return ownOpened(this.parts.memory);
  }

  /** Whether there is a clinic of one's own on this device. */
  async hasOwn(): Promise<boolean> {
    return (await (await this.vault()).state()) !== 'empty';
  }

  async openDemo(): Promise<void> {
    const store = await this.parts.demoStore();
    this.become('demo', store, demoAuthor);
  }

  /** Makes a clinic of one's own; the code is given this once. It is entered by {@link enter}, when the code is on paper. */
  async create(passphrase: string): Promise<string> {
    const { recoveryCode } = await (await this.vault()).create(passphrase);
    return recoveryCode;
  }

  /** Opens the clinic of one's own by passphrase or recovery code. */
  async enter(secret: string): Promise<void> {
    const store = await (await this.vault()).open(secret);
    this.become('own', store, this.author ?? demoAuthor);
    noteOwnOpened(this.parts.memory, this.parts.clock.isoNow());
    await this.present?.audit.write('clinic-opened');
  }

  /** Forgets the keys and shows nothing more; a recording that runs is written to its end. */
  async lock(): Promise<void> {
    const before = this.present;
    if (before?.which === 'own') {
      await before.audit.write('clinic-locked');
      (await this.vault()).lock();
    }
    this.present = null;
    this.dispatchEvent(new Event('clinic-changed'));
  }

  /**
   * Somebody else writes here from now on. It is a document of its own; what was written before keeps its code, and where it cannot
   * be kept nothing changes.
   */
  async changeAuthor(code: string): Promise<void> {
    const before = this.author ?? demoAuthor;
    const { present } = this;
    if (present?.which !== 'own' || code === before) return;
    const body = { before, after: code };
    const at = this.parts.clock.isoNow();
    await present.store.add({ kind: 'author-changed', schema: 1, about: null, author: code, at, body });
    this.keepAuthor(code);
    this.become('own', present.store, code);
  }

  async changePassphrase(present: string, next: string): Promise<void> {
    await (await this.vault()).changePassphrase(present, next);
    await this.present?.audit.write('passphrase-changed');
  }

  async newRecoveryCode(present: string): Promise<string> {
    const code = await (await this.vault()).newRecoveryCode(present);
    await this.present?.audit.write('recovery-code-made');
    return code;
  }

  private vault(): Promise<VaultAsked> {
    this.vaultAsked ??= this.parts.vault().catch((error: unknown) => {
      // it may be there at the next try, as when another window was closed
      this.vaultAsked = undefined;
      throw error;
    });
    return this.vaultAsked;
  }

  private become(which: OpenClinic['which'], store: RecordStore, author: string): void {
    const { clock, read } = this.parts;
    const book = new VisitBook(store, clock, author, read);
    const audit = new AuditTrail(store, clock, which === 'own' ? author : null);
    this.present = { which, store, book, audit };
    this.dispatchEvent(new Event('clinic-changed'));
  }
}
