/** Starts the board in its place on the bench's page. */
import { render } from 'preact';
import type { BoardInput } from './model/input.ts';
import { BoardApp } from './parts/BoardApp.tsx';

const place = document.getElementById('bead-board');
const data = document.getElementById('board-input');
if (place !== null && data !== null) {
  place.replaceChildren();
  const input = JSON.parse(data.textContent ?? '') as BoardInput;
  render(
    <BoardApp
      input={input}
      sizesScript={place.dataset['sizes'] ?? ''}
      previewPage={place.dataset['preview'] ?? ''}
    />,
    place,
  );
}
