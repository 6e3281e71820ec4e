/** The shop on a host elsewhere: the zip, how far an upload is, what it asks, what came of it, and the settings. */
import { underBase } from '#ui/site/base.ts';
import { formatDateTime } from '#words/format.ts';
import { hostingWords } from '#words/words.ts';
import type { HostPage } from '../../models/hostSheet.ts';
import type { Frame } from '../../models/frame.ts';
import { howFarSent } from '../../models/howFarSent.ts';
import { Running } from '../Running.tsx';
import type { HostStanding } from '../../publish/hostStanding.ts';
import { SureForm } from '../SureForm.tsx';
import { HostForm } from './HostForm.tsx';
import { HostQuestions } from './HostQuestions.tsx';

type Props = {
  readonly page: HostPage;
  /** What the address says was just done. */
  readonly done: string | null;
};

export function HostView({ page, done }: Props) {
  const { frame, standing, attempt } = page;
  const words = hostingWords(frame.lang);
  const { settings, progress, publishedAt } = standing;
  if (progress.state === 'running') {
    return (
      <Running far={howFarSent(progress, words)} words={words} asks="/bench/publish/host/progress.json" />
    );
  }
  return (
    <>
      {done === 'saved' && attempt === null && <Done text={words.saved} />}
      {done === 'removed' && <Done text={words.removed} />}
      <Outcome frame={frame} standing={standing} />
      <p>{words.lead}</p>
      <p>
        {publishedAt === null
          ? words.nothingPublished
          : words.published(formatDateTime(publishedAt, frame.lang))}
      </p>
      {publishedAt !== null && (
        <p>
          <a class="button" href={underBase('/bench/publish/shop.zip')}>
            {words.zip}
          </a>{' '}
          <span class="hint quiet">{words.zipHint}</span>
        </p>
      )}
      <section aria-labelledby="way">
        <h2 id="way">{words.way}</h2>
        {progress.state === 'asking' && settings !== null && (
          <HostQuestions frame={frame} question={progress.question} />
        )}
        {progress.state !== 'asking' && settings !== null && publishedAt !== null && <Send frame={frame} />}
        {settings === null || attempt !== null ? (
          <HostForm page={page} />
        ) : (
          <details>
            <summary>{words.changeSettings}</summary>
            <HostForm page={page} />
          </details>
        )}
      </section>
      {settings !== null && (
        <section class="danger" aria-labelledby="remove">
          <h2 id="remove">{words.remove}</h2>
          <p>{words.removeLead}</p>
          <SureForm
            action={underBase('/bench/publish/host/forget/')}
            sure={words.removeSure}
            button={words.removeButton}
          >
            <input type="hidden" name="what" value="all" />
          </SureForm>
        </section>
      )}
      <p>
        <a href={underBase('/bench/publish/')}>{words.back}</a>
      </p>
    </>
  );
}

const Done = ({ text }: { readonly text: string }) => (
  <p class="good" role="status">
    {text}
  </p>
);

function Send({ frame }: { readonly frame: Frame }) {
  const words = hostingWords(frame.lang);
  return (
    <form method="post" action={underBase('/bench/publish/host/begin/')}>
      <button class="main" type="submit">
        {words.send}
      </button>
      <label>
        <input type="checkbox" name="whole" value="yes" /> {words.resend}
        <span class="hint quiet">{words.resendHint}</span>
      </label>
    </form>
  );
}

function Outcome({ frame, standing }: { readonly frame: Frame; readonly standing: HostStanding }) {
  const words = hostingWords(frame.lang);
  const { progress, publishedAt } = standing;
  const { lang, format } = frame;
  if (progress.state === 'done') {
    const { at, sent, removed, seconds } = progress;
    const when = formatDateTime(at, lang);
    const nothing = sent === 0 && removed === 0;
    return (
      <div role="status">
        <p class="good">
          {nothing ? words.nothingToSend(when) : words.done(when, sent, removed, format.number(seconds, 1))}
        </p>
        {publishedAt !== progress.publishedAt && (
          <p>
            {words.there(formatDateTime(progress.publishedAt, lang))} {words.behind}
          </p>
        )}
      </div>
    );
  }
  if (progress.state !== 'failed') return null;
  const { trouble } = progress;
  return (
    <div class="warning" role="alert">
      <p>{words.failed(formatDateTime(progress.at, lang))}</p>
      <p>{words.trouble(trouble)}</p>
      {trouble.code === 'host-key-changed' && (
        <>
          <dl class="facts">
            <div>
              <dt>{words.knownPrint}</dt>
              <dd>
                <code>{trouble.known}</code>
              </dd>
            </div>
            <div>
              <dt>{words.gotPrint}</dt>
              <dd>
                <code>{trouble.got}</code>
              </dd>
            </div>
          </dl>
          <details>
            <summary>{words.forgetTitle}</summary>
            <SureForm
              action={underBase('/bench/publish/host/forget/')}
              sure={words.forgetSure}
              button={words.forget}
            />
          </details>
        </>
      )}
    </div>
  );
}
