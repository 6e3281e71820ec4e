/** The form that puts a backup in the book's place. */
import { underBase } from '#ui/site/base.ts';
import type { Frame } from '../models/frame.ts';
import { SureForm } from './SureForm.tsx';

type Props = {
  readonly frame: Frame;
  /** `markOf` the harm in a backup that she has been told of; null where there was none to tell. */
  readonly told?: string | null;
};

export function RestoreForm({ frame: { words }, told = null }: Props) {
  const { keep } = words;
  return (
    <SureForm
      action={underBase('/bench/keep/restore/')}
      sure={told === null ? keep.restoreSure : keep.harmedSure}
      button={keep.restoreButton}
      upload
    >
      <label>
        {told === null ? keep.restoreFile : keep.harmedFile}
        <input type="file" name="backup" accept=".sqlite" required />
      </label>
      {told !== null && <input type="hidden" name="told" value={told} />}
    </SureForm>
  );
}
