/** Every component in stringing order, grouped by section, each group with a box to tick. */
import type { BenchCardWords } from '#words/benchCard.ts';
import type { Format } from '#words/format.ts';
import type { Group, GroupPart } from '../../page/groups.ts';

type Props = {
  readonly strand: number;
  /** Whether there are others beside it. */
  readonly several: boolean;
  readonly groups: readonly Group[];
  readonly sections: Readonly<Record<string, string>>;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly format: Format;
};

export function SequenceTable({ strand, several, groups, sections, nameOf, words, format }: Props) {
  const { sequenceColumns: columns } = words;
  return (
    <table class="sequence">
      <caption>
        {words.sequence}
        {several && `: ${words.strand(strand + 1)}`}
      </caption>
      <thead>
        <tr>
          <th scope="col">{columns.section}</th>
          <th scope="col">{columns.what}</th>
          <th scope="col" class="number">
            {columns.count}
          </th>
          <th scope="col" class="number">
            {columns.running}
          </th>
        </tr>
      </thead>
      <tbody>
        {groups.map((group, at) => (
          <tr class={group.kind === 'strung' ? undefined : 'finding'}>
            <th scope="row">
              <label class="tick">
                <input type="checkbox" name={`row-${strand}-${at}`} />{' '}
                {group.section === null
                  ? words.kinds[group.kind]
                  : (sections[group.section] ?? group.section)}
              </label>
            </th>
            <td>
              {group.repeats > 1 && <b>{words.repeat(group.repeats)} </b>}
              {what(group, nameOf, words)}
            </td>
            <td class="number">{group.kind === 'strung' ? format.number(group.runningCount) : ''}</td>
            <td class="number">{format.fine(group.toMm)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function what({ parts, repeats }: Group, nameOf: Props['nameOf'], words: BenchCardWords): string {
  const text = parts.map((part) => partText(part, nameOf, words)).join(', ');
  return repeats > 1 && parts.length > 1 ? `[${text}]` : text;
}

function partText({ component, count }: GroupPart, nameOf: Props['nameOf'], words: BenchCardWords): string {
  const name = component === null ? words.kinds.loop : nameOf(component);
  return count > 1 ? `${count} ${name}` : name;
}
