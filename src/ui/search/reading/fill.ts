/** Fills `{name}` in a sentence of the vocabulary. */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replace(/\{(\w+)\}/g, (_, name: string) => values[name] ?? '');
