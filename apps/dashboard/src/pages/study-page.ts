import { consume } from '@lit/context';
import { STUDY_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { bookContext, storeContext } from '../contexts/capabilities.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import { storeWords } from '../live/store-words.ts';
import { softwareName } from '../result/software.ts';
import { hashOf } from '../route.ts';
import { shownParts } from '../study/shown-parts.ts';
import { StudyAssessing } from '../study/study-assessing.ts';
import { shownPart } from '../study/study-parts.ts';
import { STUDY_CHANGED, type StudySession } from '../study/study-session.ts';
import { StudyShelf } from '../study/study-shelf.ts';
import { studyWorker, workersAtOnce } from '../study/study-worker.ts';
import { fill } from '../words/fill.ts';
import '../parts/study-progress.ts';
import '../parts/study-save.ts';
import { base } from '../styles/base.ts';

/** The studies of this device, or one of them with its parts. */
@customElement('study-page')
export class StudyPage extends LitElement {
  static override styles = [
    base,
    css`
      nav {
        border-block-end: 1px solid var(--hairline);
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-6);
        margin-block-end: var(--gap-6);
      }
      nav[hidden] {
        display: none;
      }
      nav a {
        align-items: center;
        display: inline-flex;
        min-block-size: var(--target);
      }
      nav a[aria-current] {
        font-weight: 600;
        text-decoration-thickness: 3px;
      }
    `,
  ];

  @property({ attribute: false }) studyId: string | null = null;
  @property({ attribute: false }) asked: string | null = null;
  @consume({ context: bookContext }) private readonly book!: VisitBook;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  /** somebody counts without knowing whose it is: nothing round it says what the study is about */
  @state() private blinded = false;
  private ownShelf: StudyShelf | undefined;
  private assessing: StudyAssessing | undefined;
  /** what could not be kept */
  @state() private said = '';
  /** null where there is no such study */
  @state() private session: StudySession | undefined | null;

  override disconnectedCallback(): void {
    this.leave();
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('studyId')) void this.open();
    if (changed.has('studyId') || changed.has('asked')) this.blinded = false;
  }

  private leave(): void {
    this.assessing?.stop();
    this.assessing = undefined;
    this.session?.removeEventListener(STUDY_CHANGED, this.renew);
    this.session = undefined;
    this.said = '';
  }

  /** The session is the same object: the part that shows it is told. */
  private readonly renew = (): void => {
    this.requestUpdate();
    const part = this.renderRoot.querySelector('.part')?.firstElementChild as { requestUpdate?: () => void } | null;
    part?.requestUpdate?.();
  };

  private get shelf(): StudyShelf {
    this.ownShelf ??= new StudyShelf(this.store, this.book.hand);
    return this.ownShelf;
  }

  private async open(): Promise<void> {
    this.leave();
    const id = this.studyId;
    if (id === null) {
      await import('../parts/study-way-in.ts');
      return;
    }
    const opened = await this.shelf.open(id, softwareName());
    if (id !== this.studyId || !this.isConnected) return;
    this.session = opened?.session ?? null;
    if (opened === undefined) return;
    opened.session.addEventListener(STUDY_CHANGED, this.renew);
    this.assessing = new StudyAssessing(opened, {
      shelf: this.shelf,
      makeWorker: studyWorker,
      atOnce: workersAtOnce(navigator.hardwareConcurrency),
      nowMs: () => performance.now(),
    });
    // what was not assessed when it was left is gone on with
    await this.assess();
  }

  private async assess(): Promise<void> {
    this.said = '';
    try {
      await this.assessing?.go();
    } catch (error) {
      this.said = fill(STUDY_WORDS['not-kept'], { reason: storeWords(error) });
    }
  }

  override render(): TemplateResult {
    const words = STUDY_WORDS;
    if (this.studyId === null) {
      return html`<h1 tabindex="-1">${words.title.text}</h1>
        <study-way-in
          .shelf=${this.shelf}
          @study-taken=${({ detail: studyId }: CustomEvent<string>) => {
            location.hash = hashOf({ page: 'study', studyId, part: null });
          }}
        ></study-way-in>`;
    }
    const { session } = this;
    if (session === undefined) return html`<p class="quiet" role="status">${words.loading.text}</p>`;
    const back = html`<p><a href=${hashOf({ page: 'study', studyId: null, part: null })}>${words.back.text}</a></p>`;
    if (session === null) {
      return html`<h1 tabindex="-1">${words.title.text}</h1>
        <p role="alert">${words.lost.text}</p>
        ${back}`;
    }
    const { title, question } = session.content.declared.study;
    return html`
      <h1 tabindex="-1">${this.blinded ? words['part-recount'].text : title}</h1>
      ${this.blinded ? nothing : html`<p>${question}</p>${back}`}
      <p class="voice" role="alert">${this.said}</p>
      <study-progress
        .progress=${session.progress}
        @assess-stop=${() => this.assessing?.stop()}
        @assess-go=${() => void this.assess()}
      ></study-progress>
      ${this.parts(session)}
      ${this.blinded ? nothing : html`<study-save .session=${session} .isWhole=${session.isWhole}></study-save>`}
    `;
  }

  private parts(session: StudySession): TemplateResult | typeof nothing {
    const parts = shownParts.filter(({ isIn }) => isIn === undefined || isIn(session));
    if (parts.length === 0) return nothing;
    const here = shownPart(parts, this.asked);
    void here.load();
    return html`
      <nav ?hidden=${this.blinded} aria-label=${STUDY_WORDS.parts.text}>
        ${parts.map(
          ({ part }) =>
            html`<a
              href=${hashOf({ page: 'study', studyId: session.id, part })}
              aria-current=${part === here.part ? 'page' : nothing}
              >${STUDY_WORDS[`part-${part}`].text}</a
            >`,
        )}
      </nav>
      <div class="part" @blinded-count=${(event: CustomEvent<boolean>) => (this.blinded = event.detail)}>${here.show(session)}</div>
    `;
  }
}
