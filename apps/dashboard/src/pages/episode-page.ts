import { consume } from '@lit/context';
import { type CaseloadEntry, dayNumber, type Episode, type EpisodeCourse } from '@surae/casebook';
import { EPISODE_LINE_WORDS, EPISODE_WORDS, FRAME_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { bookContext, clockContext, doorContext, type HostClock, storeContext } from '../contexts/capabilities.ts';
import { focusHeading } from '../heading-focus.ts';
import { type BodyFields, bodyFields, bodyFrom } from '../journey/body-form.ts';
import { EpisodeDesk } from '../journey/episode-desk.ts';
import {
  type EpisodeFields,
  type EpisodeProblem,
  episodeChange,
  episodeFields,
  episodeFrom,
  noFields,
  overFrom,
} from '../journey/episode-form.ts';
import { episodeWords } from '../journey/episode-words.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import type { BodyFieldsElement, BodyTyped } from '../parts/body-fields.ts';
import '../parts/body-fields.ts';
import type { EpisodeFieldsElement, EpisodeTyped } from '../parts/episode-fields.ts';
import '../parts/episode-fields.ts';
import { fieldStyle } from '../parts/field-style.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { fill } from '../words/fill.ts';

/** What is being written: nothing, a new episode, or a correction of one. */
type Writing = 'nothing' | 'new' | EpisodeCourse;

/** What somebody complains of, stretch by stretch, with the body that is measured beside it. */
@customElement('episode-page')
export class EpisodePage extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      form {
        display: grid;
        gap: var(--gap-6);
        max-inline-size: 44rem;
      }
      form,
      episode-fields + .body {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-6);
        padding-block-start: var(--gap-6);
      }
      .body {
        display: grid;
        gap: var(--gap-3);
      }
      .body > p {
        margin: 0;
      }
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      .past > li {
        border-block-start: 1px solid var(--hairline);
        display: grid;
        gap: var(--gap-3);
        padding-block: var(--gap-4);
      }
      .past p,
      h2 {
        margin: 0;
      }
      .past p {
        font-size: var(--size-2);
      }
      .end p {
        font-size: var(--size-1);
        margin-block: var(--gap-1) var(--gap-3);
      }
    `,
  ];

  @property({ attribute: false }) personId = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private entry: CaseloadEntry | null | undefined;
  @state() private courses: readonly EpisodeCourse[] = [];
  @state() private writing: Writing = 'nothing';
  @state() private fields: EpisodeFields = noFields;
  @state() private body: BodyFields = { mass: '', lever: '', massToday: false, isKilograms: false };
  /** id of the episode that is being ended, and what was typed of when */
  @state() private ending: { readonly id: string; readonly over: string } | undefined;
  /** problems are told when the form was sent, not while somebody still types */
  @state() private sent = false;
  @state() private news: 'kept' | 'undone' | 'not-kept' | undefined;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('personId')) void this.open();
  }

  private async open(): Promise<void> {
    await this.load();
    if (this.courses.length === 0) this.write('new');
    void this.door.open?.audit.personOpened(this.personId);
    await this.updateComplete;
    void focusHeading(this);
  }

  private get desk(): EpisodeDesk {
    return new EpisodeDesk(this.store, this.book.hand);
  }

  private async load(): Promise<void> {
    const [people, courses] = await Promise.all([this.book.caseload(), this.desk.ofPerson(this.personId)]);
    this.entry = people.find(({ person }) => person.id === this.personId) ?? null;
    this.courses = courses;
    if (this.entry !== null) this.body = bodyFields(this.entry.person);
  }

  private write(what: Writing): void {
    this.writing = what;
    this.fields = typeof what === 'object' ? episodeFields(what.episode) : noFields;
    this.ending = undefined;
    this.sent = false;
  }

  override render(): TemplateResult {
    if (this.entry === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    const home = html`<a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    if (this.entry === null)
      return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>
        <p>${FRAME_WORDS.lost.text}</p>
        ${home}`;
    const isWriting = this.writing !== 'nothing';
    return html`
      <p class="quiet who">${this.entry.person.name}</p>
      <h1>${(typeof this.writing === 'object' ? EPISODE_WORDS['correct-title'] : EPISODE_LINE_WORDS.title).text}</h1>
      <p class="quiet">${EPISODE_WORDS.explain.text}</p>
      <p class="voice" role="status">${this.news === undefined ? '' : EPISODE_WORDS[this.news].text}</p>
      ${isWriting ? nothing : this.past()}
      <form novalidate @submit=${this.send}>
        ${
          isWriting
            ? html`<episode-fields
                .fields=${this.fields}
                .problems=${this.problems()}
                now=${this.clock.isoNow()}
                @episode-typed=${({ detail }: EpisodeTyped) => (this.fields = detail)}
              ></episode-fields>`
            : nothing
        }
        ${this.measures(this.entry)}
        <button class="main" type="submit">
          ${EPISODE_WORDS[typeof this.writing === 'object' ? 'keep-change' : isWriting ? 'keep' : 'keep-body'].text}
        </button>
        ${
          isWriting && this.courses.length > 0
            ? html`<button class="plain" type="button" @click=${() => this.write('nothing')}>
                ${EPISODE_WORDS.cancel.text}
              </button>`
            : nothing
        }
        ${isWriting ? nothing : home}
      </form>
    `;
  }

  private measures({ person, facts }: CaseloadEntry): TemplateResult {
    const form = bodyFrom(person, this.body);
    const [today, day] = [dayNumber(this.clock.isoNow()), dayNumber(facts.massAt ?? '')];
    return html`<section class="body" aria-labelledby="body">
      <h2 id="body">${EPISODE_WORDS.body.text}</h2>
      <p class="quiet">${EPISODE_WORDS['body-explain'].text}</p>
      <body-fields
        .person=${person}
        .fields=${this.body}
        .problems=${this.sent && !form.ok ? form.problems : {}}
        .massDays=${today === null || day === null ? null : today - day}
        @body-typed=${({ detail }: BodyTyped) => (this.body = detail)}
      ></body-fields>
    </section>`;
  }

  private past(): TemplateResult {
    return html`<ul class="past">
        ${this.courses.map((course) => this.episode(course))}
      </ul>
      <button type="button" @click=${() => this.write('new')}>${EPISODE_WORDS.another.text}</button>`;
  }

  private episode(course: EpisodeCourse): TemplateResult {
    const { id, at, episode } = course;
    const what = episodeWords({ ...episode, at });
    const button = (code: 'correct' | 'end' | 'undo', press: () => unknown): TemplateResult =>
      html`<button type="button" aria-label=${fill(EPISODE_WORDS[`${code}-of`], { what })} @click=${press}>
        ${EPISODE_WORDS[code].text}
      </button>`;
    return html`<li>
      <p>${what}</p>
      ${[episode.loads, episode.story, episode.goal].map((note) => (note === null ? nothing : html`<div>${note}</div>`))}
      <div class="choices">
        ${button('correct', () => this.write(course))}
        ${episode.over === null ? button('end', () => (this.ending = { id, over: '' })) : nothing}
        ${button('undo', () => this.keep(() => this.desk.undo(course), 'undone'))}
      </div>
      ${this.ending?.id === id ? this.end(course, this.ending.over) : nothing}
    </li>`;
  }

  private end({ id, episode }: EpisodeCourse, typed: string): TemplateResult {
    const found = overFrom(typed, episode.began, this.clock.isoNow());
    const problem: EpisodeProblem | undefined = 'problem' in found ? found.problem : undefined;
    return html`<div class="end">
      <label for="over">${EPISODE_WORDS['end-field'].text}</label>
      <input
        id="over"
        autocomplete="off"
        inputmode="text"
        aria-describedby="over-help"
        .value=${typed}
        @input=${(event: InputEvent) => (this.ending = { id, over: (event.target as HTMLInputElement).value })}
      />
      <p id="over-help" class=${problem === undefined ? 'quiet' : 'voice'} aria-live="polite">
        ${EPISODE_WORDS[problem ?? 'end-help'].text}
      </p>
      <button
        type="button"
        ?disabled=${problem !== undefined}
        @click=${() => 'over' in found && this.keep(() => this.desk.amend(id, { over: found.over }), 'kept')}
      >
        ${EPISODE_WORDS['end-keep'].text}
      </button>
    </div>`;
  }

  private problems(): Partial<Record<string, EpisodeProblem>> {
    const form = this.form();
    return this.sent && !form.ok ? form.problems : {};
  }

  private form(): ReturnType<typeof episodeFrom> {
    const before = typeof this.writing === 'object' ? this.writing.episode : undefined;
    return episodeFrom(this.fields, this.clock.isoNow(), before);
  }

  private readonly send = async (event: SubmitEvent): Promise<void> => {
    event.preventDefault();
    if (this.entry == null) return;
    this.sent = true;
    const [form, body] = [this.writing === 'nothing' ? undefined : this.form(), bodyFrom(this.entry.person, this.body)];
    if (form?.ok === false || !body.ok) {
      await this.updateComplete;
      if (form?.ok === false)
        await this.renderRoot.querySelector<EpisodeFieldsElement>('episode-fields')?.focusProblem();
      else this.renderRoot.querySelector<BodyFieldsElement>('body-fields')?.focusProblem();
      return;
    }
    await this.keep(async () => {
      if (body.change !== undefined) await this.book.amendPerson(this.personId, body.change, null);
      if (form !== undefined) await this.keepEpisode(form.episode);
    }, 'kept');
  };

  private async keepEpisode(episode: Episode): Promise<void> {
    if (typeof this.writing !== 'object') return this.desk.add(this.personId, episode);
    const change = episodeChange(this.writing.episode, episode);
    if (change !== undefined) await this.desk.amend(this.writing.id, change);
  }

  private async keep(work: () => Promise<void>, news: 'kept' | 'undone'): Promise<void> {
    try {
      await work();
    } catch {
      // what was typed stays, so that it can be tried again
      this.news = 'not-kept';
      return;
    }
    void this.door.open?.audit.write('changed', this.personId);
    this.news = news;
    await this.load();
    this.write(this.courses.length === 0 ? 'new' : 'nothing');
    await this.updateComplete;
    scrollTo(0, 0);
    void focusHeading(this);
  }
}
