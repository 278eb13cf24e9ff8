// Keeps the page's own files on the phone, a whole version at a time. What is recorded lies in IndexedDB, which nothing here
// touches: a newer version can neither lose nor change what is unsent.

// `self.FILES` = {version, paths}, written by the server from the files it serves; when a file changes, so does this.
importScripts('files.js');

const CACHE = 'field ' + self.FILES.version;

self.addEventListener('install', event => event.waitUntil((async () => {
  const cache = await caches.open(CACHE);
  // All or none: a version that did not come whole is not installed.
  await cache.addAll(self.FILES.paths.map(path => new Request(path, {cache: 'no-cache'})));
})()));

self.addEventListener('activate', event => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith('field ') && name !== CACHE) await caches.delete(name);
  await self.clients.claim();
})()));

self.addEventListener('message', event => event.data === 'take over' && self.skipWaiting());

self.addEventListener('fetch', event => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin || url.pathname.startsWith('/api/')) return;
  const path = event.request.mode === 'navigate' && url.pathname.startsWith('/field') ? '/field/' : url.pathname;
  if (!self.FILES.paths.includes(path)) return;
  event.respondWith((async () => (await caches.match(path, {cacheName: CACHE})) ?? fetch(event.request))());
});
