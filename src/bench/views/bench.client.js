/**
 * The bench's only script. Every page works without it; it prints, remembers
 * ticks on this device, takes dropped files, and fills in an order that came
 * with the address.
 */
for (const button of document.querySelectorAll('[data-print]')) {
  button.addEventListener('click', () => window.print());
}

/** Where she is stands in sight, also in a row that is wider than the screen. */
for (const here of document.querySelectorAll('.bar [aria-current]')) {
  here.parentElement.scrollLeft = here.offsetLeft - here.parentElement.clientWidth / 2 + here.offsetWidth / 2;
}

/**
 * Whether a field was set while this script was still on its way: what it does as one is set, it then does at once.
 * A page that was gone back to is filled in by the browser, and stays as it was left.
 */
const isFresh = performance.getEntriesByType('navigation')[0]?.type === 'navigate';
const wasSet = (field) => isFresh && isOtherThanBuilt(field);

function isOtherThanBuilt(field) {
  if (field instanceof HTMLSelectElement) {
    const built = [...field.options].findIndex((option) => option.defaultSelected);
    return field.selectedIndex !== Math.max(0, built);
  }
  if (field.type === 'checkbox' || field.type === 'radio') return field.checked !== field.defaultChecked;
  return 'defaultValue' in field && field.value !== field.defaultValue;
}

/** Ticks of a card are kept on this device until the card has others. */
const card = document.querySelector('[data-ticks]');
if (card !== null) {
  const key = `bench-ticks-${card.getAttribute('data-ticks')}`;
  const boxes = [...card.querySelectorAll('input[type=checkbox]')];
  const stored = (localStorage.getItem(key) ?? '').split(' ');
  const early = boxes.filter(wasSet);
  for (const box of boxes) box.checked = stored.includes(box.name) || early.includes(box);
  const keep = () => {
    const ticked = boxes.filter((box) => box.checked).map((box) => box.name);
    localStorage.setItem(key, ticked.join(' '));
  };
  if (early.length > 0) keep();
  card.addEventListener('change', keep);
}

/** Files dropped anywhere on the page go into the form's field. */
const form = document.querySelector('[data-drop]');
if (form !== null) {
  const field = form.querySelector('input[type=file]');
  document.addEventListener('dragover', (event) => {
    event.preventDefault();
    form.classList.add('over');
  });
  document.addEventListener('dragleave', () => form.classList.remove('over'));
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    form.classList.remove('over');
    if (event.dataTransfer?.files.length) field.files = event.dataTransfer.files;
  });
}

/** A slip's address opened at the bench: the order stands behind the #, which no server sees. */
const text = document.querySelector('[data-from-fragment]');
if (text !== null && location.hash.startsWith('#claspwise')) {
  text.value = `${text.value}\n${location.hash.slice(1)}`.trim();
  history.replaceState(null, '', location.pathname);
}

/** A colour that is chosen is meant: the tick that says there is none goes by itself. */
for (const tick of document.querySelectorAll('[data-without]')) {
  const colour = document.getElementById(tick.dataset.without);
  const mean = () => (tick.checked = false);
  if (wasSet(colour)) mean();
  colour.addEventListener('input', mean);
}

/** A part is drawn anew as it is typed, and its kind brings the fields that belong to it. */
const content = document.querySelector('[data-content]');
const drawn = content?.querySelector('[data-drawn]');
if (content && drawn) {
  const RESTS_MS = 200;
  const show = content.querySelector('[data-show]');
  show.hidden = true;
  const draw = () => {
    const typed = [...new FormData(content)].filter(
      ([name, value]) => value !== '' && !/^(seen|digest|do)/.test(name),
    );
    const [address] = drawn.src.split('?');
    drawn.src = `${address}?${new URLSearchParams(typed)}`;
  };
  const reshow = (field) => {
    // Where the page was, and at the field that was changed.
    sessionStorage.setItem('bench-reshown', field.id);
    content.requestSubmit(show);
  };
  let waiting = 0;
  content.addEventListener('input', ({ target }) => {
    clearTimeout(waiting);
    waiting = setTimeout(draw, RESTS_MS);
    if (target.matches('[data-reshow]')) reshow(target);
  });
  const reshown = sessionStorage.getItem('bench-reshown');
  sessionStorage.removeItem('bench-reshown');
  if (reshown !== null) document.getElementById(reshown)?.focus();
  const early = [...content.elements].filter(wasSet);
  if (early.length > 0) draw();
  const kind = early.find((field) => field.matches('[data-reshow]'));
  if (kind !== undefined) reshow(kind);
}

/** A publishing that runs: how far it is, until it has ended. */
const publishing = document.querySelector('[data-publishing]');
if (publishing !== null) {
  const part = (name) => publishing.querySelector(name);
  const look = async () => {
    const state = await fetch(publishing.dataset.publishing).then(
      (answer) => answer.json(),
      () => null,
    );
    if (state?.running === false) return location.reload();
    if (state !== null) {
      // Told again only where it says something else: a screen reader reads every change aloud.
      if (part('[data-step]').textContent !== state.step) part('[data-step]').textContent = state.step;
      part('[data-count]').textContent = state.count;
      part('progress').value = state.share;
    }
    setTimeout(look, 400);
  };
  setTimeout(look, 400);
}
