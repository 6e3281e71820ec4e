/** What an upload asks before it goes on: whether this is her host, whether this is the folder. */
import { underBase } from '#ui/site/base.ts';
import type { HostQuestion } from '#hosting/progress.ts';
import { hostingWords } from '#words/words.ts';
import type { Frame } from '../../models/frame.ts';
import { SureForm } from '../SureForm.tsx';

type Props = { readonly frame: Frame; readonly question: HostQuestion };

export function HostQuestions({ frame, question }: Props) {
  const words = hostingWords(frame.lang);
  const action = underBase('/bench/publish/host/begin/');
  if (question.about === 'host-key') {
    const { type, fingerprint } = question.key;
    return (
      <div class="warning" role="status">
        <p>{words.newHost}</p>
        <dl class="facts">
          <div>
            <dt>{words.fingerprint}</dt>
            <dd>
              <code>{fingerprint}</code>
            </dd>
          </div>
          <div>
            <dt>{words.keyType}</dt>
            <dd>{type}</dd>
          </div>
        </dl>
        <SureForm action={action} sure={words.trustSure} button={words.trust}>
          <input type="hidden" name="ask" value="host-key" />
          <input type="hidden" name="fingerprint" value={fingerprint} />
        </SureForm>
      </div>
    );
  }
  const { folder, names, count } = question;
  return (
    <div class="warning" role="status">
      <p>{words.foreign(folder)}</p>
      <p>{words.foreignSome(count)}</p>
      <ul>
        {names.map((name) => (
          <li>
            <bdi>{name}</bdi>
          </li>
        ))}
      </ul>
      <SureForm action={action} sure={words.foreignSure} button={words.foreignSend}>
        <input type="hidden" name="ask" value="folder" />
        <input type="hidden" name="folder" value={folder} />
      </SureForm>
    </div>
  );
}
