// Keeps what is written down in a form on this device until the server has it. Each row has a mark of its own, made here
// once: a double tap or a row sent again is the same row. The form names where rows go; the page has a place for what is
// said, for what is lacking, and a list of what was written last.
(function () {
  'use strict';

  const AGAIN = 8000;
  const PATIENCE = 30000;
  const CALM = 1200;

  function recall(key) {
    try {
      return localStorage.getItem(key);
    } catch (e) {
      return null;
    }
  }

  function remember(key, value) {
    try {
      localStorage.setItem(key, value);
    } catch (e) {
      // Without storage the queue lasts as long as the page.
    }
  }

  function mark() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return Array.from(bytes, b => b.toString(16).padStart(2, '0')).join('');
  }

  // page: words(fields) says a row, lacks(fields) what it lacks, stamp(fields) adds to it, clear() readies the form for the
  // next one, refill(fields) puts a refused one back; changed() hears of every change, kept(fields, outcome) of each row that
  // came, takenBack(sentAs) of each that went.
  window.footingQueue = function (name, page) {
    const form = document.getElementById('log');
    const said = document.getElementById('said');
    const fault = document.getElementById('fault');
    const last = document.getElementById('last');
    let token = form.elements._csrf.value;
    let sending = false;
    let spare = [];

    function rows() {
      const text = recall(name);
      return text === null ? spare : JSON.parse(text);
    }

    function setRows(changed) {
      spare = changed;
      remember(name, JSON.stringify(changed));
      page.changed?.();
    }

    function tell(strong, text, sentAs) {
      const p = document.createElement('p');
      const lead = document.createElement('strong');
      lead.textContent = strong;
      p.append(lead, ' ' + text);
      if (sentAs) {
        p.append(button('Take back', 'Take back: ' + text, () => takeBack(sentAs, text)));
      }
      said.replaceChildren(p);
    }

    function button(label, called, action) {
      const made = document.createElement('button');
      made.type = 'button';
      made.className = 'button';
      made.textContent = label;
      made.setAttribute('aria-label', called);
      made.addEventListener('click', action);
      return made;
    }

    const item = sentAs => last.querySelector('[data-sent-as="' + sentAs + '"]');

    function line(sentAs, text) {
      let shown = item(sentAs);
      if (!shown) {
        shown = document.createElement('li');
        shown.dataset.sentAs = sentAs;
        last.prepend(shown);
        document.getElementById('none')?.remove();
      }
      const span = document.createElement('span');
      span.textContent = text;
      shown.replaceChildren(span, button('Take back', 'Take back: ' + text, () => takeBack(sentAs, text)));
    }

    function fresh() {
      form.elements.sentAs.value = mark();
    }

    function submitted(event) {
      event.preventDefault();
      const fields = Object.fromEntries(new FormData(form));
      delete fields._csrf;
      page.stamp?.(fields);
      if (rows().some(r => r.sentAs === fields.sentAs) || item(fields.sentAs)) {
        return;
      }
      const lacking = page.lacks(fields);
      fault.textContent = lacking;
      if (lacking) {
        fault.scrollIntoView({ block: 'center' });
        return;
      }
      setRows(rows().concat([fields]));
      line(fields.sentAs, page.words(fields));
      tell('On this device.', page.words(fields), fields.sentAs);
      page.clear(fields);
      // A second tap of the same hand is the same row.
      setTimeout(fresh, CALM);
      send();
    }

    async function post(address, fields) {
      const stop = new AbortController();
      const timer = setTimeout(() => stop.abort(), PATIENCE);
      try {
        return await fetch(address, {
          method: 'POST', body: new URLSearchParams(Object.assign({}, fields, { _csrf: token })),
          headers: { Accept: 'application/json' }, signal: stop.signal, redirect: 'manual'
        });
      } finally {
        clearTimeout(timer);
      }
    }

    // The page was open for too long: its token is taken from a fresh one.
    async function renew() {
      const answer = await fetch(form.dataset.page, { redirect: 'manual', cache: 'no-store' });
      const found = answer.ok
          && new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('#log [name=_csrf]');
      token = found ? found.value : token;
      return Boolean(found);
    }

    async function send() {
      if (sending || rows().length === 0) {
        return;
      }
      sending = true;
      try {
        while (rows().length > 0) {
          if (!await sendFirst(rows()[0])) {
            break;
          }
        }
      } catch (e) {
        waiting();
      } finally {
        sending = false;
      }
    }

    // False if the rest must wait.
    async function sendFirst(fields) {
      let answer = await post(form.dataset.entry, fields);
      if (answer.status === 403 && await renew()) {
        answer = await post(form.dataset.entry, fields);
      }
      if (answer.status !== 200 && answer.status !== 422) {
        waiting(answer.type === 'opaqueredirect' ? 'Give the password again to send it.' : '');
        return false;
      }
      const outcome = await answer.json();
      if (rows().some(r => r.sentAs === fields.sentAs && r.takenBack)) {
        const back = await post(form.dataset.undo, { sentAs: fields.sentAs });
        setRows(back.ok ? rows().filter(r => r.sentAs !== fields.sentAs) : rows());
        return back.ok;
      }
      if (outcome.fault) {
        setRows(rows().filter(r => r.sentAs !== fields.sentAs));
        refused(fields, outcome.fault);
      } else {
        page.kept?.(fields, outcome);
        setRows(rows().filter(r => r.sentAs !== fields.sentAs));
        line(outcome.sentAs, outcome.said);
        tell('Kept.', outcome.said + (outcome.look ? '. Look at it: ' + outcome.look + '.' : ''), outcome.sentAs);
      }
      return true;
    }

    function waiting(why) {
      const open = rows().filter(r => !r.takenBack);
      if (open.length > 0) {
        const many = open.length === 1 ? page.words(open[0]) : open.length + ' rows';
        tell('On this device, not sent yet.',
            many + '. ' + (why || 'It is sent when the line is back; this page may be closed.'), open[open.length - 1].sentAs);
      }
    }

    // Nothing typed is lost: what can't be taken stands in the form again.
    function refused(fields, why) {
      item(fields.sentAs)?.remove();
      page.refill(fields);
      fresh();
      said.replaceChildren();
      fault.textContent = why;
      fault.scrollIntoView({ block: 'center' });
    }

    async function takeBack(sentAs, text) {
      const before = rows();
      if (before.some(r => r.sentAs === sentAs)) {
        // It may have come although no answer did, so it is sent once more and taken back then.
        setRows(before.map(r => r.sentAs === sentAs ? Object.assign({}, r, { takenBack: true }) : r));
        send();
      } else {
        try {
          const answer = await post(form.dataset.undo, { sentAs });
          if (!answer.ok) {
            throw new Error(String(answer.status));
          }
        } catch (e) {
          tell('Not taken back:', 'the line is down. ' + text, sentAs);
          return;
        }
      }
      item(sentAs)?.remove();
      page.takenBack?.(sentAs);
      page.changed?.();
      tell('Taken back.', text);
    }

    function start() {
      last.querySelectorAll('li:not(.undone)').forEach(shown =>
        line(shown.dataset.sentAs, shown.querySelector('span').textContent));
      rows().filter(r => !r.takenBack).forEach(r => line(r.sentAs, page.words(r)));
      fresh();
      waiting();
      send();
    }

    form.addEventListener('submit', submitted);
    addEventListener('online', send);
    document.addEventListener('visibilitychange', () => document.hidden || send());
    setInterval(send, AGAIN);
    return { start, rows, line, form, token: () => token, renew };
  };

  window.footingQueue.recall = recall;
  window.footingQueue.remember = remember;
  window.footingQueue.mark = mark;
})();
