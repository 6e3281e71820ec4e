/** Every component in stringing order, grouped by section, each group with a box to tick. */
import type { BenchCardWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';
import type { Group } from '../../models/groups.ts';
import { groupText } from '../../models/groups.ts';

type Props = {
  readonly strand: number;
  /** Whether there are others beside it. */
  readonly several: boolean;
  readonly groups: readonly Group[];
  /** What the maker calls a section of this strand. */
  readonly sectionOf: (section: string) => string;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly format: Format;
};

export function SequenceTable({ strand, several, groups, sectionOf, nameOf, words, format }: Props) {
  const { sequenceColumns: columns } = words;
  const title = several ? `${words.sequence}: ${words.strand(strand + 1)}` : words.sequence;
  return (
    <div class="scroll" tabIndex={0} role="group" aria-label={title}>
      <table class="sequence">
        <caption>{title}</caption>
        <thead>
          <tr>
            <td></td>
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
          {groups.map((group, at) => {
            const section = group.section === null ? words.kinds[group.kind] : sectionOf(group.section);
            return (
              <tr class={group.kind === 'strung' ? undefined : 'finding'}>
                <td>
                  <input type="checkbox" name={`row-${strand}-${at}`} aria-label={`${section} ${at + 1}`} />
                </td>
                <th scope="row">
                  {group.section !== null && <b>{section}: </b>}
                  {group.repeats > 1 && <strong>{words.repeat(group.repeats)} </strong>}
                  {groupText(group, nameOf, words.kinds.loop)}
                </th>
                <td class="number">{group.kind === 'strung' ? format.number(group.runningCount) : ''}</td>
                <td class="number">{format.fine(group.toMm)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
