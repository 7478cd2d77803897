import { consume } from '@lit/context';
import type { DoneItem, Run } from '@surae/casebook';
import { type Diary, diaryOfCode, ExchangeError } from '@surae/exchange';
import {
  FRAME_WORDS,
  HOME_TODAY_WORDS,
  HOME_WORDS,
  MORNINGS_IN_PLACE,
  MORNINGS_IN_WORDS,
  PLAN_LINE_WORDS,
} from '@surae/shared';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, clockContext, type HostClock } from '../contexts/capabilities.ts';
import { type GivenEntry, givenDone, givenRuns } from '../home/taken-diary.ts';
import { checkOf, type GivenMorning, givenMornings } from '../home/taken-mornings.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { fieldBox, fileFieldStyle } from '../parts/field-style.ts';
import { keptAround } from '../plan/plan-so-far.ts';
import { shortNumber } from '../plan/plan-words.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';

/** Mornings that somebody gives back are looked at, asked about, and kept with their person. */
@customElement('mornings-page')
export class MorningsPage extends LitElement {
  static override styles = [
    base,
    fileFieldStyle,
    css`
      .column {
        margin-block: var(--gap-4) var(--gap-6);
      }
      textarea {
        ${fieldBox}
        overflow-wrap: anywhere;
      }
      li label {
        align-items: center;
        display: flex;
        gap: var(--gap-3);
        min-block-size: var(--target);
      }
      ul {
        list-style: none;
        margin: 0 0 var(--gap-4);
        padding: 0;
      }
      input[type='checkbox'] {
        block-size: 1.5rem;
        flex: none;
        inline-size: 1.5rem;
      }
    `,
  ];

