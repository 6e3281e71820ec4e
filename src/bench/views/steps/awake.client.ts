/** Keeps the screen on while the page is looked at (W3C Screen Wake Lock), where the browser can. */

/** @param say told whether the screen stays on, now and at each change */
export function keepAwake(say: (awake: boolean) => void): void {
  if (!('wakeLock' in navigator)) {
    say(false);
    return;
  }
  const ask = async (): Promise<void> => {
    try {
      await navigator.wakeLock.request('screen');
      say(true);
    } catch {
      // Refused, as on a battery that is nearly empty.
      say(false);
    }
  };
  // A browser lets go of it whenever the page isn't seen.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void ask();
  });
  void ask();
}
