/** The headers of the public files, from the same `_headers` file that static hosts read. */

export type HeaderRule = {
  /** Path, with `*` at its end for everything below. */
  readonly path: string;
  readonly headers: readonly (readonly [name: string, value: string])[];
};

/** Reads a `_headers` file: a path at the start of a line, its headers indented below; `#` begins a comment. */
export function readHeaders(text: string): HeaderRule[] {
  const rules: { path: string; headers: [string, string][] }[] = [];
  for (const line of text.split(/\r?\n/)) {
    if (line.trim() === '' || line.trimStart().startsWith('#')) continue;
    if (!/^\s/.test(line)) {
      rules.push({ path: line.trim(), headers: [] });
      continue;
    }
    const [, name, value] = /^\s+([\w-]+):\s*(.*)$/.exec(line) ?? [];
    if (name !== undefined && value !== undefined)
      rules.at(-1)?.headers.push([name.toLowerCase(), value.trim()]);
  }
  return rules;
}

/** Headers for a path: of every rule that covers it, a later rule's over an earlier one's. */
export function headersFor(rules: readonly HeaderRule[], path: string): Map<string, string> {
  const covering = rules.filter((rule) =>
    rule.path.endsWith('*') ? path.startsWith(rule.path.slice(0, -1)) : path === rule.path,
  );
  return new Map(covering.flatMap(({ headers }) => headers));
}
