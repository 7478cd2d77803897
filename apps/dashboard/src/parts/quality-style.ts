import { css } from 'lit';

/** The board of a study: a table where there is room, else a card for each recording. */
export const qualityStyle = css`
  :host {
    container-type: inline-size;
  }
  .open {
    font-size: var(--size-2);
    font-weight: 600;
  }
  .asks {
    align-items: end;
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-4);
    margin-block: var(--gap-4);
  }
  .asks > :not(.choices) {
    flex: 1 1 14rem;
    max-inline-size: 24rem;
  }
  .row {
    border-block-start: 1px solid var(--hairline);
    border-inline-start: 4px solid transparent;
    display: grid;
    gap: var(--gap-2) var(--gap-4);
    grid-template-columns: minmax(0, 1fr) auto;
    padding-block: var(--gap-3);
    padding-inline-start: var(--gap-2);
  }
  .row[data-status='to-decide'] {
    border-inline-start-color: var(--voice);
  }
  .row > * {
    grid-column: 1 / -1;
    min-inline-size: 0;
  }
  .row > .name {
    grid-column: 1;
  }
  .row > .act {
    grid-column: 2;
    grid-row: 1;
  }
  .head {
    block-size: 1px;
    border: 0;
    clip-path: inset(50%);
    inline-size: 1px;
    overflow: hidden;
    padding: 0;
    position: absolute;
  }
  .name,
  .stands {
    display: grid;
    gap: var(--gap-1);
    align-content: start;
    overflow-wrap: anywhere;
  }
  .status {
    font-weight: 600;
  }
  .form {
    border-block-start: 0;
  }
  ul {
    margin: 0;
    padding-inline-start: 1.2em;
  }
  .pages {
    align-items: center;
    display: flex;
    flex-wrap: wrap;
    gap: var(--gap-4);
    margin-block: var(--gap-4);
  }
  section button {
    margin-block-end: var(--gap-2);
  }
  section {
    border-block-start: 1px solid var(--hairline);
    margin-block-start: var(--gap-6);
    padding-block-start: var(--gap-4);
  }
  @container (min-width: 54em) {
    .row:not(.form) {
      grid-template-columns: minmax(0, 1.2fr) minmax(0, 1.4fr) minmax(0, 1.8fr) minmax(0, 1.2fr) 7rem;
    }
    .row:not(.form) > * {
      grid-column: auto;
      grid-row: auto;
    }
    .head {
      block-size: auto;
      border-inline-start: 4px solid transparent;
      clip-path: none;
      font-weight: 600;
      inline-size: auto;
      padding-inline-start: var(--gap-2);
      position: static;
    }
  }
`;
