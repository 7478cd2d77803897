import { css } from 'lit';

/** Tables of a study: columns keep their words, unless letters are large for the page. */
export const studyTableStyle = css`
  :host {
    container-type: inline-size;
  }
  section {
    margin-block-start: var(--gap-8);
  }
  table {
    border-collapse: collapse;
    inline-size: 100%;
    max-inline-size: 44rem;
  }
  th,
  td {
    border-block-end: 1px solid var(--hairline);
    font-weight: 400;
    padding-block: var(--gap-2);
    text-align: start;
    vertical-align: top;
  }
  th + th,
  td {
    padding-inline-start: var(--gap-3);
  }
  thead th {
    color: var(--ink-quiet);
    font-size: var(--size-1);
  }
  tbody th {
    overflow-wrap: break-word;
  }
  @container (max-width: 20em) {
    th,
    td {
      overflow-wrap: anywhere;
    }
    th + th,
    td {
      padding-inline-start: var(--gap-1);
    }
  }
  /* a row of many columns is a block of lines where the page is narrow */
  @container (max-width: 34em) {
    .many thead {
      clip-path: inset(50%);
      position: absolute;
    }
    .many tr {
      border-block-end: 1px solid var(--hairline);
      display: block;
      padding-block: var(--gap-2);
    }
    .many th,
    .many td {
      border: 0;
      display: block;
      overflow-wrap: anywhere;
      padding: 0;
    }
    .many tbody th {
      font-weight: 600;
    }
  }
  .sentence {
    font-size: var(--size-4);
    font-weight: 600;
    line-height: 1.15;
    margin-block-end: var(--gap-3);
    overflow-wrap: anywhere;
  }
`;
