/** Shows an open preview anew once a file of the content has changed. */
const ASK_EVERY_MS = 700;
const bar = document.querySelector('[data-state]');

async function look() {
  if (document.visibilityState === 'visible') {
    const answer = await fetch(bar.dataset.state).catch(() => null);
    const mark = answer?.ok ? await answer.text() : bar.dataset.mark;
    if (mark !== bar.dataset.mark) return location.reload();
  }
  setTimeout(look, ASK_EVERY_MS);
}
if (bar !== null) setTimeout(look, ASK_EVERY_MS);
