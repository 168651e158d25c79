// Keeps every file of the app, so that it works without a network from the first load on. The build fills in the
// version, a hash over all files, and their list. It answers from what it kept and asks nobody else.
const CACHE = 'backboard-__VERSION__';
const FILES = ['__FILES__'];

self.addEventListener('install', (event) => {
  const fresh = FILES.map((file) => new Request(new URL(file, self.registration.scope), { cache: 'reload' }));
  event.waitUntil(caches.open(CACHE).then((cache) => cache.addAll(fresh)));
});

self.addEventListener('message', (event) => {
  if (event.data === 'change over') self.skipWaiting();
});

// A tab that still shows the version before goes on until its person changes over: its files stay as long.
const takeOver = async () => {
  const others = (await caches.keys()).filter((key) => key.startsWith('backboard-') && key !== CACHE);
  for (const key of others.slice(0, -1)) await caches.delete(key); // oldest first
  await self.clients.claim();
};
self.addEventListener('activate', (event) => event.waitUntil(takeOver()));

const answer = async (request) => {
  const cache = await caches.open(CACHE);
  // module scripts carry an Origin header and the server may answer Vary: Origin
  const options = { ignoreSearch: request.mode === 'navigate', ignoreVary: true };
  const kept = await cache.match(request, options);
  if (kept) return kept;
  const older = request.mode === 'navigate' ? undefined : await caches.match(request, options);
  if (older) return older;
  const start = request.mode === 'navigate' ? await cache.match(new URL('', self.registration.scope)) : undefined;
  return start ?? fetch(request);
};
self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'GET' && new URL(request.url).origin === self.location.origin)
    event.respondWith(answer(request));
});
