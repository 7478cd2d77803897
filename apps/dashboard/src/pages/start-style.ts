import { css } from 'lit';

/** The list of people, and what is linked below it. */
export const startStyle = css`
  ul {
    list-style: none;
    margin: 0;
    padding: 0;
  }
  .people > li {
    align-items: center;
    border-block-start: 1px solid var(--hairline);
    display: grid;
    gap: var(--gap-2) var(--gap-6);
    grid-template-columns: minmax(0, 1fr) auto;
    padding-block: var(--gap-4);
  }
  h2 {
    font-size: var(--size-2);
    margin: 0;
  }
  p {
    margin: 0;
  }
  .offer {
    display: grid;
    gap: var(--gap-3);
    grid-column: 1 / -1;
  }
  .past {
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--gap-4);
    grid-column: 1 / -1;
  }
  .past a {
    display: inline-block;
    padding-block: var(--gap-3);
  }
  .earlier {
    margin-block-end: var(--gap-6);
    padding-inline: 0;
    text-align: start;
  }
  .intro {
    margin-block-end: var(--gap-6);
  }
  @media (max-width: 32rem) {
    .people > li {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  .amend {
    grid-column: 1 / -1;
  }
  .amend summary {
    font-size: var(--size-1);
  }
  .amend ul {
    margin-block-end: var(--gap-4);
  }
  .add {
    border-block-start: 1px solid var(--hairline);
    padding-block: var(--gap-4);
  }
  .own {
    border-block-start: 1px solid var(--hairline);
    padding-block: var(--gap-4);
  }
  .own a {
    display: inline-block;
    margin-inline-end: var(--gap-6);
    padding-block: var(--gap-3);
  }
  summary {
    align-items: center;
    cursor: pointer;
    display: inline-flex;
    font-size: var(--size-2);
    min-block-size: var(--target);
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }
`;
