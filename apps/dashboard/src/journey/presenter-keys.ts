/** What a key of a wireless presenter is for. */
export type PresenterAct =
  /** one step on: a raise counted by hand, else the main button of the page */
  | 'forward'
  /** one step back: the last raise taken back; nothing else */
  | 'back'
  /** the dark screen: stop */
  | 'stop'
  /** begin and end of a show: nothing here, and nothing of the browser while a set runs */
  | 'show';

/** What presenters send, and what it means here. Enter stays with what has the focus. */
const acts: Readonly<Record<string, PresenterAct>> = {
  PageDown: 'forward',
  ArrowRight: 'forward',
  PageUp: 'back',
  ArrowLeft: 'back',
  b: 'stop',
  B: 'stop',
  '.': 'stop',
  F5: 'show',
  Escape: 'show',
};

/** A key as it was pressed. */
export interface PressedKey {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

/** What a key is for; undefined where it is none of a presenter, or one of several that are held. */
export function presenterAct({ key, ctrlKey, altKey, metaKey }: PressedKey): PresenterAct | undefined {
  if (ctrlKey || altKey || metaKey) return undefined;
  return Object.hasOwn(acts, key) ? acts[key] : undefined;
}

/** What has the focus, as far as it matters for a key. */
export interface FocusedThing {
  readonly localName: string;
  /** of an input */
  readonly type?: string | undefined;
  readonly role: string | null;
  readonly isContentEditable: boolean;
}

/** Inputs that nothing is typed into. */
const untyped: readonly string[] = [
  'radio',
  'checkbox',
  'button',
  'submit',
  'reset',
  'file',
  'range',
  'color',
  'image',
];
/** Roles and inputs that the arrow keys move within. */
const moved: readonly string[] = ['radio', 'slider', 'spinbutton', 'tab', 'option', 'menuitem', 'range'];

/** Whether a key belongs to what has the focus: text that is typed, or arrows among choices. */
export function belongsToFocus(thing: FocusedThing | null, key: string): boolean {
  if (thing === null) return false;
  const { localName, type = 'text', role, isContentEditable } = thing;
  const isInput = localName === 'input';
  if (isContentEditable || localName === 'textarea' || localName === 'select') return true;
  if (role === 'textbox' || role === 'searchbox' || role === 'combobox') return true;
  if (isInput && !untyped.includes(type)) return true;
  if (!key.startsWith('Arrow')) return false;
  return moved.includes(role ?? '') || (isInput && moved.includes(type));
}
