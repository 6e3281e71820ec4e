/** The script of the page of steps: keys, taps and pedals, the place kept, the screen awake, her clock. */
import {
  answered,
  beginWalking,
  decide,
  goTo,
  isUnsaved,
  keptOf,
  nextSave,
  passTime,
  readKept,
  tick,
  unanswered,
  type Answer,
  type Walking,
} from '../../models/steps/walking.ts';
import { keepAwake } from './awake.client.ts';
import { keepOnDevice, keptOnDevice } from './device.client.ts';
import { showPlace } from './show.client.ts';
import type { WalkData } from './walkData.ts';

/** How long after a save that was lost the next one is tried, ms. */
const AGAIN_MS = 5_000;
/** How often the clock is looked at, ms; and how much of it waits for the next step's save, s. */
const CLOCK_MS = 5_000;
const MINUTE_S = 60;

/** Where her clock runs, as long as the window is open. */
const RUNS = 'bench-clock';

/** Keys that press what the keyboard is on. */
const PRESSES = [' ', 'Enter'];

const WAYS: Readonly<Record<string, 1 | -1>> = {
  PageDown: 1,
  ArrowRight: 1,
  ' ': 1,
  Enter: 1,
  PageUp: -1,
  ArrowLeft: -1,
};

const form = document.querySelector<HTMLFormElement>('[data-walk]');
const data = document.getElementById('walk-data');
if (form !== null && data !== null) walkThrough(form, JSON.parse(data.textContent ?? '') as WalkData);

