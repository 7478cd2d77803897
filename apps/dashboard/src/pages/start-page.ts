import { consume } from '@lit/context';
import type { AmendedField, CaseloadEntry, Person, VisitLine } from '@surae/casebook';
import {
  CLINIC_PLACE,
  COURSE_PLACE,
  EPISODE_LINE_WORDS,
  ERASE_PLACE,
  FRAME_WORDS,
  IMPORT_PLACE,
  OWN_ERROR_PLACE,
  SENSOR_PLACE,
  START_WORDS,
  TODAY_WORDS,
} from '@surae/shared';
import { html, LitElement, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { bookContext, clockContext, doorContext, type HostClock } from '../contexts/capabilities.ts';
import { episodeWords } from '../journey/episode-words.ts';
import { amendedWords, bodyOf, peopleNamed, sortedVisits } from '../journey/people-list.ts';
import { type Listed, type TodayList, todayList } from '../journey/today-list.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { storeWords } from '../live/store-words.ts';
import '../parts/backup-reminder.ts';
import '../parts/demo-courses.ts';
import { dueLines, dueStyle } from '../parts/due-lines.ts';
import '../parts/earlier-visits.ts';
import type { NameSought } from '../parts/name-search.ts';
import '../parts/name-search.ts';
import type { PersonAmended, PersonGiven } from '../parts/person-form.ts';
import '../parts/person-form.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { loadLaterStepsWhenIdle } from './later-steps.ts';
import { startStyle } from './start-style.ts';

/** People that are seen at a glance; more of them can be sought by name [-]; ours. */
const fewPeople = 8;
/** Visits of a person that are named there; the course has all of them [-]; ours. */
const fewVisits = 3;

/** Who is here today: everybody in the book, with what they have done. */
@customElement('start-page')
export class StartPage extends LitElement {
  static override styles = [base, startStyle, dueStyle];

  @consume({ context: bookContext }) @state() private book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private entries: readonly CaseloadEntry[] | undefined;
  private today: TodayList = { asking: [], rest: [] };
  /** what was typed to find somebody */
  @state() private sought = '';
  @state() private notKept = false;
  /** why no visit could be begun; empty where one could */
  @state() private notBegun = '';
  /** id of the person who is being corrected: one form at a time */
  @state() private correcting: Person['id'] | undefined;
  /** id of the person whose correction could not be kept */
  @state() private notAmended: Person['id'] | undefined;
  /** id of the person who is to begin a visit though one is open */
  @state() private offeredTo: Person['id'] | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.loadFirst();
  }

  private async loadFirst(): Promise<void> {
    await this.load();
    await this.updateComplete;
    loadLaterStepsWhenIdle();
  }

  private async load(): Promise<void> {
    this.entries = await this.book.caseload();
    // once for a list, and not with every letter that is sought
    this.today = todayList(this.entries, this.clock.isoNow());
  }

  /** Begins a visit; where one is open, shows that it can be gone on with. The book is asked anew: another window may have begun one. */
  private async begin(person: Person): Promise<void> {
    if (sortedVisits(await this.book.visitLines(person.id)).open === undefined) return this.beginAnother(person);
    this.offeredTo = person.id;
    await this.load();
    await this.updateComplete;
    // the button that was pressed is gone: the offer stands in its place
    this.renderRoot.querySelector<HTMLElement>('.offer a')?.focus();
  }

  private async beginAnother(person: Person): Promise<void> {
    let visitId: string;
    try {
      visitId = await this.book.beginVisit(person.id);
    } catch (error) {
      this.notBegun = storeWords(error);
      return;
    }
    location.hash = hashOf({ page: 'visit', visitId });
  }

  private async add({ detail }: PersonGiven): Promise<void> {
    let added: Person['id'];
    try {
      added = (await this.book.addPerson(detail)).id;
      this.notKept = false;
    } catch {
      this.notKept = true;
      return;
    }
    this.renderRoot.querySelector('details')?.removeAttribute('open');
    await this.load();
    await this.updateComplete;
    // the form is closed now: whoever goes by the keyboard goes on with the person just added
    this.renderRoot.querySelector<HTMLElement>(`[data-person="${CSS.escape(added)}"] button`)?.focus();
  }

  private async amend({ id }: Person, event: PersonAmended): Promise<void> {
    const details = (event.target as HTMLElement).closest('details');
    try {
      await this.book.amendPerson(id, event.detail.change, event.detail.by);
      await this.door.open?.audit.write('changed', id);
      this.notAmended = undefined;
    } catch {
      this.notAmended = id;
      return;
    }
    await this.load();
    this.correcting = undefined;
    details?.querySelector('summary')?.focus();
  }

  override render(): TemplateResult {
    const memoryOnly = document.documentElement.dataset['store'] === 'memory';
    return html`
      <h1>${START_WORDS.title.text}</h1>
      ${this.door.open?.which === 'own' ? null : html`<p class="voice intro">${START_WORDS['demo-clinic'].text}</p>`}
      <backup-reminder .isEmpty=${this.entries === undefined ? undefined : this.entries.length === 0}></backup-reminder>
      <p class="voice" role="alert">${this.notBegun}</p>
      <earlier-visits .entries=${this.entries ?? []} @demo-made=${() => void this.load()}></earlier-visits>
      <demo-courses .entries=${this.entries ?? []} @demo-made=${() => void this.load()}></demo-courses>
      ${memoryOnly ? html`<p class="voice intro" role="status">${START_WORDS['memory-only'].text}</p>` : null}
      ${this.list()}
      <details class="add">
        <summary>${START_WORDS.add.text}</summary>
        ${this.notKept ? html`<p class="voice" role="alert">${START_WORDS['not-kept'].text}</p>` : null}
        <person-form @person-given=${(event: PersonGiven) => void this.add(event)}></person-form>
      </details>
      <p class="own">
        <a href=${hashOf({ page: 'sensors', visitId: null })}>${SENSOR_PLACE.link.text}</a>
        <a href=${hashOf({ page: 'import' })}>${IMPORT_PLACE.link.text}</a>
        <a href=${hashOf({ page: 'own-errors' })}>${OWN_ERROR_PLACE.link.text}</a>
        <a href=${hashOf({ page: 'clinic' })}>${CLINIC_PLACE.link.text}</a>
        <a href=${hashOf({ page: 'design', asked: null })}>${START_WORDS['design-link'].text}</a>
        <a href=${hashOf({ page: 'study', studyId: null, part: null })}>${START_WORDS['study-link'].text}</a>
        <a href=${hashOf({ page: 'export' })}>${START_WORDS['export-link'].text}</a>
      </p>
    `;
  }

  private list(): TemplateResult {
    if (this.entries === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.entries.length === 0) return html`<p class="nobody">${START_WORDS.nobody.text}</p>`;
    const asking = peopleNamed(this.today.asking, this.sought);
    const rest = peopleNamed(this.today.rest, this.sought);
    return html`${
      this.entries.length > fewPeople
        ? html`<name-search
              .found=${asking.length + rest.length}
              .all=${this.entries.length}
              @name-sought=${(event: NameSought) => (this.sought = event.detail)}
            ></name-search>`
        : null
    }
      ${
        asking.length > 0
          ? html`<h2>${TODAY_WORDS.due.text}</h2>
              ${this.people(asking)}`
          : this.sought === ''
            ? html`<h2>${TODAY_WORDS.nobody.text}</h2>
                <p class="quiet intro">${TODAY_WORDS['nobody-means'].text}</p>`
            : null
      }
      ${
        rest.length > 0
          ? html`<h2 class="rest">${TODAY_WORDS[asking.length > 0 ? 'rest' : 'all'].text}</h2>
              ${this.people(rest)}`
          : null
      }`;
  }

  private people(listed: readonly Listed[]): TemplateResult {
    return html`<ul class="people">
      ${repeat(
        listed,
        ({ person }) => person.id,
        (one) => this.entry(one),
      )}
    </ul>`;
  }

  private entry({ person, visits, amended, facts, due }: Listed): TemplateResult {
    const { open, past } = sortedVisits(visits);
    const body = bodyOf(person);
    return html`<li data-person=${person.id}>
      <div>
        <h3>${person.name}</h3>
        ${body.length === 0 ? null : html`<p class="quiet">${body.join(', ')}</p>`}
        ${facts.episodes.map((one) => html`<p>${episodeWords(one)}</p>`)} ${dueLines(due)}
      </div>
      ${open !== undefined && this.offeredTo === person.id ? this.offer(person, open) : this.choices(person, open)}
      ${this.past(person, past)}
      <div class="about">${this.episodeLink(person, facts.episodes.length > 0)} ${this.correction(person, amended)}</div>
    </li>`;
  }

  private episodeLink({ id: personId, name }: Person, isKept: boolean): TemplateResult {
    const [words, label] = isKept ? (['link-kept', 'link-kept-of'] as const) : (['link', 'link-of'] as const);
    return html`<a class="episode" aria-label=${fill(EPISODE_LINE_WORDS[label], { name })} href=${hashOf({ page: 'episode', personId })}
      >${EPISODE_LINE_WORDS[words].text}</a
    >`;
  }

  private correction(person: Person, amended: readonly AmendedField[]): TemplateResult {
    const isOpen = this.correcting === person.id;
    return html`<details
      class="amend"
      .open=${isOpen}
      @toggle=${(event: Event) => this.turn(person.id, (event.target as HTMLDetailsElement).open)}
    >
      <summary aria-label=${fill(START_WORDS['amend-of'], { name: person.name })}>${START_WORDS.amend.text}</summary>
      ${this.notAmended === person.id ? html`<p class="voice" role="alert">${START_WORDS['not-kept'].text}</p>` : null}
      ${
        amended.length === 0
          ? null
          : html`<ul class="quiet">
              ${amended.map((one) => html`<li>${amendedWords(one)}</li>`)}
            </ul>`
      }
      ${
        isOpen
          ? html`<person-form
              .person=${person}
              @person-amended=${(event: PersonAmended) => void this.amend(person, event)}
            ></person-form>
            <a
              class="erase"
              aria-label=${fill(ERASE_PLACE['link-of'], { name: person.name })}
              href=${hashOf({ page: 'erase', personId: person.id })}
              >${ERASE_PLACE.link.text}</a
            >`
          : null
      }
    </details>`;
  }

  private turn(id: Person['id'], open: boolean): void {
    if (open) this.correcting = id;
    else if (this.correcting === id) this.correcting = undefined;
  }

  private choices(person: Person, open: VisitLine | undefined): TemplateResult {
    return html`<div class="choices">
      ${open === undefined ? null : this.goOn(open)}
      ${this.button('begin', person, () => this.begin(person))}
      <a
        class="button"
        aria-label=${fill(COURSE_PLACE['link-of'], { name: person.name })}
        href=${hashOf({ page: 'course', personId: person.id })}
        >${COURSE_PLACE.link.text}</a
      >
    </div>`;
  }

  /** The open visit first; another one only by a second choice. */
  private offer(person: Person, open: VisitLine): TemplateResult {
    return html`<div class="offer">
      <p class="voice" role="status">${fill(START_WORDS['still-open'], { date: dayOf(open.begunAt) })}</p>
      <div class="choices">${this.goOn(open)} ${this.button('another', person, () => this.beginAnother(person))}</div>
    </div>`;
  }

  private goOn({ id, begunAt }: VisitLine): TemplateResult {
    return html`<a class="button" href=${hashOf({ page: 'visit', visitId: id })}
      >${fill(START_WORDS['go-on'], { date: dayOf(begunAt) })}</a
    >`;
  }

  private button(code: 'begin' | 'another', { name }: Person, press: () => Promise<void>): TemplateResult {
    return html`<button type="button" aria-label=${`${START_WORDS[code].text}: ${name}`} @click=${() => void press()}>
      ${START_WORDS[code].text}
    </button>`;
  }

  private past({ id: personId, name }: Person, visits: readonly VisitLine[]): TemplateResult | null {
    if (visits.length === 0) return null;
    const more = fill(START_WORDS['more-visits'], { count: visits.length - fewVisits });
    return html`<div class="past">
      ${visits.slice(0, fewVisits).map(({ id, begunAt, closed }) => {
        const words = START_WORDS[closed ? 'past-visit' : 'open-visit'];
        return html`<a href=${hashOf({ page: 'visit', visitId: id })}>${fill(words, { date: dayOf(begunAt) })}</a>`;
      })}
      ${
        visits.length > fewVisits
          ? html`<a aria-label=${`${more}: ${name}`} href=${hashOf({ page: 'course', personId })}>${more}</a>`
          : null
      }
    </div>`;
  }
}
