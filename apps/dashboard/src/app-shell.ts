import { consume } from '@lit/context';
import { BANNER_WORDS, CLINIC_WORDS, FRAME_WORDS } from '@surae/shared';
import type { RecordStore } from '@surae/storage';
import { css, html, LitElement, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { AuditTrail } from './clinic/audit-trail.ts';
import type { ClinicDoor } from './clinic/clinic-door.ts';
import { auditContext, doorContext, storeContext } from './contexts/capabilities.ts';
import './pages/start-page.ts';
import './pages/visit-page.ts';
import { focusHeading } from './heading-focus.ts';
import { pageOf, pageTitle } from './page-title.ts';
import { hashOf, type Route, routeOf } from './route.ts';
import { base } from './styles/base.ts';

/** The frame of every page: where one is, what paper it is printed on, whether there is a network. */
@customElement('app-shell')
export class AppShell extends LitElement {
  static override styles = [
    base,
    css`
      :host {
        display: grid;
        grid-template: auto 1fr auto / minmax(0, 1fr);
        min-block-size: 100dvh;
      }
      header,
      footer,
      main {
        inline-size: 100%;
        margin-inline: auto;
        max-inline-size: var(--page);
        padding-inline: var(--gap-4);
      }
      header {
        align-items: baseline;
        display: flex;
        flex-wrap: wrap;
        gap: 0 clamp(var(--gap-2), 2vw, var(--gap-6));
        justify-content: end;
        padding-block: var(--gap-2);
      }
      .skip {
        background: var(--paper);
        inset-block-start: 0;
        inset-inline-start: var(--gap-4);
        padding: var(--gap-4);
        position: absolute;
        z-index: 1;
      }
      .skip:not(:focus) {
        block-size: 1px;
        clip-path: inset(50%);
        inline-size: 1px;
        overflow: hidden;
        padding: 0;
      }
      main:focus-visible {
        outline: none;
      }
      .name {
        font-size: var(--size-2);
        font-weight: 600;
        letter-spacing: 0.02em;
        margin-inline-end: auto;
        padding-block: var(--gap-3);
        text-decoration: none;
      }
      header button,
      .where {
        font-size: var(--size-1);
        padding-inline: 0;
      }
      .where {
        align-items: center;
        display: inline-flex;
        min-block-size: var(--target);
      }
      .banner {
        flex-basis: 100%;
        margin: 0;
        max-inline-size: none;
      }
      main {
        padding-block: var(--gap-4) var(--gap-8);
      }
      footer {
        column-gap: var(--gap-6);
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        border-block-start: 1px solid var(--hairline);
        font-size: var(--size-1);
        padding-block: var(--gap-3) var(--gap-6);
      }
      footer a {
        display: inline-block;
        margin-inline-end: var(--gap-4);
        padding-block: var(--gap-3);
      }
      :host([bare]) header,
      :host([bare]) footer {
        display: none;
      }
      :host([bare]) main {
        max-inline-size: none;
        padding: 0;
      }
    `,
  ];

  @consume({ context: doorContext }) private readonly door!: ClinicDoor;
  @consume({ context: storeContext }) private readonly store!: RecordStore;
  @consume({ context: auditContext }) private readonly audit!: AuditTrail;
  private endAccess: (() => void) | undefined;
  @state() private route: Route = routeOf(location.hash);
  /** one came to this page from another one of the dashboard */
  private arrived = false;
  /** what page that is, for those who do not see it */
  @state() private said = '';
  @state() private online = navigator.onLine;
  private readonly system = matchMedia('(prefers-color-scheme: dark)');
  @state() private night = this.system.matches;

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.follow);
    addEventListener('online', this.look);
    addEventListener('offline', this.look);
    this.system.addEventListener('change', this.followSystem);
    this.endAccess = this.store.onAccess(() => this.requestUpdate());
    this.audit.addEventListener('audit-missing', this.renew);
    // a set fills the screen: nothing else is shown while somebody is being tested
    this.addEventListener('bare-screen', this.makeBare);
    this.addEventListener('page-arrived', this.sayPage);
  }

  override disconnectedCallback(): void {
    this.endAccess?.();
    this.audit.removeEventListener('audit-missing', this.renew);
    this.removeEventListener('bare-screen', this.makeBare);
    this.removeEventListener('page-arrived', this.sayPage);
    removeEventListener('hashchange', this.follow);
    removeEventListener('online', this.look);
    removeEventListener('offline', this.look);
    this.system.removeEventListener('change', this.followSystem);
    super.disconnectedCallback();
  }

  private readonly follow = (): void => {
    this.route = routeOf(location.hash);
    this.arrived = true;
    this.removeAttribute('bare');
    scrollTo(0, 0);
  };

  private readonly makeBare = (event: Event): void => {
    this.toggleAttribute('bare', (event as CustomEvent<boolean>).detail);
  };

  private readonly sayPage = (): void => {
    this.said = pageOf(document.title);
  };

  private readonly renew = (): void => {
    this.requestUpdate();
  };

  private readonly look = (): void => {
    this.online = navigator.onLine;
  };

  protected override updated(changed: Map<PropertyKey, unknown>): void {
    // a visit gives its own title, once it is known at which step it is, and takes the focus there
    if (!changed.has('route') || this.route.page === 'visit') return;
    document.title = pageTitle(this.route.page);
    const page = this.renderRoot.querySelector('main')?.firstElementChild;
    if (this.arrived && page) void focusHeading(page);
  }

  /** The address names a place in the dashboard, so the link moves the focus and leaves the address alone. */
  private readonly skip = (event: Event): void => {
    event.preventDefault();
    this.renderRoot.querySelector<HTMLElement>('main')?.focus();
  };

  /** The system's paper counts until one is chosen here. */
  private readonly followSystem = (): void => {
    if (document.documentElement.dataset['paper'] === undefined) this.night = this.system.matches;
  };

  private turnPaper(): void {
    this.night = !this.night;
    document.documentElement.dataset['paper'] = this.night ? 'night' : 'day';
  }

  override render(): TemplateResult {
    const words = FRAME_WORDS;
    const isOwn = this.door.open?.which === 'own';
    return html`
      <header>
        <a class="skip" href="#page" @click=${this.skip}>${words.skip.text}</a>
        <a class="name" href=${hashOf({ page: 'start' })} aria-label=${`${words.name.text}: ${words.home.text}`}>
          ${words.name.text}
        </a>
        ${this.online ? null : html`<span class="voice" role="status">${words.offline.text}</span>`}
        <a class="where" href=${hashOf({ page: 'clinic' })}>${CLINIC_WORDS[isOwn ? 'name-own' : 'name-demo'].text}</a>
        ${
          isOwn
            ? html`<button class="plain" type="button" @click=${() => void this.door.lock()}>
                ${CLINIC_WORDS['lock-now'].text}
              </button>`
            : null
        }
        <button class="plain" type="button" @click=${() => this.turnPaper()}>
          ${this.night ? words['day-paper'].text : words['night-paper'].text}
        </button>
        ${this.banner()}
      </header>
      <p class="unseen" role="status">${this.said}</p>
      <main id="page" tabindex="-1">${this.page()}</main>
      <footer class="quiet">
        <span>${words.scope.text}</span>
        <a href="./licences.txt" target="_blank" rel="noopener">${words['made-of'].text}</a>
      </footer>
    `;
  }

  /** What has to be said on every page; nothing where all is well. */
  private banner(): TemplateResult | null {
    const readsOnly = this.store.access.why === 'written-elsewhere';
    if (!readsOnly && this.audit.missing === 0) return null;
    return html`<p class="voice banner" role="status">
      ${BANNER_WORDS[readsOnly ? 'reads-only' : 'audit-missing'].text}
    </p>`;
  }

  private page(): TemplateResult {
    switch (this.route.page) {
      case 'start':
        return html`<start-page></start-page>`;
      case 'visit':
        return html`<visit-page .visitId=${this.route.visitId} .arrived=${this.arrived}></visit-page>`;
      case 'legs':
        void import('./pages/legs-page.ts');
        return html`<legs-page .visitId=${this.route.visitId} .at=${this.route.at}></legs-page>`;
      case 'report':
        void import('./pages/report-page.ts');
        return html`<report-page .visitId=${this.route.visitId}></report-page>`;
      case 'course':
        void import('./pages/course-page.ts');
        return html`<course-page .personId=${this.route.personId}></course-page>`;
      case 'mornings':
        void import('./pages/mornings-page.ts');
        return html`<mornings-page .personId=${this.route.personId}></mornings-page>`;
      case 'own-errors':
        void import('./pages/own-errors-page.ts');
        return html`<own-errors-page></own-errors-page>`;
      case 'clinic':
        void import('./pages/clinic-page.ts');
        return html`<clinic-page></clinic-page>`;
      case 'audit':
        void import('./pages/audit-page.ts');
        return html`<audit-page></audit-page>`;
      case 'rules':
        void import('./pages/rules-page.ts');
        return html`<rules-page></rules-page>`;
      case 'erase':
        void import('./pages/erase-page.ts');
        return html`<erase-page .personId=${this.route.personId}></erase-page>`;
      case 'episode':
        void import('./pages/episode-page.ts');
        return html`<episode-page .personId=${this.route.personId}></episode-page>`;
      case 'import':
        void import('./pages/import-page.ts');
        return html`<import-page></import-page>`;
      case 'export':
        void import('./pages/export-page.ts');
        return html`<export-page></export-page>`;
      case 'study':
        void import('./pages/study-page.ts');
        return html`<study-page .studyId=${this.route.studyId} .asked=${this.route.part}></study-page>`;
      case 'design':
        void import('./pages/design-page.ts');
        return html`<design-page .asked=${this.route.asked}></design-page>`;
      case 'sensors':
        void import('./pages/sensors-page.ts');
        return html`<sensors-page .visitId=${this.route.visitId}></sensors-page>`;
      case 'describe':
        void import('./pages/describe-page.ts');
        return html`<describe-page .descriptionId=${this.route.descriptionId}></describe-page>`;
      case 'lost':
        return html`<h1>${FRAME_WORDS['lost-title'].text}</h1>
          <p>${FRAME_WORDS.lost.text}</p>
          <a class="button" href=${hashOf({ page: 'start' })}>${FRAME_WORDS.home.text}</a>`;
    }
  }
}
