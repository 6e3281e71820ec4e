/** Who may come in: the passphrase for elsewhere. */
import { underBase } from '#ui/site/base.ts';
import { LEAST_LENGTH, MOST_LENGTH } from '../access/passphrase.ts';
import type { Frame } from '../models/frame.ts';

type Props = {
  readonly frame: Frame;
  readonly isSet: boolean;
  /** The passphrase is set only at the machine itself. */
  readonly here: boolean;
  readonly saved: boolean;
};

export function AccessView({ frame: { words }, isSet, here, saved }: Props) {
  const { access } = words;
  return (
    <>
      {saved && (
        <p class="good" role="status">
          {access.saved}
        </p>
      )}
      <p>{access.here}</p>
      <p>{isSet ? access.with : access.without}</p>
      {!here && <p class="quiet">{access.onlyHere}</p>}
      {here && (
        <form method="post" action={underBase('/bench/access/passphrase/')}>
          <input type="text" name="username" value="bench" autoComplete="username" hidden />
          <label>
            {access.passphrase}
            <input
              type="password"
              name="passphrase"
              minLength={LEAST_LENGTH}
              maxLength={MOST_LENGTH}
              autoComplete="new-password"
              required
            />
          </label>
          <p class="quiet">{access.hint}</p>
          <button type="submit">{isSet ? access.change : access.set}</button>
        </form>
      )}
      {here && isSet && (
        <form method="post" action={underBase('/bench/access/passphrase/')}>
          <input type="hidden" name="remove" value="yes" />
          <button type="submit">{access.remove}</button>
        </form>
      )}
    </>
  );
}
