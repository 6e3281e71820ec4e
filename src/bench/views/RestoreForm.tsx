/** The form that puts a backup in the book's place. */
import { underBase } from '#ui/site/base.ts';
import type { Frame } from '../models/frame.ts';
import { SureForm } from './SureForm.tsx';

export function RestoreForm({ frame: { words } }: { frame: Frame }) {
  const { keep } = words;
  return (
    <SureForm
      action={underBase('/bench/keep/restore/')}
      sure={keep.restoreSure}
      button={keep.restoreButton}
      upload
    >
      <label>
        {keep.restoreFile}
        <input type="file" name="backup" accept=".sqlite" required />
      </label>
    </SureForm>
  );
}
