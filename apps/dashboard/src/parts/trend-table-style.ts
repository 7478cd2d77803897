import { css } from 'lit';

/** Sections of the trends and the tables in them: days and numbers keep together, and nothing is wider than the page. */
export const trendTableStyle = css`
  section {
    margin-block-end: var(--gap-8);
  }
  h3 {
    font-size: var(--size-2);
  }
  table {
    border-collapse: collapse;
    margin-block-end: var(--gap-4);
  }
  caption {
    font-weight: 600;
    text-align: start;
  }
  th,
  td {
    font-weight: 400;
    padding: var(--gap-1) var(--gap-3) var(--gap-1) 0;
    text-align: start;
    vertical-align: top;
  }
  /* where letters are large for the page, anything may break */
  @container (max-width: 16em) {
    caption,
    tbody th,
    td {
      overflow-wrap: anywhere;
    }
    th,
    td {
      padding-inline-end: var(--gap-1);
    }
  }
  @container (max-width: 14em) {
    thead th {
      overflow-wrap: anywhere;
    }
  }
  ul {
    padding-inline-start: 1.2em;
  }
`;
