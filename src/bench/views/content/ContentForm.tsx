/** The form of an entry: what became of it first, then its fields, and one button that saves. */
import { underBase } from '#ui/site/base.ts';
import type { ComponentChildren } from 'preact';
import { BODY, type EntrySheet } from '../../models/content/editEntry.ts';
import type { FormFace } from '../../models/content/formFace.ts';
import { Notes } from './ContentField.tsx';
import { ContentFields } from './ContentFields.tsx';

type Props = {
  readonly sheet: EntrySheet;
  readonly face: FormFace;
  /** Where it is posted to. */
  readonly action: `/${string}`;
  /** Page of the shop that shows what is typed without a save; none where there is no such page. */
  readonly preview?: { readonly path: `/${string}`; readonly name: string } | undefined;
  /** Beside the first fields. */
  readonly children?: ComponentChildren;
  /** Behind the last. */
  readonly after?: ComponentChildren;
};

export function ContentForm({ sheet, face, action, preview, children, after }: Props) {
  const { words } = face;
  return (
    <>
      <Said sheet={sheet} face={face} />
      <form
        class="hand content"
        method="post"
        action={underBase(action)}
        noValidate
        data-content={sheet.key.kind}
      >
        {/* Enter in a field presses the first button there is. */}
        <button type="submit" name="do" value="save" class="first" tabIndex={-1} aria-hidden="true">
          {words.save}
        </button>
        <input type="hidden" name="digest" value={sheet.seen.digest} />
        <input type="hidden" name="seen" value={sheet.seen.data} />
        {sheet.body !== null && <input type="hidden" name="seen-body" value={sheet.seen.body} />}
        {children}
        <ContentFields nodes={sheet.nodes} face={face} />
        {sheet.body !== null && <Body text={sheet.body} face={face} />}
        {sheet.key.id === '' && after}
        <p class="row save">
          <button type="submit" class="main" name="do" value="save">
            {words.save}
          </button>
          {preview !== undefined && (
            <button type="submit" formAction={underBase(preview.path)} formTarget="_blank">
              {preview.name}
            </button>
          )}
        </p>
        {sheet.key.id !== '' && after}
      </form>
    </>
  );
}

function Body({ text, face }: { readonly text: string; readonly face: FormFace }) {
  const { guides } = face.words;
  return (
    <div class="field wide">
      <label for={`f-${BODY}`}>{guides.body}</label>
      <textarea id={`f-${BODY}`} name={BODY} rows={22} dir="auto" aria-describedby={`f-${BODY}-hint`}>
        {text}
      </textarea>
      <Notes of={BODY} face={face} hint={guides.bodyHint} />
    </div>
  );
}

/** What keeps it from being saved: the page's first word, which a screen reader is told. */
function Said({ sheet, face }: Pick<Props, 'sheet' | 'face'>) {
  const { words } = face;
  const { placed, clashes, notWritable } = sheet;
  if (notWritable !== null) {
    return (
      <p class="warning" role="alert">
        {words.notWritable(notWritable)}
      </p>
    );
  }
  if (clashes.length > 0) {
    return (
      <section class="warning" role="alert">
        <h2>{words.clash}</h2>
        <p>{words.clashLead}</p>
        <ul>
          {clashes.map(({ key }) => (
            <li>
              <a href={`#f-${key}`}>
                {key === BODY ? words.guides.body : face.label({ path: key.split('.') })}
              </a>
            </li>
          ))}
        </ul>
      </section>
    );
  }
  if (placed.own.length + placed.others.length === 0) return null;
  return (
    <section class="warning" role="alert">
      <h2>{words.wrong}</h2>
      <p>{words.wrongLead}</p>
      <ul>
        {placed.own.map(({ key, what, fix }) => (
          <li>
            {key === null ? what : <a href={`#f-${key}`}>{what}</a>} {key === null && fix}
          </li>
        ))}
      </ul>
      {placed.others.length > 0 && (
        <>
          <h3>{words.elsewhere}</h3>
          <ul>
            {placed.others.map(({ what, fix, place, href }) => (
              <li>
                {href === null ? place : <a href={underBase(href)}>{place}</a>}: {what} {fix}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
