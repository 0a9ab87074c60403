// Answers for the pages of the field: from the server where there is a line, else what was kept of them last. Nothing that
// is sent passes here.
(function () {
  'use strict';

  const CACHE = 'footing-field';
  const PATIENCE = 5000;

  self.addEventListener('install', () => self.skipWaiting());
  self.addEventListener('activate', event => event.waitUntil(self.clients.claim()));

  self.addEventListener('fetch', event => {
    const asked = event.request;
    const page = asked.mode === 'navigate' || /\.(js|css|svg)$/.test(new URL(asked.url).pathname);
    if (asked.method === 'GET' && asked.cache !== 'no-store' && page && asked.url.startsWith(self.location.origin)) {
      event.respondWith(answered(asked));
    }
  });

  async function answered(asked) {
    const kept = await caches.open(CACHE);
    const late = new Promise((take, refuse) => setTimeout(() => refuse(new Error('late')), PATIENCE));
    try {
      const answer = await Promise.race([fetch(asked), late]);
      if (answer.status === 200 && !answer.redirected) {
        await kept.put(asked, answer.clone());
      }
      return answer;
    } catch (e) {
      return await kept.match(asked, { ignoreSearch: true, ignoreVary: true }) || Response.error();
    }
  }
})();
