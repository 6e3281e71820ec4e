/** Every component in stringing order, by section, each group with a box to tick and the numbers that the picture and the steps call it by. */
import type { End, Held } from '#core/instructions/held.ts';
import type { BenchCardWords } from '#words/words.ts';
import type { Format } from '#words/format.ts';
import { groupText, type Group, type GroupPart } from '#core/instructions/groups.ts';

type Props = {
  readonly strand: number;
  readonly groups: readonly Group[];
  readonly held: Readonly<Record<End, Held>>;
  /** What a pendant hangs on, from the wire down. */
  readonly rings: readonly string[];
  readonly sectionOf: (section: string) => string;
  readonly nameOf: (id: string) => string;
  readonly words: BenchCardWords;
  readonly format: Format;
};

export function StringingList(props: Props) {
  const { strand, groups, words, format } = props;
  const { number, what, runsTo } = words.listColumns;
  return (
    <div>
      <h2 id={`list-${strand}`}>{words.sequence}</h2>
      <ol class="sequence" aria-labelledby={`list-${strand}`}>
        <li class="heads" aria-hidden="true">
          <span />
          <span>{number}</span>
          <span>{what}</span>
          <span>{runsTo}</span>
        </li>
        {groups.map((group, at) => (
          <li class={group.kind === 'strung' ? undefined : 'finding'}>
            <label>
              <input type="checkbox" name={`row-${strand}-${at}`} />
              <span class="number">{numbersText(group, format)}</span>
              <span>{whatText(group, props)}</span>
              <span class="runs">{reachText(group, format)}</span>
            </label>
          </li>
        ))}
      </ol>
    </div>
  );
}

/** On paper the shop's unit alone, for want of room. */
function reachText({ toMm }: Group, format: Format) {
  const { lead, other } = format.rulerParts(toMm);
  return (
    <>
      {lead}
      {other !== '' && <span class="off-paper"> ({other})</span>}
    </>
  );
}

function numbersText({ numbers }: Group, format: Format): string {
  if (numbers === null) return '';
  const { first, last } = numbers;
  return first === last ? format.number(first) : `${format.number(first)}–${format.number(last)}`;
}

function whatText(group: Group, props: Props) {
  const { rings, sectionOf, nameOf, words } = props;
  const text = groupText(group, (part) => partText(part, props));
  if (group.kind === 'pendant') return <b>{words.hangs(text, rings.map(nameOf))}</b>;
  if (group.section === null) return text;
  return (
    <>
      <b>{sectionOf(group.section)}: </b>
      {group.repeats > 1 && <strong>{words.repeat(group.repeats)} </strong>}
      {text}
    </>
  );
}

function partText({ kind, component }: GroupPart, { held, nameOf, words }: Props): string {
  if (component === null) return words.loop;
  const name = nameOf(component);
  if (kind === 'other-half') return words.halves.other(name);
  return kind === 'clasp' && held.clasp.what === 'first-half' ? words.halves.first(name) : name;
}
