import { css } from 'lit';

/** The page of a running set: count and ruler large, what is tapped below or beside, stop along the whole bottom. */
export const runningStyle = css`
  :host {
    background: var(--paper);
    display: grid;
    gap: var(--gap-2);
    grid-template:
      'head head' auto
      'count ruler' minmax(min-content, 1fr)
      'verdict verdict' auto
      'controls controls' auto
      'beat beat' auto
      'stop stop' auto / minmax(0, 1fr) minmax(5rem, 26%);
    inset: 0;
    overflow: auto;
    position: fixed;
    z-index: 1;
  }
  .head {
    display: flex;
    font-size: var(--size-1);
    gap: var(--gap-3);
    grid-area: head;
    margin: 0;
    padding: var(--gap-2) var(--gap-4) 0;
  }
  .head .side {
    white-space: nowrap;
  }
  .head .quiet {
    font-weight: 400;
    min-inline-size: 0;
    overflow-wrap: anywhere;
  }
  count-display {
    grid-area: count;
  }
  tap-target {
    grid-column: count / ruler;
    grid-row: count;
    margin-inline: var(--gap-4);
  }
  tap-target count-display {
    grid-area: auto;
  }
  set-height {
    grid-area: ruler;
    margin-inline-end: var(--gap-4);
    min-inline-size: 0;
  }
  .verdict {
    font-size: var(--size-4);
    grid-area: verdict;
    line-height: 1.1;
    margin: 0;
    max-inline-size: none;
    min-block-size: 2.2em;
    padding-inline: var(--gap-4);
    text-align: center;
    text-wrap: balance;
  }
  .controls {
    display: grid;
    gap: var(--gap-2);
    grid-area: controls;
    padding-inline: var(--gap-3);
  }
  .notes p {
    line-height: 1.25;
    margin: 0;
    max-inline-size: none;
  }
  .row {
    display: grid;
    gap: var(--gap-1);
    grid-auto-columns: 1fr;
    grid-auto-flow: column;
  }
  .row button {
    font-size: var(--size-1);
  }
  beat-pendulum {
    grid-area: beat;
  }
  stop-bar {
    grid-area: stop;
    inset-block-end: 0;
    position: sticky;
  }
  @media (min-width: 40rem) {
    .notes p {
      font-size: var(--size-2);
    }
  }
  @media (max-width: 40rem) {
    :host {
      gap: 6px;
    }
    .verdict {
      font-size: var(--size-3);
    }
    /* a line that needs the eyes now takes room from the count, so that nothing to tap goes under the stop */
    :host([data-told]),
    tap-target {
      --size-count: 6rem;
    }
    :host([data-told]) .verdict {
      min-block-size: auto;
    }
  }
  @media (min-width: 60rem) {
    :host {
      grid-template:
        'head head head' auto
        var(--thumb-count, 'count ruler controls') 1fr
        var(--thumb-verdict, 'verdict ruler controls') auto
        'beat beat beat' auto
        'stop stop stop' auto / var(--thumb-columns, minmax(0, 1fr) 11rem 24rem);
    }
    .controls {
      align-content: end;
      padding-inline: var(--gap-4);
    }
  }
`;
