/** Shows a place of the walk: its stop, its ticks, and what is at hand lit in the drawings. */
import type { WalkData } from './walkData.ts';

/** @returns what it says, for who doesn't see it */
export function showPlace(walk: WalkData, place: number): string {
  const stops = [...document.querySelectorAll<HTMLElement>('[data-stop]')];
  // The last of them stands where all is done.
  const last = stops.length - 1;
  const shown = place >= walk.total ? last : walk.stops.findLastIndex((from) => from <= place);
  for (const [at, stop] of stops.entries()) if (stop.hidden !== (at !== shown)) stop.hidden = at !== shown;
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-tick]')) showTick(button, place);
  const stop = stops[shown];
  const from = walk.stops[shown] ?? 0;
  const ticks = stop?.querySelectorAll('[data-tick]').length ?? 0;
  const count = stop?.querySelector('[data-count]') ?? null;
  if (count !== null)
    count.textContent = walk.words.count
      .replace('{done}', String(place - from))
      .replace('{of}', String(ticks));
  for (const link of document.querySelectorAll<HTMLElement>('[data-stop-link]')) {
    if (Number(link.dataset['stopLink']) === shown) link.setAttribute('aria-current', 'step');
    else link.removeAttribute('aria-current');
  }
  const back = document.querySelector<HTMLButtonElement>('[data-back]');
  const next = document.querySelector<HTMLButtonElement>('[data-next]');
  if (back !== null) back.disabled = place === 0;
  if (next !== null) next.disabled = place >= walk.total;
  light(walk, place);
  const current = stop?.querySelector<HTMLElement>('[aria-current]') ?? null;
  if (current !== null) scrollWithin(current);
  const said = [stop?.querySelector('.where')?.textContent, stop?.querySelector('.say')?.textContent];
  return [...said, current?.textContent].filter((text) => (text ?? '') !== '').join('. ');
}

/** Into sight in its own list; the page stays where it is. */
function scrollWithin(current: HTMLElement): void {
  const list = current.closest('ol');
  if (list === null) return;
  const [box, item] = [list.getBoundingClientRect(), current.getBoundingClientRect()];
  if (item.bottom > box.bottom) list.scrollTop += item.bottom - box.bottom + item.height;
  if (item.top < box.top) list.scrollTop -= box.top - item.top + item.height;
}

function showTick(button: HTMLButtonElement, place: number): void {
  const at = Number(button.dataset['tick']);
  button.setAttribute('aria-pressed', String(at < place));
  if (at === place) button.setAttribute('aria-current', 'step');
  else button.removeAttribute('aria-current');
}

function light({ ticks }: WalkData, place: number): void {
  const tick = ticks[place];
  for (const figure of document.querySelectorAll<HTMLElement>('[data-figure]')) {
    const isMeant = tick?.figures.includes(figure.dataset['figure'] ?? '') ?? true;
    figure.hidden = !isMeant;
    if (!isMeant) continue;
    for (const part of figure.querySelectorAll<SVGElement>('[data-bead], [data-part]')) {
      const { bead, part: name } = part.dataset;
      const { end = null, beads = null, hung = false } = tick?.lit ?? {};
      const isLit =
        bead === undefined
          ? name === end || (name === 'hung' && hung)
          : beads !== null && Number(bead) >= beads.first && Number(bead) <= beads.last;
      part.classList.toggle('lit', isLit);
    }
  }
}
