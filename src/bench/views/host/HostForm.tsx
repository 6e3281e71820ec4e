/** The form of a host's settings. What is secret goes in and never comes out. */
import type { ComponentChildren } from 'preact';
import { underBase } from '#ui/site/base.ts';
import type { HostField } from '#words/hosting.ts';
import { hostingWords } from '#words/words.ts';
import type { HostPage } from '../../models/hostSheet.ts';
import type { TypedHost } from '../../publish/hostForm.ts';

type Props = { readonly page: HostPage };

export function HostForm({ page }: Props) {
  const { frame, standing, attempt } = page;
  const { settings } = standing;
  const words = hostingWords(frame.lang);
  const values: TypedHost = attempt?.typed ?? {
    host: settings?.host ?? '',
    port: String(settings?.port ?? 22),
    user: settings?.user ?? '',
    folder: settings?.folder ?? '',
  };
  const field = (name: HostField, label: string, hint: string | null, input: ComponentChildren) => (
    <Field page={page} name={name} label={label} hint={hint}>
      {input}
    </Field>
  );
  const marks = (name: HostField, hasHint: boolean) => marksOf(page, name, hasHint);
  return (
    <section aria-labelledby="settings">
      <h2 id="settings">{words.settings}</h2>
      <p class="quiet">{words.settingsLead}</p>
      <Problems page={page} />
      <form
        class="hand"
        method="post"
        action={underBase('/bench/publish/host/')}
        encType="multipart/form-data"
        autoComplete="off"
      >
        <input type="hidden" name="revision" value={settings?.revision ?? ''} />
        <div class="fields">
          {field(
            'host',
            words.host,
            words.hostHint,
            <input
              {...marks('host', true)}
              value={values.host}
              maxLength={253}
              required
              spellcheck={false}
            />,
          )}
          {field(
            'port',
            words.port,
            null,
            <input {...marks('port', false)} value={values.port} inputMode="numeric" maxLength={5} />,
          )}
          {field(
            'user',
            words.user,
            null,
            <input
              {...marks('user', false)}
              value={values.user}
              autoComplete="username"
              maxLength={100}
              required
              spellcheck={false}
            />,
          )}
          {field(
            'folder',
            words.folder,
            words.folderHint,
            <input
              {...marks('folder', true)}
              value={values.folder}
              autoComplete="off"
              maxLength={500}
              required
              spellcheck={false}
            />,
          )}
        </div>
        {field(
          'password',
          words.password,
          settings === null ? null : settings.secretKind === 'key' ? words.keyKept : words.passwordKept,
          <input
            {...marks('password', settings !== null)}
            type="password"
            maxLength={1000}
            autoComplete="new-password"
          />,
        )}
        <details open={attempt?.problems.some((one) => one.field === 'key') === true}>
          <summary>{words.orKey}</summary>
          {field(
            'key',
            words.key,
            null,
            <textarea {...marks('key', false)} rows={4} spellcheck={false} autoComplete="off" />,
          )}
          <label>
            {words.keyFile}
            <input type="file" name="key-file" />
          </label>
          <label>
            {words.passphrase}
            <input type="password" name="passphrase" maxLength={1000} autoComplete="new-password" />
          </label>
        </details>
        <button class="main" type="submit">
          {words.save}
        </button>
      </form>
    </section>
  );
}

const problemOf = ({ attempt }: HostPage, name: HostField) =>
  attempt?.problems.find(({ field }) => field === name) ?? null;

function marksOf(page: HostPage, name: HostField, hasHint: boolean) {
  const problem = problemOf(page, name);
  const described = [hasHint ? `${name}-hint` : '', problem === null ? '' : `${name}-bad`].filter(Boolean);
  return {
    id: name,
    name,
    'aria-invalid': problem === null ? undefined : true,
    'aria-describedby': described.length === 0 ? undefined : described.join(' '),
  };
}

type FieldProps = Props & {
  readonly name: HostField;
  readonly label: string;
  readonly hint: string | null;
  readonly children: ComponentChildren;
};

function Field({ page, name, label, hint, children }: FieldProps) {
  const words = hostingWords(page.frame.lang);
  const problem = problemOf(page, name);
  return (
    <div class="field">
      <label for={name}>{label}</label>
      {children}
      {hint !== null && (
        <span class="hint quiet" id={`${name}-hint`}>
          {hint}
        </span>
      )}
      {problem !== null && (
        <p class="bad" id={`${name}-bad`}>
          {words.formTroubles[problem.trouble.code]}
        </p>
      )}
    </div>
  );
}

/** All of it at the head, each leading to its field. */
function Problems({ page }: Props) {
  const { attempt, frame } = page;
  if (attempt === null) return null;
  const words = hostingWords(frame.lang);
  return (
    <div class="warning" role="alert">
      <p>{words.formTrouble}</p>
      <ul>
        {attempt.problems.map(({ field, trouble }) => {
          const text = words.formTroubles[trouble.code];
          return <li>{field === null ? text : <a href={`#${field}`}>{text}</a>}</li>;
        })}
      </ul>
    </div>
  );
}
