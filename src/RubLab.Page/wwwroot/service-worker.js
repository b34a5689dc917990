// Serves the page's own files from one complete, versioned set, so that it works without the server and never mixes
// two versions. What the API answers is not touched here.
self.importScripts('./service-worker-assets.js');

const prefix = 'rublab-page-';
const cacheName = prefix + self.assetsManifest.version;
const scope = self.registration.scope;
const addresses = new Set(self.assetsManifest.assets.map(asset => new URL(asset.url, scope).href));
const start = new URL('index.html', scope).href;

self.addEventListener('install', event => event.waitUntil(keepAll()));
self.addEventListener('activate', event => event.waitUntil(dropOthers().then(() => self.clients.claim())));
self.addEventListener('message', event => {
  if (event.data === 'take-over') {
    self.skipWaiting();
  }
});
self.addEventListener('fetch', event => {
  const address = addressOf(event.request);
  if (address) {
    event.respondWith(answer(address, event.request));
  }
});

// Every file is checked against its hash: one that belongs to another version fails the whole installation.
async function keepAll() {
  const cache = await caches.open(cacheName);
  await cache.addAll(self.assetsManifest.assets.map(asset =>
    new Request(new URL(asset.url, scope), { integrity: asset.hash, cache: 'no-cache' })));
}

async function dropOthers() {
  const names = await caches.keys();
  await Promise.all(names.filter(name => name.startsWith(prefix) && name !== cacheName).map(name => caches.delete(name)));
}

function addressOf(request) {
  if (request.method !== 'GET') {
    return null;
  }
  const { origin, pathname } = new URL(request.url);
  const address = origin + pathname;
  if (address === scope) {
    return start;
  }
  return addresses.has(address) ? address : null;
}

async function answer(address, request) {
  const cache = await caches.open(cacheName);
  return await cache.match(address, { ignoreVary: true }) ?? fetch(request);
}
