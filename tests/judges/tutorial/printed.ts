/** What stands on the paper of a tutorial: its lists and its steps as text, drawings left out. */

export type PrintedStrand = {
  /** Numbers and what follows them, line by line. */
  readonly list: readonly { readonly numbers: string; readonly text: string }[];
  readonly steps: readonly string[];
};

export type Printed = {
  readonly tools: readonly string[];
  /** What, how many, how many to spare. */
  readonly amounts: readonly (readonly string[])[];
  readonly strands: readonly PrintedStrand[];
};

const text = (html: string): string =>
  html
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('&amp;', '&')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('\u00a0', ' ')
    .trim();

/** Contents of every element of a kind, in their order; none of that kind within another. */
const within = (html: string, element: string): string[] =>
  [...html.matchAll(new RegExp(`<${element}\\b[^>]*>([\\s\\S]*?)</${element}>`, 'g'))].map(
    ([, inner = '']) => inner,
  );

const lists = (html: string, list: 'ul' | 'ol'): string[] =>
  within(html, list).flatMap((one) => within(one, 'li'));

/** Reads the sheet as it is rendered. */
export function printedOf(html: string): Printed {
  const [before = '', ...strands] = html
    .replaceAll(/<svg[\s\S]*?<\/svg>/g, '')
    .split('<section class="taught">');
  const needed = before.split('class="needed"')[1] ?? '';
  const [amounts = ''] = within(needed, 'tbody');
  return {
    tools: lists(needed, 'ul').map(text),
    amounts: within(amounts, 'tr').map((row) => [...within(row, 'th'), ...within(row, 'td')].map(text)),
    strands: strands.map((strand) => ({
      list: lists(strand, 'ul').map((line) => {
        const [, numbers = '', rest = ''] = /<span class="numbers">(.*?)<\/span>([\s\S]*)/.exec(line) ?? [];
        return { numbers: text(numbers), text: text(rest) };
      }),
      steps: lists(strand, 'ol').map(text),
    })),
  };
}
