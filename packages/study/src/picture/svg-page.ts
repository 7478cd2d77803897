/** Paper and ink by day and by night; what is the tool's own voice in plum. */
const STYLE = `
    .paper { fill: #f6f3ec } .ink { stroke: #1e2a32 } .word { fill: #1e2a32 } .quiet { fill: #55606a } .hair { stroke: #55606a }
    .full { fill: #1e2a32; stroke: #1e2a32 } .open { fill: #f6f3ec; stroke: #1e2a32 } .voice { fill: #6b3f6e; stroke: #6b3f6e }
    @media (prefers-color-scheme: dark) {
      .paper { fill: #14191d } .ink { stroke: #ece7dc } .word { fill: #ece7dc } .quiet { fill: #a9b0b5 } .hair { stroke: #a9b0b5 }
      .full { fill: #ece7dc; stroke: #ece7dc } .open { fill: #14191d; stroke: #ece7dc } .voice { fill: #d6a8d8; stroke: #d6a8d8 }
    }
    text { font-family: Seravek, 'Gill Sans Nova', Ubuntu, Calibri, 'DejaVu Sans', sans-serif; font-variant-numeric: tabular-nums; stroke: none }
`;

export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** A coordinate with one decimal: a tenth of a pixel is nothing. */
export function at(value: number): string {
  return String(Number(value.toFixed(1)));
}

export function written(x: number, y: number, text: string, look: string, size = 16, anchor = 'start'): string {
  return `<text class="${look}" x="${at(x)}" y="${at(y)}" font-size="${size}" text-anchor="${anchor}">${escaped(text)}</text>`;
}

export function stroke(x1: number, y1: number, x2: number, y2: number, look: string, width: number): string {
  return `<line class="${look}" x1="${at(x1)}" y1="${at(y1)}" x2="${at(x2)}" y2="${at(y2)}" stroke-width="${width}"/>`;
}

export function dot(x: number, y: number, look: string, radius: number): string {
  return `<circle class="${look}" cx="${at(x)}" cy="${at(y)}" r="${radius}" stroke-width="1.2"/>`;
}

/** A lozenge that stands on its corner. */
export function lozenge(x: number, y: number, look: string, radius: number): string {
  const [left, right, top, bottom] = [at(x - radius), at(x + radius), at(y - radius), at(y + radius)];
  return `<path class="${look}" d="M${left} ${at(y)}L${at(x)} ${top}L${right} ${at(y)}L${at(x)} ${bottom}Z"/>`;
}

/** A number with so many decimals and a true minus sign; never "-0". */
export function plain(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** Decimals that show a width with two digits. */
export function decimalsFor(width: number): number {
  return width > 0 ? Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(width)))) : 2;
}

/** Round values across a span, about as many as wanted: steps of one, two or five. */
export function roundValues(low: number, high: number, wanted: number): number[] {
  const raw = (high - low) / wanted;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= raw * 0.999)!;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, place) => Number(((first + place) * step).toPrecision(12)));
}

/** A page with its name, what it shows in words, and where it comes from. */
export function svgPage(
  { width, height, name, what, from }: { width: number; height: number; name: string; what: string; from: string },
  parts: readonly string[],
): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${at(height)}" width="${width}" height="${at(height)}" role="img" aria-labelledby="name what">
  <title id="name">${escaped(name)}</title>
  <desc id="what">${escaped(what)}</desc>
  <metadata>${escaped(from)}</metadata>
  <style>${STYLE}  </style>
  <rect class="paper" width="${width}" height="${at(height)}"/>
  ${parts.join('\n  ')}
</svg>
`;
}
