/** One field of a form of the content: its control by what it holds, its hint, and what is wrong in it. */
import type { JSX } from 'preact';
import { besides, type ValueNode, type ValuesNode } from '../../intake/contentForm/formTree.ts';
import { unitOf } from '../../intake/contentForm/writtenAs.ts';
import type { Choice, FormFace } from '../../models/content/formFace.ts';

type FieldProps<Node> = { readonly node: Node; readonly face: FormFace };

const idOf = (key: string): string => `f-${key}`;

/** Ids of what stands below a control, for readers who don't see it. */
function notes(key: string, face: FormFace, hint: string | null): string | undefined {
  const ids = [
    ...(hint === null ? [] : [`${idOf(key)}-hint`]),
    ...(face.now(key) === null ? [] : [`${idOf(key)}-now`]),
    ...(face.problems(key).length === 0 ? [] : [`${idOf(key)}-wrong`]),
  ];
  return ids.length === 0 ? undefined : ids.join(' ');
}

/** Hint, what somebody else wrote, and what is wrong. */
export function Notes({ of, face, hint }: { of: string; face: FormFace; hint: string | null }) {
  const { words } = face;
  const now = face.now(of);
  const wrong = face.problems(of);
  return (
    <>
      {hint !== null && (
        <small class="hint quiet" id={`${idOf(of)}-hint`}>
          {hint}
        </small>
      )}
      {now !== null && (
        <p class="differs" id={`${idOf(of)}-now`}>
          {words.now(now === '' ? words.nowNothing : now)}
        </p>
      )}
      {wrong.length > 0 && (
        <div class="bad" id={`${idOf(of)}-wrong`}>
          {wrong.map(({ what, fix }) => (
            <p>
              {what} {fix}
            </p>
          ))}
        </div>
      )}
    </>
  );
}

/** What every control has. */
function attributes({ key }: ValueNode | ValuesNode, face: FormFace, hint: string | null) {
  const wrong = face.problems(key).length > 0;
  return {
    id: idOf(key),
    name: key,
    'aria-describedby': notes(key, face, hint),
    ...(wrong && { 'aria-invalid': true }),
  };
}

/** Letters above which a text gets room for several lines, and those above which for many. */
const LINES_ABOVE = 120;
const STORY_ABOVE = 500;

export function ContentField({ node, face }: FieldProps<ValueNode>) {
  const hint = face.hint(node);
  const label = face.label(node);
  const unit = unitOf(node.shape, node.shown, face.currency);
  return (
    <div class={node.shape.kind === 'text' && node.shape.most > LINES_ABOVE ? 'field wide' : 'field'}>
      <label for={idOf(node.key)}>
        {label}
        {unit !== null && <small class="quiet"> ({unit})</small>}
      </label>
      <Control node={node} face={face} hint={hint} />
      <Notes of={node.key} face={face} hint={hint} />
    </div>
  );
}

function Control({ node, face, hint }: FieldProps<ValueNode> & { hint: string | null }): JSX.Element {
  const { shape, typed } = node;
  const own = attributes(node, face, hint);
  if (shape.kind === 'yesNo') return <Select node={node} face={face} own={own} choices={yesAndNo(face)} />;
  const chosen = ['oneOf', 'idOf', 'material'].includes(shape.kind);
  if (chosen) return <Select node={node} face={face} own={own} choices={face.choices(node)} />;
  if (shape.kind === 'colour' && /^(#[0-9a-f]{6})?$/.test(typed))
    return <Colour node={node} face={face} own={own} />;
  if (shape.kind === 'text' && shape.most > LINES_ABOVE) {
    return (
      <textarea {...own} rows={shape.most > STORY_ABOVE ? 9 : 2} dir="auto">
        {typed}
      </textarea>
    );
  }
  return <input {...own} type="text" value={typed} autocomplete="off" dir="auto" />;
}

type Own = ReturnType<typeof attributes>;

function yesAndNo({ words }: FormFace): readonly Choice[] {
  return [
    { value: 'yes', label: words.yes },
    { value: 'no', label: words.no },
  ];
}

/** A choice; what stands in the file and isn't among them is kept as one more. */
function Select({
  node,
  face,
  own,
  choices,
}: FieldProps<ValueNode> & { own: Own; choices: readonly Choice[] }) {
  const { words } = face;
  const { typed, fallback } = node;
  const { required, usual } = face.need(node);
  const usualChoice = choices.find(({ value }) => value === usual);
  const unsaid = usualChoice === undefined ? words.notSaid : words.asUsual(usualChoice.label);
  const known = typed === '' || choices.some(({ value }) => value === typed);
  const said = (choice: Choice): string =>
    choice.value === fallback && choice.value !== '' ? words.asUsual(choice.label) : choice.label;
  return (
    <select {...own} data-reshow={node.key === 'kind' ? '' : undefined}>
      {fallback === '' && (!required || typed === '') && (
        <option value="">{required ? words.choose : unsaid}</option>
      )}
      {choices.map((choice) => (
        <option value={choice.value} selected={choice.value === typed}>
          {said(choice)}
        </option>
      ))}
      {!known && (
        <option value={typed} selected>
          {typed}
        </option>
      )}
    </select>
  );
}

/** Shown where none is chosen: a control of colours can't be empty. */
const NO_COLOUR = '#808080';

function Colour({ node, face, own }: FieldProps<ValueNode> & { own: Own }) {
  const input = <input {...own} type="color" value={node.typed === '' ? NO_COLOUR : node.typed} />;
  // One that has to be chosen says so until it is, so that no bead comes out grey unasked.
  if (node.required && node.typed !== '') return input;
  return (
    <span class="row">
      {input}
      <label>
        <input
          type="checkbox"
          name={besides.without(node.key)}
          checked={node.typed === ''}
          data-without={idOf(node.key)}
        />{' '}
        {node.required ? face.words.colourToChoose : face.words.noColour}
      </label>
    </span>
  );
}

/** Several values: ticked where they are few and known, else typed. */
export function ContentValues({ node, face }: FieldProps<ValuesNode>) {
  const choices = face.choices(node);
  const hint = face.hint(node);
  const offered = <input type="hidden" name={besides.offered(node.key)} value="1" />;
  if (choices.length > 0) {
    const gone = node.typed.filter((one) => !choices.some(({ value }) => value === one));
    const all = [...choices, ...gone.map((value) => ({ value, label: value }))];
    return (
      <fieldset class="ticks" id={idOf(node.key)}>
        <legend>{face.label(node)}</legend>
        {offered}
        {all.map(({ value, label }) => (
          <label>
            <input type="checkbox" name={node.key} value={value} checked={node.typed.includes(value)} />{' '}
            {label}
          </label>
        ))}
        <Notes of={node.key} face={face} hint={hint} />
      </fieldset>
    );
  }
  const text = node.shape.kind === 'country' ? namesOf(node.typed, face).join(', ') : node.typed.join('\n');
  return (
    <div class="field wide">
      <label for={idOf(node.key)}>{face.label(node)}</label>
      {offered}
      <textarea {...attributes(node, face, hint)} rows={node.shape.kind === 'country' ? 2 : 3} dir="auto">
        {text}
      </textarea>
      <Notes of={node.key} face={face} hint={hint} />
    </div>
  );
}

const namesOf = (codes: readonly string[], { country }: FormFace): string[] => codes.map(country);
