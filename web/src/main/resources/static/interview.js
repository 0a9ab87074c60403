// Keeps the guesses, the faults and the questions that are worth asking in step with what has been typed.
(() => {
  'use strict';
  const form = document.getElementById('interview');
  const touched = new Set(Array.from(form.querySelectorAll('[aria-invalid]'), (box) => box.id));
  let asked = 0;
  let timer;

  const token = () => form.querySelector('input[name="_csrf"]');

  const show = (id, look) => {
    const field = form.querySelector(`[data-field="${id}"]`);
    const box = document.getElementById(id);
    const fault = touched.has(id) ? look.fault : '';
    field.hidden = !look.asked;
    document.getElementById(`${id}-fault`).textContent = fault;
    field.querySelector('.guess').textContent = look.guess;
    field.querySelector('.from').textContent = look.from;
    if (look.unit) field.querySelector('.unit').textContent = look.unit;
    if (fault) box.setAttribute('aria-invalid', 'true');
    else box.removeAttribute('aria-invalid');
  };

  const look = async () => {
    const mine = ++asked;
    try {
      const response = await fetch(form.dataset.look, {
        method: 'POST', body: new URLSearchParams(new FormData(form)), headers: { Accept: 'application/json' },
      });
      if (!response.ok || mine !== asked) return;
      Object.entries(await response.json()).forEach(([id, one]) => show(id, one));
    } catch {
      // Without an answer the page stays as it is; sending it checks everything again.
    }
  };

  form.addEventListener('input', () => { clearTimeout(timer); timer = setTimeout(look, 300); });
  form.addEventListener('focusout', (event) => {
    if (!event.target.name || event.target === token()) return;
    if (event.target.value !== '') touched.add(event.target.id);
    clearTimeout(timer);
    timer = setTimeout(look, 50);
  });
  document.querySelector('.fault[role="alert"] a')?.focus();

  // What was typed before this ran, or came back with the browser's Back.
  const typed = Array.from(form.elements).filter((box) => box.id && box.value !== '');
  typed.forEach((box) => touched.add(box.id));
  if (typed.length > 0) look();
})();
