import { css } from 'lit';

export const courseStyle = css`
  .who {
    font-size: var(--size-1);
    margin-block-end: 0;
  }
  .add {
    border-block: 1px solid var(--hairline);
    margin-block: var(--gap-4) var(--gap-6);
    padding-block: var(--gap-4);
  }
  .add h2 {
    font-size: var(--size-2);
  }
  .done {
    align-items: center;
    display: flex;
    flex-wrap: wrap;
    gap: 0 var(--gap-4);
    min-block-size: var(--target);
  }
  .done p {
    margin: 0;
  }
  .parts {
    display: grid;
    gap: var(--gap-6) var(--gap-8);
    grid-template-columns: minmax(0, 1fr);
  }
  @media (min-width: 64rem) {
    .parts {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }
`;
