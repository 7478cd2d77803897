import { consume } from '@lit/context';
import type { CasebookPerson } from '@surae/casebook';
import { COURSE_PLACE, COURSE_WORDS, FRAME_WORDS, LOG_WORDS, RESULT_WORDS } from '@surae/shared';
import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ClinicDoor } from '../clinic/clinic-door.ts';
import { bookContext, clockContext, doorContext, type HostClock } from '../contexts/capabilities.ts';
import { beginDraft } from '../course/begin-draft.ts';
import { courseLines, firstDayOf, loggedOf } from '../course/course-line.ts';
import { testTrends } from '../course/leg-trends.ts';
import { changeBetween, draftOf, type LogDraft } from '../course/log-draft.ts';
import { type LogEntry, type LoggedEntry, type LogKind, logKinds } from '../course/log-entry.ts';
import { type LogKnown, type LogQuestion, logQuestions } from '../course/log-questions.ts';
import { morningsOf } from '../course/mornings.ts';
import { type PersonCourse, personCourse } from '../course/person-course.ts';
import { reachLines } from '../course/reach-lines.ts';
import { runFilesOf } from '../course/run-files.ts';
import { soreAtInsertion } from '../course/sore-insertion.ts';
import { totalSeries } from '../course/total-change.ts';
import { focusHeading } from '../heading-focus.ts';
import { ReadsInOrder } from '../journey/reads-in-order.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import type { LoggedChosen, SetChosen } from '../parts/course-list.ts';
import '../parts/course-again.ts';
import '../parts/course-list.ts';
import '../parts/course-load.ts';
import '../parts/course-trends.ts';
import { dueLines, dueStyle } from '../parts/due-lines.ts';
import type { LogAnswer } from '../parts/log-asked.ts';
import '../parts/log-asked.ts';
import type { LogGiven } from '../parts/log-form.ts';
import '../parts/log-form.ts';
import { hashOf } from '../route.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { courseStyle } from './course-style.ts';

/** What was done last, and what undoes it. */
interface Done {
  readonly text: string;
  readonly undo: { readonly words: string; readonly run: () => Promise<void> } | null;
}

/** An entry about which something is asked before it is kept. */
interface Asked {
  readonly entry: LogEntry;
  readonly questions: readonly LogQuestion[];
}

/** Everything of one person on one line of time, and what can be written down on it. */
@customElement('course-page')
export class CoursePage extends LitElement {
  static override styles = [base, dueStyle, courseStyle];

