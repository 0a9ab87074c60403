// Runs of a trial written down in the field. The browser keeps this page, so that it opens without a line; queue.js keeps
// the runs until the server has them. Without scripts the form is sent as forms are.
(function () {
  'use strict';

  const form = document.getElementById('log');
  const place = document.getElementById('place');
  const value = document.getElementById('value');
  const pad = document.getElementById('pad');
  const last = document.getElementById('last');
  const SENT = 'footing-field-sent-' + form.dataset.name;
  const CACHE = 'footing-field';
  const NUMBER = /^[-−]?\d+([.,]\d*)?$/;

  // What came to the server since the page was last fetched from it; an old page doesn't know of it.
  function sent() {
    return JSON.parse(footingQueue.recall(SENT) || '{}');
  }

  function setSent(all) {
    footingQueue.remember(SENT, JSON.stringify(all));
  }

  const planned = which => Array.from(place.options).find(o => o.value === which);

  function words(fields) {
    const option = planned(fields.place);
    const gave = fields.winner === 'even' ? 'even'
      : fields.winner ? form.querySelector('[name=winner][value=' + fields.winner + ']').parentElement.textContent.trim() + ' won'
      : fields.value + (form.dataset.unit ? ' ' + form.dataset.unit : '');
    return (option ? option.dataset.words : 'Run') + ': ' + gave;
  }

  function lacks(fields) {
    if (!fields.place) {
      return 'Choose which run it is.';
    }
    if (!value) {
      return fields.winner ? '' : 'Say who won.';
    }
    return NUMBER.test(fields.value.trim()) ? '' : 'Enter what the run gave, as a number.';
  }

  function stamp(fields) {
    fields.made = new Date().toISOString();
  }

  function clear() {
    form.querySelectorAll('[name=winner]:checked').forEach(r => { r.checked = false; });
    form.elements.note.value = '';
    if (value) {
      value.value = '';
    }
    document.getElementById('now').scrollIntoView({ block: 'start' });
  }

  function refill(fields) {
    Object.entries(fields).filter(([name]) => name !== 'sentAs' && name !== 'made').forEach(([name, text]) => {
      form.elements[name].value = text;
    });
    show();
  }

  function done() {
    return new Set([
      ...Array.from(last.querySelectorAll('li[data-place]:not(.undone)'), li => li.dataset.place),
      ...queue.rows().filter(r => !r.takenBack).map(r => r.place),
      ...Object.values(sent()).map(s => s.place)
    ]);
  }

  // Moves on to the next open run once the one that is chosen is written down.
  function changed() {
    const written = done();
    const covered = new Set(photos ? photos.places() : []);
    for (const option of place.options) {
      option.textContent = (written.has(option.value) ? '✓ ' : covered.has(option.value) ? 'photo, ' : '') + option.dataset.words;
    }
    if (place.value === '' || written.has(place.value)) {
      const next = Array.from(place.options).find(o => o.value && !written.has(o.value) && !covered.has(o.value))
        || Array.from(place.options).find(o => o.value && !written.has(o.value));
      place.value = next ? next.value : '';
    }
    show();
  }

  function show() {
    const chosen = planned(place.value);
    document.getElementById('now').textContent = chosen && chosen.value ? chosen.dataset.words : 'All planned runs are written down';
  }

  function kept(fields, outcome) {
    const all = sent();
    all[fields.sentAs] = { place: fields.place, said: outcome.said };
    setSent(all);
    keepPage();
  }

  function takenBack(sentAs) {
    const all = sent();
    delete all[sentAs];
    setSent(all);
    keepPage();
  }

  // The value of a photo, once somebody has looked at it, is entered as if it were typed.
  function use(which, number) {
    place.value = which;
    value.value = number;
    show();
    document.getElementById('now').scrollIntoView({ block: 'start' });
  }

  function press(key) {
    value.value = key === '⌫' ? value.value.slice(0, -1)
      : key === '.' && value.value.includes('.') ? value.value
      : (value.value + key).slice(0, value.maxLength);
  }

  function makePad() {
    for (const key of ['1', '2', '3', '4', '5', '6', '7', '8', '9', '.', '0', '⌫']) {
      const made = document.createElement('button');
      made.type = 'button';
      made.textContent = key;
      made.setAttribute('aria-label', key === '⌫' ? 'delete the last' : key === '.' ? 'point' : key);
      made.addEventListener('click', () => press(key));
      pad.append(made);
    }
    pad.hidden = false;
    // The keys below take the place of the phone's own.
    value.inputMode = 'none';
  }

  // The page and what it is made of, as they are now.
  async function keepPage() {
    if (!('caches' in window)) {
      return false;
    }
    const parts = Array.from(document.querySelectorAll('script[src], link[href], img[src]'), e => e.src || e.href);
    try {
      await (await caches.open(CACHE)).addAll([...new Set([form.dataset.page, ...parts])]);
      return true;
    } catch (e) {
      return false;
    }
  }

  async function prepare() {
    const told = document.getElementById('offline');
    if (!('serviceWorker' in navigator)) {
      told.textContent = 'What you write down stays on this device until it is sent. Leave this page open while there is no'
        + ' line: a browser keeps pages only of an address that begins with https, or of the machine itself.';
      return;
    }
    try {
      await navigator.serviceWorker.register(form.dataset.worker);
      await navigator.serviceWorker.ready;
      const has = await keepPage() || await (await caches.open(CACHE)).match(form.dataset.page, { ignoreVary: true });
      told.textContent = has ? 'This page now opens without a line too.' : '';
    } catch (e) {
      told.textContent = '';
    }
  }

  for (const option of place.options) {
    option.dataset.words = option.textContent;
  }
  const queue = footingQueue('footing-field-' + form.dataset.name, { words, lacks, stamp, clear, refill, changed, kept, takenBack });
  let photos = null;
  const known = sent();
  last.querySelectorAll('li').forEach(li => { delete known[li.dataset.sentAs]; });
  setSent(known);
  Object.entries(known).forEach(([sentAs, s]) => queue.line(sentAs, s.said));
  if (pad) {
    makePad();
  }
  place.addEventListener('change', show);
  queue.start();
  if (document.getElementById('photos')) {
    photos = footingPhotos('footing-photos-' + form.dataset.name, {
      unit: form.dataset.unit, place: () => place.value, words: which => planned(which)?.dataset.words || 'Run', changed, use
    }, queue);
  }
  changed();
  prepare();
})();