function walkThrough(form: HTMLFormElement, walk: WalkData): void {
  const part = <Found extends HTMLElement>(name: string): Found | null =>
    document.querySelector<Found>(`[data-${name}]`);
  const put = (name: string, text: string): void => {
    const found = part(name);
    // Told again only where it says something else: a screen reader reads every change aloud.
    if (found !== null && found.textContent !== text) found.textContent = text;
  };
  let walking: Walking = beginWalking(
    walk.total,
    walk.book,
    readKept(keptOnDevice(walk.subject), walk.digest),
    () => walk.elsewhere,
  );
  let opened = true;
  let sending = false;
  let again = 0;

  /** A stop that the address names is only looked at: her place stays where it is until she goes on from there. */
  const named = Number(document.querySelector('[data-place]')?.getAttribute('data-place'));
  let lookedAt = new URLSearchParams(location.search).has('step') && Number.isInteger(named) ? named : null;
  const here = (): Walking => (lookedAt === null ? walking : goTo(walking, lookedAt));

  function set(next: Walking): void {
    walking = next;
    keepOnDevice(walk.subject, isUnsaved(walking) ? JSON.stringify(keptOf(walking, walk.digest)) : null);
    show();
    void send();
  }

  function move(next: Walking): void {
    if (next.place === here().place) return;
    opened = false;
    lookedAt = null;
    set(next);
    put('aloud', showPlace(walk, walking.place));
  }

  function show(): void {
    showPlace(walk, here().place);
    const { line, elsewhere } = walking;
    const left = opened && !isUnsaved(walking) && walking.place > 0 ? walk.words.leftOff : '';
    const standing = isUnsaved(walking)
      ? walk.words.saving
      : walking.book.version > 0
        ? walk.words.saved
        : '';
    put('line', line === 'lost' ? walk.words.lost : line === 'refused' ? '' : left !== '' ? left : standing);
    part('line')?.classList.toggle('warning', line === 'lost');
    const other = part('elsewhere');
    if (other !== null) other.hidden = elsewhere === null;
    if (elsewhere !== null) put('elsewhere-text', elsewhere.text);
    const seconds = walk.seconds + timed + walking.seconds;
    put('minutes', walk.words.minutes.replace('{minutes}', String(Math.floor(seconds / MINUTE_S))));
  }

  /** Seconds that were handed in since the page was loaded. */
  let timed = 0;

  async function send(): Promise<void> {
    if (sending) return;
    const next = nextSave(walking, () => crypto.randomUUID());
    if (next === null) return;
    walking = next;
    const { pending } = next;
    keepOnDevice(walk.subject, JSON.stringify(keptOf(walking, walk.digest)));
    sending = true;
    clearTimeout(again);
    const answer = await sendSave(form.action, walk, next);
    sending = false;
    if (answer === null) {
      again = window.setTimeout(() => void send(), AGAIN_MS);
      walking = unanswered(walking);
      show();
      return;
    }
    if (answer.outcome !== 'refused') timed += pending.seconds;
    if (answer.outcome === 'refused') refuse(answer.text === '' ? walk.words.refused : answer.text);
    set(answered(walking, answer));
  }

  function refuse(text: string): void {
    put('refused-text', text);
    const found = part('refused');
    if (found !== null) found.hidden = false;
  }

  form.addEventListener('submit', (event) => {
    const button = event.submitter;
    event.preventDefault();
    if (!(button instanceof HTMLElement)) return;
    const { tick: at, go } = button.dataset;
    if (at !== undefined) move(tick(here(), Number(at)));
    else if (go !== undefined) move(goTo(walking, Number(go)));
    else move(goTo(walking, here().place + ('back' in button.dataset ? -1 : 1)));
  });
  for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-stop-link]')) {
    link.addEventListener('click', (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey) return;
      event.preventDefault();
      move(goTo(walking, walk.stops[Number(link.dataset['stopLink'])] ?? 0));
      link.closest('details')?.removeAttribute('open');
      window.scrollTo(0, 0);
    });
  }
  document.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const way = WAYS[event.key];
    // Space and Enter stay what they are on a button or a link.
    const onControl =
      event.target instanceof Element && event.target.closest('button, a, summary, input') !== null;
    if (way === undefined || (PRESSES.includes(event.key) && onControl)) return;
    event.preventDefault();
    move(goTo(walking, here().place + way));
  });
  for (const whose of ['theirs', 'mine'] as const) {
    part(whose)?.addEventListener('click', () => {
      if (whose === 'theirs') lookedAt = null;
      set(decide(walking, whose));
    });
  }
  window.addEventListener('online', () => void send());

  const clock = part<HTMLButtonElement>('clock');
  let lookedMs: number | null = null;
  const look = (): void => {
    if (lookedMs === null) return;
    const nowMs = performance.now();
    walking = passTime(walking, (nowMs - lookedMs) / 1000);
    lookedMs = nowMs;
    keepOnDevice(walk.subject, JSON.stringify(keptOf(walking, walk.digest)));
    show();
    if (walking.seconds >= MINUTE_S) void send();
  };
  const run = (running: boolean): void => {
    look();
    lookedMs = running ? performance.now() : null;
    sessionStorage.setItem(RUNS, running ? walk.subject : '');
    clock?.setAttribute('aria-pressed', String(running));
    if (clock !== null) clock.textContent = running ? walk.words.pause : walk.words.start;
    if (!running) void send();
  };
  clock?.addEventListener('click', () => run(lookedMs === null));
  window.addEventListener('pagehide', look);
  window.setInterval(look, CLOCK_MS);

  const standing = part('standing');
  if (standing !== null) standing.hidden = false;
  // A page that was loaded anew goes on as it was; one opened later begins with the clock still.
  if (clock !== null && sessionStorage.getItem(RUNS) === walk.subject) run(true);
  keepAwake((awake) => put('awake', awake ? walk.words.awake : walk.words.notAwake));
  show();
  void send();
}

/** null where nothing came back that could be read. */
async function sendSave(
  address: string,
  { subject, digest }: WalkData,
  { book, pending }: NonNullable<ReturnType<typeof nextSave>>,
): Promise<Answer | null> {
  try {
    const response = await fetch(address, {
      method: 'POST',
      headers: { accept: 'application/json' },
      body: new URLSearchParams({
        ...{ subject, digest, save: pending.save },
        version: String(book.version),
        place: String(pending.place),
        seconds: String(pending.seconds),
      }),
    });
    if ((response.headers.get('content-type') ?? '').startsWith('application/json'))
      return (await response.json()) as Answer;
    // A page that says why: not let in any more, or something broken that may pass.
    return response.status >= 500 ? null : { outcome: 'refused', text: '' };
  } catch {
    return null;
  }
}
