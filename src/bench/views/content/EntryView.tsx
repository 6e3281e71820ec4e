/** The form of an entry with what goes beside it: of a part its drawing and ten in a row, of a new one its short name. */
import type { ComponentChildren } from 'preact';
import type { EntrySheet } from '../../models/content/editEntry.ts';
import type { FormFace } from '../../models/content/formFace.ts';
import type { NewSheet } from '../../models/content/newEntry.ts';
import { typedQuery } from '../../models/content/typedQuery.ts';
import { ContentForm } from './ContentForm.tsx';
import { Drawn, ShortName, Ten } from './PartFields.tsx';

type EntryProps = {
  readonly sheet: EntrySheet;
  readonly face: FormFace;
  /** What became of the save before; null where the page was just opened. */
  readonly said: string | null;
  /** Where the form is posted to. */
  readonly action: `/${string}`;
  readonly preview?: { readonly path: `/${string}`; readonly name: string };
  /** Behind its fields. */
  readonly children?: ComponentChildren;
};

export function EntryView({ sheet, face, said, action, preview, children }: EntryProps) {
  return (
    <>
      {said !== null && (
        <p class="good" role="status">
          {said}
        </p>
      )}
      <ContentForm sheet={sheet} face={face} action={action} preview={preview} after={children}>
        <Beside sheet={sheet} face={face} />
      </ContentForm>
    </>
  );
}

type NewProps = Omit<EntryProps, 'said' | 'sheet' | 'preview' | 'children'> & { readonly sheet: NewSheet };

export function NewView({ sheet, face, action }: NewProps) {
  return (
    <ContentForm sheet={sheet} face={face} action={action} after={<ShortName typed={sheet.id} face={face} />}>
      <Beside sheet={sheet} face={face} />
    </ContentForm>
  );
}

function Beside({ sheet, face }: Pick<EntryProps, 'sheet' | 'face'>) {
  if (sheet.key.kind !== 'component') return null;
  return (
    <div class="beside">
      <Drawn query={typedQuery(sheet.nodes)} face={face} />
      <Ten face={face} />
    </div>
  );
}
