/** SVG written as text: short numbers, escaped words, elements. */

/** Characters that XML 1.0 forbids even as references (production 2, Char), and lone surrogates. */
const FORBIDDEN =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** `text` fit to stand in XML, as content or as an attribute's value. */
export function escapeXml(text: string): string {
  return text.replace(FORBIDDEN, '').replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? '');
}

/**
 * A number as short as it can be at that many decimals (0 to 4): `.5`, `-3`, `12.25`.
 * Throws on a value that isn't finite: it would make the drawing invalid.
 */
export function num(value: number, decimals = 2): string {
  if (!Number.isFinite(value)) throw new RangeError(`got ${value}, expected a finite number to draw`);
  const scale = 10 ** decimals;
  const rounded = Math.round(value * scale) / scale;
  if (rounded === 0) return '0';
  const text = String(rounded);
  if (text.startsWith('0.')) return text.slice(1);
  return text.startsWith('-0.') ? `-${text.slice(2)}` : text;
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** One element; numbers are shortened to hundredths, undefined attributes left out. `content` is markup already. */
export function element(name: string, attributes: Attributes, content = ''): string {
  let written = '';
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined) continue;
    written += ` ${key}="${typeof value === 'number' ? num(value) : escapeXml(value)}"`;
  }
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
}

/** Path data from points in drawing order, e.g. `M0 1L2 3Z`. */
export function polygon(points: readonly (readonly [number, number])[], closed = true): string {
  const path = points.map(([x, y], at) => `${at === 0 ? 'M' : 'L'}${pair(x, y)}`).join('');
  return closed ? `${path}Z` : path;
}

/** Two numbers of path data, with the space left out where a sign parts them. */
export function pair(x: number, y: number): string {
  const second = num(y);
  return `${num(x)}${second.startsWith('-') ? '' : ' '}${second}`;
}
