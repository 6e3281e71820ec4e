/** Letting tablets in: the switch, a code to scan, the fingerprint to compare, and who is paired. */
import { renderSVG } from 'uqr';
import { underBase } from '#ui/site/base.ts';
import { formatDate, formatDateTime } from '#words/format.ts';
import { tabletWords, type TabletWords } from '#words/words.ts';
import { PAIRING_MINUTES } from '../book/devices.ts';
import type { Frame } from '../models/frame.ts';
import { fingerprintLines, type PairingCode, type TabletSheet } from '../models/tablets.ts';
import type { DoorState } from '../tablets/door.ts';

type Props = { readonly sheet: TabletSheet; readonly frame: Frame };

export function TabletsView({ sheet, frame }: Props) {
  const words = tabletWords(frame.lang);
  const { door, gone } = sheet;
  return (
    <>
      {gone && (
        <p class="good" role="status">
          {words.gone}
        </p>
      )}
      <p>{words.lead}</p>
      {door === null ? <p class="warning">{words.noServer}</p> : <Switch door={door} words={words} />}
      {door?.open === true && <Pairing sheet={sheet} door={door} words={words} />}
      {door?.open === true && <Certificate door={door} frame={frame} words={words} />}
      <Devices sheet={sheet} frame={frame} words={words} />
    </>
  );
}

/** One button is one form, all posted to the page itself. */
function Act({ act, label }: { readonly act: string; readonly label: string }) {
  return (
    <form method="post" action={underBase('/bench/tablets/')}>
      <button type="submit" name="act" value={act}>
        {label}
      </button>
    </form>
  );
}

function Switch({ door, words }: { readonly door: DoorState; readonly words: TabletWords }) {
  if (door.open) {
    return (
      <>
        <p class="good">{words.on(door.port)}</p>
        <Act act="off" label={words.switchOff} />
        <p class="quiet">{words.offHint}</p>
      </>
    );
  }
  return (
    <>
      {door.why === 'off' ? (
        <p>{words.off}</p>
      ) : (
        <p class="warning" role="alert">
          {door.why === 'port-taken' ? words.problems[door.why](door.port) : words.problems[door.why]}
        </p>
      )}
      <Act act="on" label={words.switchOn} />
      {door.why !== 'off' && <Act act="off" label={words.switchOff} />}
    </>
  );
}

type OpenDoor = DoorState & { readonly open: true };

function Pairing({
  sheet: { codes },
  door,
  words,
}: {
  readonly sheet: TabletSheet;
  readonly door: OpenDoor;
  readonly words: TabletWords;
}) {
  const [first, ...others] = codes;
  return (
    <section aria-labelledby="pair">
      <h2 id="pair">{words.pair}</h2>
      <p>{words.pairHint(PAIRING_MINUTES)}</p>
      {door.names.length === 0 && <p class="warning">{words.noAddress}</p>}
      {first !== undefined && (
        <>
          <p role="status">{words.codeIsUp}</p>
          <Code code={first} words={words} />
          <details>
            <summary>{words.noCamera}</summary>
            <p>{words.noCameraHint}</p>
            <p class="file">
              <code>{first.address}</code>
            </p>
          </details>
        </>
      )}
      <Act act="code" label={words.showCode} />
      {others.length > 0 && (
        <details>
          <summary>{words.others}</summary>
          <div class="codes">
            {others.map((code) => (
              <Code code={code} words={words} />
            ))}
          </div>
        </details>
      )}
      <p class="quiet">{words.elsewhereHint}</p>
    </section>
  );
}

function Code({
  code: { shown, address },
  words,
}: {
  readonly code: PairingCode;
  readonly words: TabletWords;
}) {
  return (
    <figure class="pairing-code">
      <div
        role="img"
        aria-label={words.codeLabel(shown)}
        dangerouslySetInnerHTML={{ __html: renderSVG(address, { ecc: 'M', border: 4 }) }}
      />
      <figcaption>{shown}</figcaption>
    </figure>
  );
}

function Certificate({
  door,
  frame,
  words,
}: {
  readonly door: OpenDoor;
  readonly frame: Frame;
  readonly words: TabletWords;
}) {
  return (
    <section aria-labelledby="certificate">
      <h2 id="certificate">{words.fingerprint}</h2>
      <p>{words.warning}</p>
      <p>
        {words.fingerprintLabel}
        <code class="fingerprint">
          {fingerprintLines(door.fingerprint).map((line) => (
            <span>{line}</span>
          ))}
        </code>
      </p>
      <p class="quiet">{words.lasts(formatDate(door.endsAt, frame.lang))}</p>
    </section>
  );
}

function Devices({ sheet: { devices }, frame: { lang }, words }: Props & { readonly words: TabletWords }) {
  return (
    <section aria-labelledby="devices">
      <h2 id="devices">{words.devices}</h2>
      {devices.length === 0 && <p>{words.none}</p>}
      <ul class="plain">
        {devices.map(({ id, name, pairedAt, seenAt }) => (
          <li class="device">
            <span>
              <bdi>
                <b>{name}</b>
              </bdi>
              , {words.paired(formatDateTime(pairedAt, lang))}, {words.seen(formatDateTime(seenAt, lang))}
            </span>
            <form method="post" action={underBase('/bench/tablets/')} class="inline">
              <input type="hidden" name="id" value={id} />
              <button type="submit" name="act" value="away" aria-label={words.sendAwayFor(name)}>
                {words.sendAway}
              </button>
            </form>
          </li>
        ))}
      </ul>
    </section>
  );
}
