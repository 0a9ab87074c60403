// The answer page: asks for better answers while there are any to come, keeps the newest, and opens what is asked for.
(function () {
  'use strict';

  const EVERY = 600;
  let timer = 0;
  let sentence = '';

  const region = () => document.getElementById('case');

  function poll() {
    clearTimeout(timer);
    const address = region() && region().dataset.poll;
    if (address) {
      timer = setTimeout(() => {
        if (document.hidden) {
          poll();
          return;
        }
        htmx.ajax('GET', address, { source: '#case', target: '#case', swap: 'morph' }).then(poll, poll);
      }, EVERY);
    }
  }

  // A new sentence is told to those who can't see it change.
  function say() {
    const now = document.getElementById('sentence');
    if (now && sentence && now.textContent !== sentence) {
      document.getElementById('said').textContent = 'The answer is now: ' + now.textContent;
    }
    sentence = now ? now.textContent : '';
  }

  function fieldOf(event) {
    const source = event.detail.requestConfig && event.detail.requestConfig.elt;
    return source ? source.closest('.field') : null;
  }

  // True if what stands in a field is what it had, or is on its way: leaving a box after Enter is no second change.
  function isKnown(field) {
    const boxes = [...field.querySelectorAll('input[type=text]')];
    return boxes.every(b => b.value === b.dataset.sent)
        || (!field.classList.contains('wrong') && boxes.every(b => b.value === b.defaultValue));
  }

  document.addEventListener('htmx:beforeRequest', event => {
    const field = fieldOf(event);
    if (field && event.detail.requestConfig.elt === field && isKnown(field)) {
      event.preventDefault();
    } else if (field) {
      field.querySelectorAll('input').forEach(i => { i.dataset.sent = i.value; });
    }
  });

  // What is asked for opens at once, even if it takes a while to come.
  document.addEventListener('htmx:beforeRequest', event => {
    if (event.detail.target && event.detail.target.id === 'why-body') {
      const dialog = document.getElementById('why');
      event.detail.target.replaceChildren('Being taken apart …');
      if (!dialog.open) {
        dialog.showModal();
      }
    }
  });

  for (const trouble of ['htmx:responseError', 'htmx:sendError', 'htmx:timeout']) {
    document.addEventListener(trouble, event => {
      if (event.detail.target && event.detail.target.id === 'why-body') {
        event.detail.target.replaceChildren('It could not be taken apart. Close this and try again.');
      }
    });
  }

  document.addEventListener('htmx:beforeSwap', event => {
    if (event.detail.target && event.detail.target.id === 'case') {
      const came = /data-version="(\d+)"/.exec(event.detail.serverResponse || '');
      // An answer to an older state that comes late.
      if (came && Number(came[1]) < Number(region().dataset.version)) {
        event.detail.shouldSwap = false;
        return;
      }
    }
    footingMorph.answered = fieldOf(event);
  });

  document.addEventListener('htmx:afterSwap', event => {
    footingMorph.answered = null;
    if (event.detail.target && event.detail.target.id === 'why-body') {
      return;
    }
    say();
    poll();
    document.dispatchEvent(new CustomEvent('footing:swapped'));
  });

  // The drawer with the inputs, on narrow screens.
  function drawer(open) {
    const inputs = document.getElementById('inputs');
    inputs.toggleAttribute('data-open', open);
    document.body.classList.toggle('with-drawer', open);
    document.getElementById('open-inputs').setAttribute('aria-expanded', String(open));
    document.getElementById(open ? 'close-inputs' : 'open-inputs').focus();
  }

  function show(id) {
    const target = document.getElementById(id);
    if (!target || !target.closest('#inputs')) {
      return;
    }
    for (let d = target.closest('details'); d; d = d.parentElement.closest('details')) {
      d.open = true;
    }
    if (getComputedStyle(document.getElementById('open-inputs')).display !== 'none') {
      drawer(true);
    }
    target.scrollIntoView({ block: 'center' });
    const box = target.querySelector('input[type=text]');
    if (box) {
      box.focus({ preventScroll: true });
    }
  }

  document.addEventListener('click', event => {
    if (event.target.closest('#open-inputs')) {
      drawer(true);
    } else if (event.target.closest('#close-inputs')) {
      drawer(false);
    }
    const link = event.target.closest('a.guess-link');
    if (link) {
      event.preventDefault();
      show(link.getAttribute('href').slice(1));
    }
  });

  document.addEventListener('keydown', event => {
    const inputs = document.getElementById('inputs');
    if (event.key === 'Escape' && inputs && inputs.hasAttribute('data-open')
        && !document.querySelector('#why[open]')) {
      drawer(false);
    }
    // Enter in a box means: take it.
    if (event.key === 'Enter' && event.target.matches('.field input[type=text]')) {
      event.preventDefault();
      event.target.dispatchEvent(new Event('change', { bubbles: true }));
    }
  });

  document.addEventListener('DOMContentLoaded', () => { say(); poll(); });
})();
