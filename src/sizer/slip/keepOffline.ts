/** Lets the slip page open again without a network. */

/**
 * Registers the worker for this page's own path and has it keep what the page is made of. It never
 * sees the order, which stands behind the #. A browser without workers goes without.
 * @param path of the slip page
 * @param worker address of the worker's script
 */
export async function keepOffline(path: string, worker: string): Promise<void> {
  if (!('serviceWorker' in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register(worker, { scope: path });
    await untilActive(registration);
    const loaded = performance.getEntriesByType('resource').map(({ name }) => name);
    const own = loaded.filter(
      (address) => address.startsWith(`${location.origin}/`) && !address.endsWith('.json'),
    );
    registration.active?.postMessage({ keep: [path, ...own] });
  } catch {
    // Forbidden or full: the slip is still there while there is a network.
  }
}

function untilActive(registration: ServiceWorkerRegistration): Promise<void> {
  return new Promise((resolve) => {
    const worker = registration.installing ?? registration.waiting;
    if (worker === null) {
      resolve();
      return;
    }
    worker.addEventListener('statechange', () => {
      if (worker.state === 'activated' || worker.state === 'redundant') resolve();
    });
  });
}