  @property({ attribute: false }) personId = '';
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: clockContext }) private readonly clock!: HostClock;
  @state() private shown: PersonCourse | null | undefined;
  /** the form that is open: something new, or an entry that is corrected */
  @state() private form: { readonly begin: LogDraft; readonly corrects: LoggedEntry | null } | undefined;
  @state() private asked: Asked | undefined;
  @state() private done: Done | undefined;
  /** id of the set that is counted again */
  @state() private againOf: string | undefined;
  @state() private notKept = false;
  private readonly reads = new ReadsInOrder<PersonCourse | null>();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('personId')) return;
    this.shown = undefined;
    void this.open();
  }

  private async open(): Promise<void> {
    await this.load();
    if (this.shown) void this.door.open?.audit.personOpened(this.personId);
    await this.updateComplete;
    void focusHeading(this);
  }

  private load(): Promise<void> {
    return this.reads.read(
      async () => {
        const [documents, own] = await Promise.all([this.book.log.documents(this.personId), this.book.ownErrors()]);
        return personCourse(this.personId, documents, own, this.clock.isoNow());
      },
      (shown) => (this.shown = shown),
    );
  }

  private today(): string {
    return this.clock.isoNow().slice(0, 10);
  }

  private known(person: CasebookPerson): LogKnown {
    return { today: this.today(), firstDay: firstDayOf(person), logged: loggedOf(person) };
  }

  override render(): TemplateResult {
    if (this.shown === undefined) return html`<p class="quiet" role="status">${FRAME_WORDS.loading.text}</p>`;
    if (this.shown === null) {
      return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>
        <p>${FRAME_WORDS.lost.text}</p>
        <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
    const { person, own, due, load } = this.shown;
    const known = this.known(person);
    return html`
      <p class="who quiet">${person.person.name}</p>
      <h1 tabindex="-1">${COURSE_PLACE.title.text}</h1>
      ${dueLines(due)}
      ${this.add(person)}
      <div class="done" role="status">${this.told()}</div>
      <p class="voice" role="alert">${this.notKept ? COURSE_WORDS['not-kept'].text : ''}</p>
      ${this.again(this.shown)}
      <div class="parts">
        <div>
          <course-trends
            .tests=${testTrends(person.visits, person.person, own)}
            .mornings=${morningsOf(person.morningChecks, known.today)}
            .totals=${totalSeries(person.questionnaireTotals)}
            .reaches=${reachLines(person.reaches)}
          ></course-trends>
          <course-load .load=${load}></course-load>
        </div>
        <section>
          <p class="quiet">${COURSE_WORDS['newest-first'].text}</p>
          <course-list
            .lines=${courseLines(person)}
            .known=${known}
            @set-again=${({ detail }: SetChosen) => (this.againOf = detail)}
            @log-correct=${({ detail }: LoggedChosen) => void this.show({ begin: draftOf(detail), corrects: detail })}
            @log-take-out=${({ detail }: LoggedChosen) => void this.takeOut(detail, COURSE_WORDS['why-taken-out'].text)}
          ></course-list>
        </section>
      </div>
      <a class="button" href=${hashOf({ page: 'start' })}>${RESULT_WORDS['all-people'].text}</a>
    `;
  }

  private add(person: CasebookPerson): TemplateResult {
    if (this.asked !== undefined) return this.ask(this.asked);
    if (this.form === undefined) {
      return html`<section class="add">
        <h2>${LOG_WORDS.add.text}</h2>
        <div class="choices">${logKinds.map((kind) => this.kindButton(kind, person))}</div>
      </section>`;
    }
    const { begin, corrects } = this.form;
    return html`<section class="add">
      <h2 tabindex="-1">${COURSE_WORDS[begin.kind].text}</h2>
      <log-form
        .begin=${begin}
        .today=${this.today()}
        .planItems=${person.planItems}
        .sore=${soreAtInsertion(person)}
        .runFiles=${runFilesOf(person.runs)}
        .correcting=${corrects !== null}
        @log-given=${({ detail }: LogGiven) => this.given(detail)}
        @log-left=${() => this.close()}
      ></log-form>
    </section>`;
  }

  private kindButton(kind: LogKind, person: CasebookPerson): TemplateResult {
    return html`<button
      type="button"
      id=${kind}
      @click=${() => this.show({ begin: beginDraft(kind, this.today(), person), corrects: null })}
    >
      ${COURSE_WORDS[kind].text}
    </button>`;
  }

  private ask({ entry, questions }: Asked): TemplateResult {
    return html`<log-asked
      .entry=${entry}
      .questions=${questions}
      @log-answer=${({ detail }: LogAnswer) => void this.answer(detail, { entry, questions })}
    ></log-asked>`;
  }

  private answer(answer: LogAnswer['detail'], { entry, questions }: Asked): Promise<void> {
    const twice = questions.find((one) => one.code === 'twice');
    if (answer === 'correct' && twice !== undefined) return this.correct(twice.other, entry);
    if (answer === 'keep') return this.keep(entry);
    return this.show({ begin: draftOf(entry), corrects: this.form?.corrects ?? null });
  }

  private again({ person, own }: PersonCourse): TemplateResult | typeof nothing {
    if (this.againOf === undefined) return nothing;
    return html`<course-again
      .visits=${person.visits}
      .own=${own}
      .setId=${this.againOf}
      @again-left=${() => (this.againOf = undefined)}
      @recount-kept=${() => void this.load()}
    ></course-again>`;
  }

  private told(): TemplateResult | typeof nothing {
    if (this.done === undefined) return nothing;
    const { text, undo } = this.done;
    return html`<p>${text}</p>
      ${undo === null ? nothing : html`<button type="button" @click=${() => void undo.run()}>${undo.words}</button>`}`;
  }

  private async show(form: CoursePage['form']): Promise<void> {
    this.form = form;
    this.asked = undefined;
    await this.updateComplete;
    const heading = this.renderRoot.querySelector<HTMLElement>('.add h2');
    heading?.scrollIntoView({ block: 'start' });
    heading?.focus({ preventScroll: true });
  }

  private close(): void {
    this.form = undefined;
    this.asked = undefined;
  }

  private given(entry: LogEntry): void {
    if (!this.shown) return;
    const id = this.form?.corrects?.id ?? null;
    const questions = logQuestions(entry, this.known(this.shown.person), id);
    if (questions.length === 0) void this.keep(entry);
    else this.asked = { entry, questions };
  }

  private keep(entry: LogEntry): Promise<void> {
    const corrects = this.form?.corrects ?? null;
    if (corrects !== null) return this.correct(corrects, entry);
    return this.write(async () => {
      const id = await this.book.log.add(this.personId, entry);
      const run = (): Promise<void> => this.takeOut({ ...entry, id }, COURSE_WORDS['why-undone'].text);
      return { code: 'kept', entry, undo: { words: COURSE_WORDS.undo.text, run } };
    });
  }

  private takeOut(logged: LoggedEntry, why: string): Promise<void> {
    return this.write(async () => {
      await this.book.log.takeOut(logged.id, why);
      // a removal stands for good: what was taken out is written down once more
      const entry = { kind: logged.kind, body: logged.body } as LogEntry;
      return { code: 'taken-out', entry, undo: { words: COURSE_WORDS['put-back'].text, run: () => this.keep(entry) } };
    });
  }

  private correct({ id, ...before }: LoggedEntry, after: LogEntry): Promise<void> {
    return this.write(async () => {
      const change = changeBetween(before, after);
      if (change !== undefined) await this.book.log.correct(id, change, COURSE_WORDS['why-corrected'].text);
      const run = (): Promise<void> => this.correct({ ...after, id }, before);
      return { code: 'corrected', entry: after, undo: { words: COURSE_WORDS.undo.text, run } };
    });
  }

  /** Writes something and shows what came of it; what could not be kept stays in the form. */
  private async write(
    work: () => Promise<{
      readonly code: 'kept' | 'taken-out' | 'corrected';
      readonly entry: LogEntry;
      readonly undo: Done['undo'];
    }>,
  ): Promise<void> {
    try {
      const { code, entry, undo } = await work();
      await this.door.open?.audit.write('changed', this.personId);
      const told = { day: dayOf(entry.body.on), what: COURSE_WORDS[entry.kind].text };
      this.done = { text: fill(COURSE_WORDS[code], told), undo };
      this.notKept = false;
    } catch {
      this.notKept = true;
      return;
    }
    this.close();
    await this.load();
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('.done button')?.focus();
  }
}
