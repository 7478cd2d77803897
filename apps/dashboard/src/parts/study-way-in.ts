import { STUDY_WORDS } from '@surae/shared';
import { ListFault, StudyError } from '@surae/study';
import { css, html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { storeWords } from '../live/store-words.ts';
import { hashOf } from '../route.ts';
import { type ChosenFile, chosenFiles, type SortedStudy, sortedStudy } from '../study/chosen-study.ts';
import { PackFault, unpacked } from '../study/packing.ts';
import { sha256Bytes } from '../study/sha256-text.ts';
import type { FoundRecording, StudyEntry, StudyShelf } from '../study/study-shelf.ts';
import { type TakenStudy, takeStudy } from '../study/take-study.ts';
import { base } from '../styles/base.ts';
import { dayOf } from '../words/dates.ts';
import { fill } from '../words/fill.ts';
import { fieldStyle } from './field-style.ts';

/** Names that are told one by one; of more their number is told. */
const FEW = 5;

/** Studies that are kept here, an invented one, and the way in for files of one's own. Tells `study-taken` with the id. */
@customElement('study-way-in')
export class StudyWayIn extends LitElement {
  static override styles = [
    base,
    fieldStyle,
    css`
      section {
        border-block-start: 1px solid var(--hairline);
        margin-block-start: var(--gap-6);
        padding-block-start: var(--gap-4);
      }
      .fields {
        display: grid;
        gap: var(--gap-4);
        max-inline-size: 44rem;
      }
      ul {
        list-style: none;
        margin: 0;
        padding: 0;
      }
      li a {
        align-items: center;
        display: flex;
        min-block-size: var(--target);
        overflow-wrap: anywhere;
      }
      .found {
        margin-block-start: var(--gap-4);
      }
    `,
  ];

  @property({ attribute: false }) shelf!: StudyShelf;
  @state() private entries: readonly StudyEntry[] | undefined;
  @state() private sorted: SortedStudy | undefined;
  @state() private taken: TakenStudy | undefined;
  @state() private said = '';
  /** something is being read or kept */
  @state() private works = false;

  override connectedCallback(): void {
    super.connectedCallback();
    void this.load();
  }

  private async load(): Promise<void> {
    await this.updateComplete;
    this.entries = [...(await this.shelf.entries())].reverse();
  }

  override render(): TemplateResult {
    const words = STUDY_WORDS;
    return html`
      <p>${words.explain.text}</p>
      <p role="status" class="voice">${this.said}</p>
      <section>
        <h2>${words.kept.text}</h2>
        ${this.list()}
      </section>
      <section>
        <p class="quiet">${words['demo-explain'].text}</p>
        <button type="button" ?disabled=${this.works} @click=${() => void this.makeDemo()}>${words.demo.text}</button>
        
      </section>
      <section>
        <h2>${words.own.text}</h2>
        <p>${words['own-explain'].text}</p>
        <div class="fields">
          ${this.field('folder', true)} ${this.field('files', false)} ${this.whichManifest()}
        </div>
        ${this.found()}
      </section>
    `;
  }

  private list(): TemplateResult | typeof nothing {
    const words = STUDY_WORDS;
    if (this.entries === undefined) return nothing;
    if (this.entries.length === 0) return html`<p class="quiet">${words['kept-none'].text}</p>`;
    return html`<ul>
      ${this.entries.map(
        ({ id: studyId, title, recordings: count, at }) =>
          html`<li>
            <a href=${hashOf({ page: 'study', studyId, part: null })}>
              ${fill(words['kept-line'], { title, count, day: dayOf(at) })}
            </a>
          </li>`,
      )}
    </ul>`;
  }

  private field(name: 'folder' | 'files', isFolder: boolean): TemplateResult {
    return html`<div>
      <label for=${name}>${STUDY_WORDS[name].text}</label>
      <input
        id=${name}
        type="file"
        multiple
        ?webkitdirectory=${isFolder}
        ?disabled=${this.works}
        @change=${(event: Event) => {
          const input = event.target as HTMLInputElement;
          void this.choose([...(input.files ?? [])]);
          input.value = '';
        }}
      />
    </div>`;
  }

  /** Asked where several tables could be the manifest. */
  private whichManifest(): TemplateResult | typeof nothing {
    const words = STUDY_WORDS;
    const { sorted } = this;
    if (sorted === undefined || sorted.studies.length === 0 || sorted.manifests.length < 2) return nothing;
    return html`<div>
      <label for="manifest">${words['which-manifest'].text}</label>
      <select
        id="manifest"
        @change=${(event: Event) => {
          const path = (event.target as HTMLSelectElement).value;
          const manifest = sorted.manifests.find((one) => one.path === path);
          if (manifest !== undefined) void this.look(sorted, manifest);
        }}
      >
        <option value="">${words['which-open'].text}</option>
        ${sorted.manifests.map(({ path }) => html`<option value=${path}>${path}</option>`)}
      </select>
    </div>`;
  }

  private found(): TemplateResult | typeof nothing {
    const words = STUDY_WORDS;
    const { taken } = this;
    if (taken === undefined) return nothing;
    const { declared, items } = taken.content;
    const { missing } = taken;
    const told = { title: declared.study.title, named: items.length, there: items.length - missing.length };
    const names = missing.slice(0, FEW).join(', ');
    const few = missing.length > FEW ? fill(words['missing-more'], { names, count: missing.length - FEW }) : names;
    return html`<div class="found">
      <p>${fill(words.found, told)}</p>
      ${missing.length === 0 ? nothing : html`<p class="voice">${fill(words.missing, { names: few })}</p>`}
      <button class="main" type="button" ?disabled=${this.works} @click=${() => void this.takeIn(taken)}>
        ${words.take.text}
      </button>
    </div>`;
  }

  /** Does one thing after the other; what cannot be followed is said. */
  private async work(act: () => Promise<void>): Promise<void> {
    this.works = true;
    try {
      await act();
    } catch (error) {
      const isNamed = error instanceof StudyError || error instanceof ListFault || error instanceof PackFault;
      this.said = isNamed
        ? fill(STUDY_WORDS.refused, { reason: error.message })
        : fill(STUDY_WORDS['not-kept'], { reason: storeWords(error) });
    } finally {
      this.works = false;
    }
  }

  private choose(files: readonly File[]): Promise<void> {
    return this.work(async () => {
      const words = STUDY_WORDS;
      this.taken = undefined;
      this.said = fill(words.looking, { count: files.length });
      // a folder and files beside it are one study
      const before = this.sorted?.all ?? [];
      const chosen = await chosenFiles(files, unpacked);
      const paths = new Set(chosen.map(({ path }) => path));
      const all: ChosenFile[] = [...before.filter(({ path }) => !paths.has(path)), ...chosen];
      const sorted = await sortedStudy(all);
      this.sorted = sorted;
      this.said = '';
      const [manifest, ...others] = sorted.manifests;
      if (sorted.studies.length === 0) this.said = words['no-study'].text;
      else if (manifest === undefined) this.said = words['no-manifest'].text;
      else if (others.length === 0) this.taken = await takeStudy(sorted.studies, manifest, sorted.all, sha256Bytes);
    });
  }

  private look(sorted: SortedStudy, manifest: ChosenFile): Promise<void> {
    return this.work(async () => {
      this.said = '';
      this.taken = await takeStudy(sorted.studies, manifest, sorted.all, sha256Bytes);
    });
  }

  private takeIn({ content, recordings }: TakenStudy): Promise<void> {
    return this.work(async () => {
      const { title } = content.declared.study;
      const id = await this.shelf.keep(title, content.sources, this.counted(recordings(), content.items.length));
      this.dispatchEvent(new CustomEvent('study-taken', { detail: id }));
    });
  }

  private async *counted(recordings: AsyncIterable<FoundRecording>, of: number): AsyncGenerator<FoundRecording> {
    let done = 0;
    for await (const one of recordings) {
      done += 1;
      this.said = fill(STUDY_WORDS.keeping, { done, of });
      yield one;
    }
  }

  private makeDemo(): Promise<void> {
    return this.work(async () => {
      const { demoStudy } = await import('../study/demo-study.ts');
      const tell = async (done: number, of: number): Promise<void> => {
        this.said = fill(STUDY_WORDS['demo-making'], { done, of });
        await new Promise((resolve) => setTimeout(resolve));
      };
      const { title, sources, recordings } = await demoStudy(tell);
      const id = await this.shelf.keep(title, sources, recordings, true);
      this.dispatchEvent(new CustomEvent('study-taken', { detail: id }));
    });
  }
}