  @property({ attribute: false }) personId = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private name: string | undefined | null;
  @state() private given: readonly GivenMorning[] = [];
  @state() private done: readonly GivenEntry<DoneItem>[] = [];
  @state() private runs: readonly GivenEntry<Run>[] = [];
  @state() private chosen: ReadonlySet<string> = new Set();
  @state() private said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('personId')) return;
    void this.book.person(this.personId).then((person) => (this.name = person?.name ?? null));
  }

  override render(): TemplateResult {
    const words = MORNINGS_IN_WORDS;
    if (this.name === null) return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>`;
    return html`
      <h1>${MORNINGS_IN_PLACE.title.text}</h1>
      <p class="quiet">${this.name}</p>
      <div class="column">
        <div>
          <label for="text">${words.text.text}</label>
          <textarea id="text" rows="3"></textarea>
        </div>
        <button type="button" @click=${() => void this.look(this.renderRoot.querySelector('textarea')?.value ?? '')}>
          ${words.look.text}
        </button>
        <div>
          <label for="file">${words.file.text}</label>
          <input id="file" type="file" accept=".txt" @change=${this.read} />
        </div>
      </div>
      <p class="voice" role="status">${this.said}</p>
      ${this.given.length + this.done.length + this.runs.length === 0 ? nothing : this.list()}
      <p><a class="button" href=${hashOf({ page: 'start' })}>${words.back.text}</a></p>
    `;
  }

  private list(): TemplateResult {
    return html`<ul>
        ${this.given.map((one) => this.line(one))} ${this.done.map((one) => this.doneLine(one))}
        ${this.runs.map((one) => this.runLine(one))}
      </ul>
      <button class="main" type="button" ?disabled=${this.chosen.size === 0} @click=${() => void this.keep()}>
        ${MORNINGS_IN_WORDS.keep.text}
      </button>`;
  }

  private line({ morning: { day, left, right, stiffness }, state }: GivenMorning): TemplateResult {
    const words = MORNINGS_IN_WORDS;
    const open = words['not-asked'].text;
    const told = fill(words.line, {
      day: dayOf(day),
      left: left ?? open,
      right: right ?? open,
      stiffness: HOME_WORDS[stiffness].text,
    });
    return this.ticked(day, told, state);
  }

  private doneLine({ key, body, state }: GivenEntry<DoneItem>): TemplateResult {
    const words = MORNINGS_IN_WORDS;
    const { on, what, side, sets, painDuring, painAfter } = body;
    const open = words['not-asked'].text;
    const legs = PLAN_LINE_WORDS[side].text;
    const told = { day: dayOf(on), what, legs, sets: sets ?? open, pain: painDuring ?? open, after: painAfter ?? open };
    return this.ticked(key, fill(words.done, told), state);
  }

  private runLine({ key, body, state }: GivenEntry<Run>): TemplateResult {
    const words = MORNINGS_IN_WORDS;
    const { on, durationS, distanceM, pain } = body;
    const open = words['not-asked'].text;
    const size =
      distanceM === null
        ? fill(HOME_TODAY_WORDS['run-minutes'], { value: shortNumber((durationS ?? 0) / 60) })
        : fill(HOME_TODAY_WORDS['run-way'], { value: shortNumber(distanceM / 1000) });
    const told = { day: dayOf(on), size, left: pain.left ?? open, right: pain.right ?? open };
    return this.ticked(key, fill(words.run, told), state);
  }

  private ticked(key: string, told: string, state: GivenEntry<unknown>['state']): TemplateResult {
    return html`<li>
      <label>
        <input
          type="checkbox"
          .checked=${this.chosen.has(key)}
          ?disabled=${state === 'same' || state === 'no-plan'}
          @change=${() => this.turn(key)}
        />
        <span>
          ${told} <span class=${state === 'new' ? 'quiet' : 'voice'}>(${MORNINGS_IN_WORDS[state].text})</span>
        </span>
      </label>
    </li>`;
  }

  private turn(day: string): void {
    const chosen = new Set(this.chosen);
    if (!chosen.delete(day)) chosen.add(day);
    this.chosen = chosen;
  }

  private readonly read = async (event: Event): Promise<void> => {
    const file = (event.target as HTMLInputElement).files?.[0];
    if (file !== undefined) await this.look(await file.text());
  };

  /** What nothing stands against is ticked; the rest waits for an answer. */
  private async look(text: string): Promise<void> {
    [this.given, this.done, this.runs] = [[], [], []];
    let diary: Diary;
    try {
      diary = diaryOfCode(text);
    } catch (error) {
      const isNewer = error instanceof ExchangeError && error.code === 'newer-version';
      this.said = MORNINGS_IN_WORDS[isNewer ? 'newer' : 'not-read'].text;
      return;
    }
    const [kept, documents] = await Promise.all([
      this.book.notes.mornings(this.personId),
      this.book.log.documents(this.personId),
    ]);
    const { plans, doneItems, runs } = keptAround(documents, this.personId);
    const today = this.clock.isoNow().slice(0, 10);
    this.given = givenMornings(diary.mornings, kept, today);
    this.done = givenDone(diary.done, diary.after, doneItems, plans, today);
    this.runs = givenRuns(diary.runs, runs, today);
    this.chosen = new Set([
      ...this.given.flatMap(({ state, morning }) => (state === 'new' ? [morning.day] : [])),
      ...[...this.done, ...this.runs].flatMap(({ state, key }) => (state === 'new' ? [key] : [])),
    ]);
    this.said = '';
  }

  private async keep(): Promise<void> {
    const { personId, chosen } = this;
    const { notes } = this.book;
    try {
      for (const { morning, replaces } of this.given.filter((one) => chosen.has(one.morning.day))) {
        await notes.keepMorning(personId, checkOf(morning), replaces);
      }
      for (const { body, replaces } of this.done.filter(({ key }) => chosen.has(key))) {
        await notes.keepFromHome(personId, { kind: 'done-item', body }, replaces);
      }
      for (const { body, replaces } of this.runs.filter(({ key }) => chosen.has(key))) {
        await notes.keepFromHome(personId, { kind: 'run', body }, replaces);
      }
    } catch {
      this.said = MORNINGS_IN_WORDS['not-kept'].text;
      return;
    }
    [this.given, this.done, this.runs] = [[], [], []];
    this.said = fill(MORNINGS_IN_WORDS.kept, { count: chosen.size });
  }
}
