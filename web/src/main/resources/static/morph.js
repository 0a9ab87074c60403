// Swaps a part of the page softly: what stays the same stays the very same element, with its focus, its scroll position,
// what was typed into it and what was drawn into it.
(function () {
  'use strict';

  // The field whose own answer is being swapped in; set by answer.js.
  const morph = { answered: null };
  window.footingMorph = morph;

  function keep(from, to) {
    // Drawn by drawing.js.
    if (from.classList.contains('drawing')) {
      return true;
    }
    // What can't be told yet leaves what was told before.
    if (to.dataset.pending && (!from.dataset.pending || from.dataset.old)) {
      from.dataset.old = 'yes';
      return true;
    }
    delete from.dataset.old;
    // What was refused and is still being mended.
    return from.classList.contains('field') && from.classList.contains('wrong')
        && !to.classList.contains('wrong') && from !== morph.answered;
  }

  function attributes(from, to) {
    for (const { name, value } of [...to.attributes]) {
      if (name !== 'value' && name !== 'open' && from.getAttribute(name) !== value) {
        from.setAttribute(name, value);
      }
    }
    for (const { name } of [...from.attributes]) {
      if (!to.hasAttribute(name) && !['open', 'data-open', 'data-old', 'value', 'style'].includes(name)) {
        from.removeAttribute(name);
      }
    }
  }

  function typed(from, to, sent) {
    const dirty = from.value !== from.defaultValue;
    const mine = morph.answered !== null && morph.answered.contains(from);
    const value = to.getAttribute('value') || '';
    if (from.type === 'hidden' || ((mine || !dirty) && from !== document.activeElement)
        || (mine && from.value.trim() === value)) {
      from.defaultValue = value;
      from.value = value;
    } else if (mine) {
      // Still being typed into: only remember what the server has.
      const now = from.value;
      from.defaultValue = value;
      from.value = sent === now ? value : now;
    }
  }

  function same(a, b) {
    return a.nodeType === b.nodeType && a.nodeName === b.nodeName && (a.id || '') === (b.id || '');
  }

  function children(from, to) {
    const byId = new Map();
    for (const child of from.children) {
      if (child.id) {
        byId.set(child.id, child);
      }
    }
    let next = from.firstChild;
    for (const wanted of [...to.childNodes]) {
      let match = wanted.id ? byId.get(wanted.id) : null;
      if (match && !same(match, wanted)) {
        match = null;
      }
      if (!match && !wanted.id) {
        for (let c = next; c; c = c.nextSibling) {
          if (same(c, wanted)) {
            match = c;
            break;
          }
        }
      }
      if (!match) {
        from.insertBefore(document.importNode(wanted, true), next);
        continue;
      }
      if (match === next) {
        next = next.nextSibling;
      } else {
        from.insertBefore(match, next);
      }
      node(match, wanted);
    }
    while (next) {
      const gone = next;
      next = next.nextSibling;
      gone.remove();
    }
  }

  function node(from, to) {
    if (from.nodeType !== Node.ELEMENT_NODE) {
      if (from.nodeValue !== to.nodeValue) {
        from.nodeValue = to.nodeValue;
      }
      return;
    }
    if (keep(from, to) || from.isEqualNode(to)) {
      return;
    }
    const sent = from.dataset.sent;
    attributes(from, to);
    if (from.nodeName === 'INPUT') {
      typed(from, to, sent);
    } else {
      children(from, to);
    }
  }

  htmx.defineExtension('morph', {
    isInlineSwap: style => style === 'morph',
    handleSwap: function (style, target, fragment) {
      if (style !== 'morph') {
        return false;
      }
      const to = fragment.firstElementChild || fragment;
      if (!same(target, to)) {
        target.replaceWith(to);
        return [to];
      }
      node(target, to);
      return [target];
    }
  });
})();
