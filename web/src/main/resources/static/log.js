// Keeps what is written down on this device until the server has it. Each row has a mark of its own, made here once: a
// double tap or a row sent again is the same row. Without this script the form is sent as forms are.
(function () {
  'use strict';

  const form = document.getElementById('log');
  const said = document.getElementById('said');
  const fault = document.getElementById('fault');
  const last = document.getElementById('last');
  const QUEUE = 'footing-log-' + form.dataset.case;
  const MACHINE = 'footing-machine-' + form.dataset.case;
  const AGAIN = 8000;
  const PATIENCE = 30000;
  const CALM = 1200;

  let token = form.elements._csrf.value;
  let sending = false;
  let spare = [];

  function kept(key) {
    try {
      return localStorage.getItem(key);
    } catch (e) {
      return null;
    }
  }

  function keep(key, value) {
    try {
      localStorage.setItem(key, value);
    } catch (e) {
      // Without storage the queue lasts as long as the page.
    }
  }

  function queue() {
    const text = kept(QUEUE);
    return text === null ? spare : JSON.parse(text);
  }

  function setQueue(rows) {
    spare = rows;
    keep(QUEUE, JSON.stringify(rows));
  }

  function mark() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return Array.from(bytes, b => b.toString(16).padStart(2, '0')).join('');
  }

  function today() {
    const now = new Date();
    const two = n => String(n).padStart(2, '0');
    return now.getFullYear() + '-' + two(now.getMonth() + 1) + '-' + two(now.getDate());
  }

  function row() {
    const fields = Object.fromEntries(new FormData(form));
    delete fields._csrf;
    return fields;
  }

  function words(fields) {
    const flat = fields.event !== 'reading';
    return [(flat ? 'Flat on ' : 'Meter of ') + fields.machine, flat && fields.position, flat && fields.fix,
      flat && fields.minutes && fields.minutes + ' min', fields.hours && 'at ' + fields.hours + ' h', fields.date]
        .filter(Boolean).join(', ');
  }

  // What is plainly lacking is said at once, without the line.
  function lacks(fields) {
    if (!fields.machine) {
      return 'Choose a machine.';
    }
    return fields.event === 'reading' && !fields.hours.trim() ? 'A reading needs the hours on the meter.' : '';
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

  function button(label, name, action) {
    const made = document.createElement('button');
    made.type = 'button';
    made.className = 'button';
    made.textContent = label;
    made.setAttribute('aria-label', name);
    made.addEventListener('click', action);
    return made;
  }

  function line(sentAs, text) {
    let item = last.querySelector('[data-sent-as="' + sentAs + '"]');
    if (!item) {
      item = document.createElement('li');
      item.dataset.sentAs = sentAs;
      last.prepend(item);
      document.getElementById('none')?.remove();
    }
    const span = document.createElement('span');
    span.textContent = text;
    item.replaceChildren(span, button('Take back', 'Take back: ' + text, () => takeBack(sentAs, text)));
  }

  function fresh() {
    form.elements.sentAs.value = mark();
  }

  // Leaves what and which machine as they were: the next row is often alike.
  function clear() {
    form.querySelectorAll('[name=position]:checked, [name=fix]:checked').forEach(r => { r.checked = false; });
    form.elements.hours.value = '';
    form.elements.minutes.value = '';
    form.elements.date.value = today();
  }

  function submitted(event) {
    event.preventDefault();
    const fields = row();
    const known = queue().some(r => r.sentAs === fields.sentAs) || last.querySelector('[data-sent-as="' + fields.sentAs + '"]');
    if (known) {
      return;
    }
    const lacking = lacks(fields);
    fault.textContent = lacking;
    if (lacking) {
      fault.scrollIntoView({ block: 'center' });
      return;
    }
    keep(MACHINE, fields.machine);
    setQueue(queue().concat([fields]));
    line(fields.sentAs, words(fields));
    tell('On this device.', words(fields), fields.sentAs);
    clear();
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
    const page = await fetch(form.dataset.page, { redirect: 'manual' });
    const found = page.ok && new DOMParser().parseFromString(await page.text(), 'text/html').querySelector('#log [name=_csrf]');
    token = found ? found.value : token;
    return Boolean(found);
  }

  async function send() {
    if (sending || queue().length === 0) {
      return;
    }
    sending = true;
    try {
      while (queue().length > 0) {
        if (!await sendFirst(queue()[0])) {
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
    if (queue().some(r => r.sentAs === fields.sentAs && r.takenBack)) {
      const back = await post(form.dataset.undo, { sentAs: fields.sentAs });
      setQueue(back.ok ? queue().filter(r => r.sentAs !== fields.sentAs) : queue());
      return back.ok;
    }
    setQueue(queue().filter(r => r.sentAs !== fields.sentAs));
    if (outcome.fault) {
      refused(fields, outcome.fault);
    } else {
      line(outcome.sentAs, outcome.said);
      tell('Kept.', outcome.said + (outcome.look ? '. Look at it: ' + outcome.look + '.' : ''), outcome.sentAs);
    }
    return true;
  }

  function waiting(why) {
    const rows = queue().filter(r => !r.takenBack);
    if (rows.length > 0) {
      const many = rows.length === 1 ? words(rows[0]) : rows.length + ' rows';
      tell('On this device, not sent yet.', many + '. ' + (why || 'It is sent when the line is back; this page may be closed.'), rows[rows.length - 1].sentAs);
    }
  }

  // Nothing typed is lost: what can't be taken stands in the form again.
  function refused(fields, why) {
    last.querySelector('[data-sent-as="' + fields.sentAs + '"]')?.remove();
    Object.entries(fields).filter(([name]) => name !== 'sentAs').forEach(([name, value]) => {
      form.elements[name].value = value;
    });
    fresh();
    said.replaceChildren();
    fault.textContent = why;
    fault.scrollIntoView({ block: 'center' });
  }

  async function takeBack(sentAs, text) {
    const before = queue();
    if (before.some(r => r.sentAs === sentAs)) {
      // It may have come although no answer did, so it is sent once more and taken back then.
      setQueue(before.map(r => r.sentAs === sentAs ? Object.assign({}, r, { takenBack: true }) : r));
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
    last.querySelector('[data-sent-as="' + sentAs + '"]')?.remove();
    tell('Taken back.', text);
  }

  function showMeter() {
    const meter = form.querySelector('[name=machine]:checked')?.dataset.meter;
    document.getElementById('meter').textContent = meter ? 'last ' + meter : '';
  }

  function start() {
    const before = kept(MACHINE);
    const key = before && Array.from(form.querySelectorAll('[name=machine]')).find(r => r.value === before);
    if (key && key.type === 'radio') {
      key.checked = true;
    }
    last.querySelectorAll('li:not(.undone)').forEach(item => line(item.dataset.sentAs, item.querySelector('span').textContent));
    queue().filter(r => !r.takenBack).forEach(r => line(r.sentAs, words(r)));
    fresh();
    showMeter();
    waiting();
    send();
  }

  form.addEventListener('submit', submitted);
  form.addEventListener('change', showMeter);
  addEventListener('online', send);
  document.addEventListener('visibilitychange', () => document.hidden || send());
  setInterval(send, AGAIN);
  start();
})();
