/** The form that puts a backup in the book's place. */
import type { Frame } from '../models/frame.ts';

export function RestoreForm({ frame: { words } }: { frame: Frame }) {
  const { keep } = words;
  return (
    <form method="post" action="/bench/keep/restore/" encType="multipart/form-data">
      <label>
        {keep.restoreFile}
        <input type="file" name="backup" accept=".sqlite" required />
      </label>
      <label>
        <input type="checkbox" name="sure" value="yes" required /> {keep.restoreSure}
      </label>
      <button type="submit">{keep.restoreButton}</button>
    </form>
  );
}
