/**
 * The bench's only script. Every page works without it; it prints, remembers
 * ticks on this device, takes dropped files, and fills in an order that came
 * with the address.
 */
for (const button of document.querySelectorAll('[data-print]')) {
  button.addEventListener('click', () => window.print());
}

/** Ticks of a card are kept on this device until the card has others. */
const card = document.querySelector('[data-ticks]');
if (card !== null) {
  const key = `bench-ticks-${card.getAttribute('data-ticks')}`;
  const boxes = [...card.querySelectorAll('input[type=checkbox]')];
  const stored = (localStorage.getItem(key) ?? '').split(' ');
  for (const box of boxes) box.checked = stored.includes(box.name);
  card.addEventListener('change', () => {
    const ticked = boxes.filter((box) => box.checked).map((box) => box.name);
    localStorage.setItem(key, ticked.join(' '));
  });
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
  text.value = location.hash.slice(1);
  history.replaceState(null, '', location.pathname);
}
