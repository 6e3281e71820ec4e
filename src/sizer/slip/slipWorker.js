/*
 * Answers for the slip page when there is no network. It keeps the page and
 * what it is made of; the order stands behind the # and never reaches it.
 */
const CACHE = 'slip-1';

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('message', (event) => {
  const { keep } = event.data ?? {};
  if (Array.isArray(keep)) event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(keep)));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin } = new URL(request.url);
  if (request.method === 'GET' && origin === self.location.origin) event.respondWith(answer(request));
});

/** The network first, so that a mended page is seen; what was kept where there is none. */
async function answer(request) {
  try {
    return await fetch(request);
  } catch (error) {
    const kept = await caches.match(request, { ignoreSearch: true });
    if (kept === undefined) throw error;
    return kept;
  }
}
