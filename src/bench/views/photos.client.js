/** Photographs: a part drawn with the pointer goes into the fields, and an upload tells how far it is. */
const FIELDS = ['left', 'top', 'width', 'height'];
const LEAST = 0.05;

for (const form of document.querySelectorAll('[data-crop]')) {
  const picture = form.querySelector('.crop-picture');
  const path = picture.querySelector('path');
  const details = form.querySelector('details');
  const input = (name) => form.elements.namedItem(name);
  const draw = ([left, top, width, height]) =>
    path.setAttribute('d', `M0 0H1V1H0ZM${left} ${top}v${height}h${width}v${-height}Z`);
  const written = () => FIELDS.map((name) => Number(input(name).value.replace(',', '.')) / 100);
  const clamp = (value) => Math.min(1, Math.max(0, value));
  const point = ({ clientX, clientY }) => {
    const box = picture.getBoundingClientRect();
    return [clamp((clientX - box.left) / box.width), clamp((clientY - box.top) / box.height)];
  };
  let from = null;
  details.addEventListener('toggle', () => picture.classList.toggle('drawn', details.open));
  picture.classList.toggle('drawn', details.open);
  picture.addEventListener('pointerdown', (event) => {
    if (!details.open) return;
    event.preventDefault();
    picture.setPointerCapture(event.pointerId);
    from = point(event);
  });
  picture.addEventListener('pointermove', (event) => {
    if (from === null) return;
    const to = point(event);
    const part = [0, 1].map((axis) => Math.min(from[axis], to[axis]));
    part.push(...[0, 1].map((axis) => Math.abs(from[axis] - to[axis])));
    if (part[2] < LEAST || part[3] < LEAST) return;
    draw(part);
    FIELDS.forEach((name, at) => (input(name).value = String(Math.round(part[at] * 1000) / 10)));
  });
  for (const end of ['pointerup', 'pointercancel']) picture.addEventListener(end, () => (from = null));
  const drawWritten = () => {
    const part = written();
    if (part.every((value) => value >= 0 && value <= 1)) draw(part);
  };
  form.addEventListener('input', drawWritten);
  // Something may stand there already: written before this script had come, or sent back to be mended.
  drawWritten();
}

/** The form goes by itself where anything stands in the way of the progress. */
const upload = document.querySelector('[data-progress]');
upload?.addEventListener('submit', (event) => {
  event.preventDefault();
  const said = upload.querySelector('[data-sending]');
  const button = upload.querySelector('button');
  const request = new XMLHttpRequest();
  said.hidden = false;
  button.disabled = true;
  request.upload.addEventListener('progress', ({ loaded, total }) => {
    said.querySelector('progress').value = loaded / total;
  });
  request.addEventListener('load', () => {
    const page = new DOMParser().parseFromString(request.responseText, 'text/html');
    const trouble = page.querySelector('[data-trouble]');
    if (trouble === null && request.status < 400) return location.reload();
    // What was typed and chosen stays; only what is wrong is said.
    document.querySelector('[data-trouble]')?.remove();
    upload.before(trouble ?? page.querySelector('[role=alert]') ?? '');
    said.hidden = true;
    button.disabled = false;
  });
  request.addEventListener('error', () => upload.submit());
  request.open('POST', upload.action);
  request.send(new FormData(upload));
});
