// Photos of runs: kept on this device until the server has them, each under a mark of its own so that one sent again is the
// same. What was read comes back with the picture it was read off, to be looked at before its value is written down.
(function () {
  'use strict';

  const AGAIN = 8000;
  const PATIENCE = 180000;

  // page: unit of the values, place() the run that is chosen, words(place), use(place, value), changed() hears of every change.
  window.footingPhotos = function (name, page, queue) {
    const section = document.getElementById('photos');
    const list = document.getElementById('photo-list');
    const covered = new Map();
    let sending = false;

    const opened = new Promise((take, refuse) => {
      const asked = indexedDB.open(name, 1);
      asked.onupgradeneeded = () => asked.result.createObjectStore('photos', { keyPath: 'sentAs' });
      asked.onsuccess = () => take(asked.result);
      asked.onerror = () => refuse(asked.error);
    });

    async function store(mode, work) {
      const base = await opened;
      return new Promise((take, refuse) => {
        const transaction = base.transaction('photos', mode);
        const asked = work(transaction.objectStore('photos'));
        transaction.oncomplete = () => take(asked.result);
        transaction.onerror = () => refuse(transaction.error);
      });
    }

    const waiting = async () => (await store('readonly', s => s.getAll())).sort((a, b) => a.made < b.made ? -1 : 1);

    function shown(photo) {
      let item = list.querySelector('[data-sent-as="' + photo.sentAs + '"]');
      if (!item) {
        item = document.createElement('li');
        item.dataset.sentAs = photo.sentAs;
        list.prepend(item);
      }
      return item;
    }

    function told(photo, text) {
      const p = document.createElement('p');
      p.textContent = page.words(photo.place) + (photo.part === 'print' ? '' : ', ' + photo.part + ' the turn') + '. ' + text;
      shown(photo).replaceChildren(p);
    }

    function came(photo, outcome) {
      told(photo, outcome.said);
      const item = shown(photo);
      for (const doubt of outcome.doubts) {
        const p = document.createElement('p');
        p.className = 'fault';
        p.textContent = doubt;
        item.append(p);
      }
      if (outcome.overlay) {
        const picture = document.createElement('img');
        picture.src = outcome.overlay;
        picture.alt = 'The photo with what was found drawn over it';
        const mend = document.createElement('a');
        mend.className = 'button';
        mend.href = outcome.overlay.replace(/\/overlay$/, '');
        mend.textContent = 'Point at it by hand';
        item.append(picture, mend);
      }
      if (outcome.value) {
        const use = document.createElement('button');
        use.type = 'button';
        use.className = 'button';
        use.textContent = 'Looked at: take ' + outcome.value + ' ' + page.unit;
        use.dataset.value = outcome.value;
        use.dataset.place = photo.place;
        item.append(use);
      }
    }

    async function taken(part, file) {
      const photo = { sentAs: footingQueue.mark(), place: page.place(), part, made: new Date().toISOString(), file };
      covered.set(photo.sentAs, photo.place);
      try {
        await store('readwrite', s => s.put(photo));
        told(photo, 'On this device, not sent yet.');
      } catch (e) {
        told(photo, 'This device has no room to keep it: leave the page open until it is sent.');
      }
      page.changed();
      send();
    }

    async function post(photo) {
      const stop = new AbortController();
      const timer = setTimeout(() => stop.abort(), PATIENCE);
      const { sentAs, place, part, made } = photo;
      try {
        return await fetch(section.dataset.photo + '?' + new URLSearchParams({ sentAs, place, part, made }), {
          method: 'POST', body: photo.file, redirect: 'manual', signal: stop.signal,
          headers: { 'Content-Type': 'application/octet-stream', 'X-XSRF-TOKEN': queue.token(), Accept: 'application/json' }
        });
      } finally {
        clearTimeout(timer);
      }
    }

    async function send() {
      if (sending) {
        return;
      }
      sending = true;
      try {
        for (const photo of await waiting()) {
          let answer = await post(photo);
          if (answer.status === 403 && await queue.renew()) {
            answer = await post(photo);
          }
          if (answer.status !== 200) {
            const unfit = answer.status === 413 || answer.status === 400;
            told(photo, unfit ? 'It can’t be taken, and stays on this device: 30 MB are the most.' : 'On this device, not sent yet.');
            if (unfit) {
              continue;
            }
            break;
          }
          const outcome = await answer.json();
          await store('readwrite', s => s.delete(photo.sentAs));
          came(photo, outcome);
        }
      } catch (e) {
        // No line: it is tried again.
      } finally {
        sending = false;
      }
    }

    list.addEventListener('click', event => {
      const use = event.target.closest('button[data-value]');
      if (use) {
        page.use(use.dataset.place, use.dataset.value);
      }
    });
    section.querySelectorAll('input[type=file]').forEach(input => input.addEventListener('change', () => {
      if (input.files.length > 0 && page.place()) {
        taken(input.dataset.part, input.files[0]);
      }
      input.value = '';
    }));
    section.hidden = false;
    waiting().then(all => {
      all.forEach(photo => {
        covered.set(photo.sentAs, photo.place);
        told(photo, 'On this device, not sent yet.');
      });
      page.changed();
      send();
    }).catch(() => {});
    addEventListener('online', send);
    setInterval(send, AGAIN);
    const before = Array.from(list.querySelectorAll('[data-place]'), item => item.dataset.place);
    return { places: () => [...before, ...covered.values()] };
  };
})();
